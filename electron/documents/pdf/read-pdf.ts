import { createRequire } from 'node:module';
import { dirname, join, sep } from 'node:path';
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Grid } from '../../../core/rider/grid.ts';
import { cleanText } from '../decode-text.ts';
import { limits } from '../limits.ts';
import { tooMuch, Unreadable } from '../unreadable.ts';
import { type Run, rowsOfRun, runsOfLines, shareColumns } from './open-tables.ts';
import { withoutRepeatedEdges } from './page-edges.ts';
import { partsOfPage } from './page-halves.ts';
import { type PageMarks, readPageMarks } from './page-marks.ts';
import { findRuledTables, rowsOfRuledTable, withOuterRows } from './ruled-tables.ts';
import { linesOfWords, type TextLine } from './text-lines.ts';

/**
 * A PDF to rows by where its text stands. Rows of all pages come one after the other, so that a table over several
 * pages is one table; its heading, repeated on each page, is kept once. A page without text is named in a row.
 */
export async function readPdf(fileName: string, bytes: Uint8Array): Promise<Grid> {
  const pdf = await openPdf(fileName, bytes);
  try {
    if (pdf.numPages > limits.pdfPages)
      throw tooMuch(`“${fileName}” has ${pdf.numPages} pages; up to ${limits.pdfPages} are read.`);
    const pages = await readPages(pdf, fileName);
    if (pages.every((page) => page.words.length === 0)) throw noText(fileName);
    const rows = withoutRepeatedHeadings(rowsOfPages(pages));
    return {
      name: fileName,
      form: 'pdf',
      sheets: [{ name: '', rows: rows.map((row) => row.map(cleanText)) }],
    };
  } finally {
    await pdf.loadingTask.destroy();
  }
}

/** Tables of character codes for PDFs in scripts that are not Latin; they come with the package. */
const packageFolder = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));

async function openPdf(fileName: string, bytes: Uint8Array): Promise<PDFDocumentProxy> {
  try {
    return await getDocument({
      data: Uint8Array.from(bytes),
      cMapUrl: join(packageFolder, 'cmaps') + sep,
      standardFontDataUrl: join(packageFolder, 'standard_fonts') + sep,
      useSystemFonts: false,
      disableFontFace: true,
      // Only text and lines are wanted: pictures are not unpacked.
      maxImageSize: 1,
      verbosity: 0,
    }).promise;
  } catch (error) {
    if (error instanceof Error && error.name === 'PasswordException')
      throw new Unreadable(
        `“${fileName}” is protected with a password.`,
        'Ask the band for a copy without a password, or open it, copy the list and paste it here.',
      );
    throw damaged(`“${fileName}” is a damaged PDF: it cannot be opened.`);
  }
}

/** A file may open and still hold a page that is none: the library says so only when it gets there. */
async function readPages(pdf: PDFDocumentProxy, fileName: string): Promise<PageMarks[]> {
  const pages: PageMarks[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    try {
      pages.push(await readPageMarks(await pdf.getPage(number), fileName));
    } catch (error) {
      if (error instanceof Unreadable) throw error;
      throw damaged(`“${fileName}” is a damaged PDF: its page ${number} cannot be read.`);
    }
  }
  return pages;
}

function damaged(what: string): Unreadable {
  return new Unreadable(what, 'Ask the band to send the file again, or for the list as XLSX or CSV.');
}

function noText(fileName: string): Unreadable {
  return new Unreadable(
    `“${fileName}” holds no text: it is a scan or a picture.`,
    'Ask the band for the file their program wrote (a PDF with text, XLSX or CSV), or for the list in a mail.',
  );
}

type Part = { rows(): string[][] };

/** Parts first, rows after: what is one table is known only when all its parts are. */
function rowsOfPages(all: readonly PageMarks[]): string[][] {
  const pages = withoutRepeatedEdges(all);
  const runs: Run[] = [];
  const parts = pages.flatMap((page, place) => {
    if (page.words.length === 0)
      return [
        { rows: () => [[`Page ${place + 1} holds no text (a picture or a scan): look at it in the file.`]] },
      ];
    const aside: Part = { rows: () => page.aside.map((text) => [text]) };
    return [...partsOfPage(page).flatMap((part) => partsOfText(part, runs)), aside];
  });
  shareColumns(runs);
  return parts.flatMap((part) => part.rows());
}

/** The drawn tables of a part of a page and the text between them, from top to bottom. */
function partsOfText(marks: PageMarks, runs: Run[]): Part[] {
  const parts: Part[] = [];
  let open: TextLine[] = linesOfWords(marks.words);
  const closeOpen = (lines: TextLine[]) => {
    for (const run of runsOfLines(lines)) {
      runs.push(run);
      parts.push({ rows: () => rowsOfRun(run) });
    }
  };
  const drawn = findRuledTables(marks);
  for (const [place, inner] of drawn.entries()) {
    const table = withOuterRows(inner, open, drawn[place + 1]?.top ?? Number.POSITIVE_INFINITY);
    const inside = open.filter((line) => line.y > table.top && line.y <= table.bottom + 1);
    if (inside.length < 2) continue;
    closeOpen(open.filter((line) => line.y <= table.top));
    parts.push({ rows: () => rowsOfRuledTable(table, inside) });
    open = open.filter((line) => line.y > table.bottom + 1);
  }
  closeOpen(open);
  return parts;
}

/** The heading of a table is printed again on each page; what has been said word for word is not said again. */
function withoutRepeatedHeadings(rows: string[][]): string[][] {
  const seen = new Set<string>();
  return rows.filter((row) => {
    const filled = row.filter((cell) => cell !== '');
    const isHeading = filled.length >= 3 && filled.every((cell) => !/\d/.test(cell.replace(/48/g, '')));
    const text = row.join('\t');
    if (isHeading && seen.has(text)) return false;
    if (isHeading) seen.add(text);
    return true;
  });
}
