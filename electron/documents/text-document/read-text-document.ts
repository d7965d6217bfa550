import type { Grid } from '../../../core/rider/grid.ts';
import { type Archive, damaged } from '../open-archive.ts';
import { Unreadable } from '../unreadable.ts';
import { rowsOfPart } from './document-rows.ts';
import { ListNumbers } from './list-numbers.ts';

/**
 * Why an own reading of the document's XML: what a rider needs are its tables with merged cells and the numbers of
 * its lists. The well-kept package for this form makes HTML of it, without the numbers, and unpacks without a limit.
 */
export const textDocumentParts = /^word\/(?:document|numbering|styles|footnotes|header\d*|footer\d*)\.xml$/;

/** Headers first, then the text, then footers and notes: what is printed on each page is said once. */
const order = [
  /^word\/header\d*\.xml$/,
  /^word\/document\.xml$/,
  /^word\/footer\d*\.xml$/,
  /^word\/footnotes\.xml$/,
];

export function readTextDocument(fileName: string, archive: Archive): Grid {
  try {
    const numbers = new ListNumbers(archive);
    const names = order.flatMap((part) => archive.names.filter((name) => part.test(name)));
    const rows = names.flatMap((name) => rowsOfPart(archive.text(name) ?? '', numbers));
    return { name: fileName, form: 'docx', sheets: [{ name: '', rows }] };
  } catch (error) {
    if (error instanceof Unreadable) throw error;
    throw damaged(fileName);
  }
}
