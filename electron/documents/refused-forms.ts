import type { FileForm } from './form-of-bytes.ts';

/** What the refusal of a form says after the file's name, and what to do instead. */
export type Refused = { is: string; todo: string };

const askForText =
  'Ask the band for the input list as XLSX, CSV or a PDF with text, or as plain text in a mail; a pasted text is read too.';

export const refusedForms: Record<Exclude<FileForm, 'text' | 'html' | 'pdf' | 'zip'>, Refused> = {
  empty: { is: 'is empty', todo: 'Ask the band to send the file again.' },
  'old office': {
    is: 'is an Office file of the old kind (XLS or DOC), which is not read',
    todo: 'Open it, save it as XLSX or DOCX and bring that in, or ask the band to.',
  },
  'protected office': {
    is: 'is protected with a password',
    todo: 'Open it with the password, save it without one and bring that in, or ask the band for a copy without a password.',
  },
  rtf: {
    is: 'is an RTF text, which is not read',
    todo: 'Open it, copy all of it and paste it here, or save it as DOCX.',
  },
  picture: { is: 'is a picture: there is no text in it to read', todo: askForText },
  archive: {
    is: 'is an archive',
    todo: 'Unpack it and bring in the files inside, one rider at a time.',
  },
  'sound or film': { is: 'is a sound or film file, not a rider', todo: askForText },
  noise: { is: 'holds no text: it is damaged, or of a kind that is not known here', todo: askForText },
};

/** Zip archives that are some other program's documents, by a part they all have. */
export const refusedArchives: readonly (Refused & { part: RegExp })[] = [
  {
    part: /^xl\/workbook\.bin$/,
    is: 'is a binary workbook (XLSB), which is not read',
    todo: 'Open it, save it as XLSX and bring that in.',
  },
  {
    part: /^content\.xml$/,
    is: 'is an OpenDocument file (ODS or ODT), which is not read',
    todo: 'Open it, save it as XLSX, DOCX or CSV and bring that in.',
  },
  {
    part: /^(?:Index\/.*\.iwa|Index\.zip)$/,
    is: 'is a document of a word processor or spreadsheet that only its own program reads',
    todo: 'Ask the band to export it as XLSX or PDF.',
  },
  {
    part: /^ppt\/presentation\.xml$/,
    is: 'is a presentation, which is not read',
    todo: 'Ask the band for the input list as XLSX, CSV or PDF.',
  },
];

export const someArchive = refusedForms.archive;
