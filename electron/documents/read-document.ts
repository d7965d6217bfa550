import type { Outcome } from '../../core/contract/problem.ts';
import type { Grid, Sheet } from '../../core/rider/grid.ts';
import { cleanText, decodeText } from './decode-text.ts';
import { type FileForm, formOfBytes, isMail } from './form-of-bytes.ts';
import { limits } from './limits.ts';
import { type Archive, openArchive } from './open-archive.ts';
import { refusedArchives, refusedForms, someArchive } from './refused-forms.ts';
import { findDelimiter, rowsFromDelimited } from './rows-from-delimited.ts';
import { rowsFromText } from './rows-from-text.ts';
import { readTextDocument, textDocumentParts } from './text-document/read-text-document.ts';
import { textOfHtml } from './text-of-html.ts';
import { tooMuch, Unreadable } from './unreadable.ts';
import { isWorkbookPart, readWorkbook } from './workbook/read-workbook.ts';

/** Bytes of a file to a grid of text, or the reason why not. Run it in the worker: the file is a stranger's. */
export async function readDocument(fileName: string, bytes: Uint8Array): Promise<Outcome<Grid>> {
  try {
    const grid = await readForm(fileName, bytes);
    checkSize(fileName, grid);
    if (!grid.sheets.some(holdsWords)) throw refusal(fileName, 'empty');
    return { ok: true, value: grid };
  } catch (error) {
    if (error instanceof Unreadable) return { ok: false, problem: error.problem };
    throw error;
  }
}

async function readForm(fileName: string, bytes: Uint8Array): Promise<Grid> {
  const form = formOfBytes(bytes);
  if (form === 'zip') return readArchive(fileName, bytes);
  if (form === 'pdf') {
    // The largest library of all is loaded only for the form that needs it.
    const { readPdf } = await import('./pdf/read-pdf.ts');
    return readPdf(fileName, bytes);
  }
  if (form === 'text') return readText(fileName, bytes);
  if (form === 'html') return readHtml(fileName, bytes);
  throw refusal(fileName, form);
}

async function readText(fileName: string, bytes: Uint8Array): Promise<Grid> {
  const decoded = decodeText(bytes);
  if (!decoded) throw refusal(fileName, 'noise');
  if (isMail(decoded.text)) {
    const { rowsFromMail } = await import('./read-mail.ts');
    return oneSheet(fileName, 'text', await rowsFromMail(bytes));
  }
  const delimiter = findDelimiter(decoded.text);
  if (!delimiter) return oneSheet(fileName, 'text', rowsFromText(decoded.text));
  return oneSheet(fileName, delimiter === '\t' ? 'tsv' : 'csv', rowsFromDelimited(decoded.text, delimiter));
}

function readHtml(fileName: string, bytes: Uint8Array): Grid {
  const decoded = decodeText(bytes);
  if (!decoded) throw refusal(fileName, 'noise');
  return oneSheet(fileName, 'text', rowsFromText(cleanText(textOfHtml(decoded.text))));
}

function oneSheet(name: string, form: Grid['form'], rows: string[][]): Grid {
  return { name, form, sheets: [{ name: '', rows }] };
}

function readArchive(fileName: string, bytes: Uint8Array): Grid {
  const archive = openArchive(
    fileName,
    bytes,
    (name) => isWorkbookPart(name) || textDocumentParts.test(name),
  );
  if (archive.names.includes('xl/workbook.xml')) return readWorkbook(fileName, archive);
  if (archive.names.includes('word/document.xml')) return readTextDocument(fileName, archive);
  throw archiveRefusal(fileName, archive);
}

function archiveRefusal(fileName: string, archive: Archive): Unreadable {
  const known = refusedArchives.find(({ part }) => archive.names.some((name) => part.test(name)));
  const { is, todo } = known ?? someArchive;
  return new Unreadable(`“${fileName}” ${is}.`, todo);
}

function refusal(fileName: string, form: Exclude<FileForm, 'text' | 'html' | 'zip' | 'pdf'>): Unreadable {
  const { is, todo } = refusedForms[form];
  return new Unreadable(`“${fileName}” ${is}.`, todo);
}

/** A sheet of nothing but blanks and delimiters says nothing. */
function holdsWords(sheet: Sheet): boolean {
  return sheet.rows.some((row) => row.some((cell) => /[\p{L}\p{N}]/u.test(cell)));
}

function checkSize(fileName: string, grid: Grid): void {
  const { rows, columns, cells, cellCharacters } = limits;
  let filled = 0;
  for (const sheet of grid.sheets) {
    if (sheet.rows.length > rows) throw tooMuch(`“${fileName}” has more than ${rows} lines.`);
    sheet.rows.forEach((row, place) => {
      if (row.length > columns)
        throw tooMuch(
          `“${fileName}” has ${row.length} cells in line ${place + 1}; up to ${columns} are read.`,
        );
      if (row.some((cell) => cell.length > cellCharacters))
        throw tooMuch(
          `“${fileName}” has a text of more than ${cellCharacters} characters in line ${place + 1}.`,
        );
      filled += row.length;
    });
  }
  if (filled > cells) throw tooMuch(`“${fileName}” has more than ${cells} cells.`);
}
