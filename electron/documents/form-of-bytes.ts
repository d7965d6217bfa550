/** What a file is by its content. Its extension is never asked: riders are renamed on their way. */
export type FileForm =
  | 'empty'
  | 'text'
  | 'pdf'
  | 'zip'
  | 'old office'
  | 'protected office'
  | 'rtf'
  | 'html'
  | 'picture'
  | 'archive'
  | 'sound or film'
  | 'noise';

type Signature = { form: FileForm; at: number; bytes: readonly number[] };

const ascii = (text: string): number[] => [...text].map((character) => character.charCodeAt(0));

/** First bytes of the forms that are not text, from the published descriptions of each format. */
const signatures: readonly Signature[] = [
  { form: 'zip', at: 0, bytes: [0x50, 0x4b, 0x03, 0x04] },
  { form: 'zip', at: 0, bytes: [0x50, 0x4b, 0x05, 0x06] },
  { form: 'old office', at: 0, bytes: [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1] },
  { form: 'rtf', at: 0, bytes: ascii('{\\rtf') },
  { form: 'picture', at: 0, bytes: [0x89, 0x50, 0x4e, 0x47] },
  { form: 'picture', at: 0, bytes: [0xff, 0xd8, 0xff] },
  { form: 'picture', at: 0, bytes: ascii('GIF8') },
  { form: 'picture', at: 0, bytes: [0x49, 0x49, 0x2a, 0x00] },
  { form: 'picture', at: 0, bytes: [0x4d, 0x4d, 0x00, 0x2a] },
  { form: 'picture', at: 8, bytes: ascii('WEBP') },
  { form: 'picture', at: 4, bytes: ascii('ftyphei') },
  { form: 'picture', at: 4, bytes: ascii('ftypmif1') },
  { form: 'picture', at: 4, bytes: ascii('ftypavif') },
  { form: 'archive', at: 0, bytes: ascii('Rar!') },
  { form: 'archive', at: 0, bytes: [0x37, 0x7a, 0xbc, 0xaf, 0x27, 0x1c] },
  { form: 'archive', at: 0, bytes: [0x1f, 0x8b] },
  { form: 'archive', at: 257, bytes: ascii('ustar') },
  { form: 'sound or film', at: 0, bytes: ascii('ID3') },
  { form: 'sound or film', at: 0, bytes: ascii('OggS') },
  { form: 'sound or film', at: 8, bytes: ascii('WAVE') },
  { form: 'sound or film', at: 4, bytes: ascii('ftyp') },
];

/** The form of a file by its bytes. `text` is still to be decoded and may then turn out to be noise. */
export function formOfBytes(bytes: Uint8Array): FileForm {
  if (bytes.every((byte) => byte === 0x20 || (byte >= 0x09 && byte <= 0x0d))) return 'empty';
  const found = signatures.find(({ at, bytes: mark }) => mark.every((byte, i) => bytes[at + i] === byte));
  if (found?.form === 'old office')
    return holdsWide(bytes, 'EncryptedPackage') ? 'protected office' : 'old office';
  if (found) return found.form;
  // A PDF may begin with up to 1 kB of other bytes (ISO 32000-1, annex H, implementation note 13).
  const head = Buffer.from(bytes.subarray(0, 1024)).toString('latin1');
  if (head.includes('%PDF-')) return 'pdf';
  if (/^\s*(?:\ufeff|ï»¿)?\s*<(?:!doctype html|html|table)\b/i.test(head)) return 'html';
  return 'text';
}

/** Names in an old office file are written in UTF-16. */
function holdsWide(bytes: Uint8Array, name: string): boolean {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).includes(Buffer.from(name, 'utf16le'));
}

/** A saved mail: lines of "Name: value", among them what only the head of a mail has. */
export function isMail(text: string): boolean {
  const head = text.slice(0, 20_000).split(/\r?\n\r?\n/)[0] ?? '';
  const names = [...head.matchAll(/^([A-Za-z][A-Za-z-]*):/gm)].map((match) => match[1]?.toLowerCase());
  return names.includes('mime-version') || (names.includes('from') && names.includes('received'));
}
