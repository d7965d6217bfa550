import { strToU8, zipSync } from 'fflate';
import Pdf from 'pdfkit';
import writeWorkbook from 'write-excel-file/node';
import type { Grid } from '../../core/rider/grid.ts';
import { readDocument } from '../../electron/documents/read-document.ts';

/** The rows of a rider in another form of file, and back through the program's own reading of such files. */
export async function throughForm(form: 'xlsx' | 'pdf' | 'docx', grid: Grid): Promise<Grid> {
  const rows = (grid.sheets[0]?.rows ?? []).map((row) => [...row]);
  const bytes = await makers[form](rows);
  const outcome = await readDocument(`rider.${form}`, bytes);
  if (!outcome.ok) throw new Error(`${grid.name} as ${form}: ${outcome.problem.what}`);
  return outcome.value;
}

const makers = { xlsx: workbookOf, pdf: pagesOf, docx: textDocumentOf };

async function workbookOf(rows: string[][]): Promise<Uint8Array> {
  return writeWorkbook(rows.map((row) => row.map((text) => (text === '' ? null : text)))).toBuffer();
}

const pageSize: [number, number] = [1190, 842];
const letterWidth = 5;
const rowHeight = 14;

/** A table without lines: every cell of a column begins at one place, as a spreadsheet prints it. */
async function pagesOf(rows: string[][]): Promise<Uint8Array> {
  const pdf = new Pdf({ autoFirstPage: false, info: {}, lang: 'en', pdfVersion: '1.7' });
  const parts: Uint8Array[] = [];
  pdf.on('data', (part) => parts.push(part));
  const done = new Promise<void>((resolve) => pdf.on('end', resolve));
  const columns = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, column) =>
    Math.max(20, ...rows.map((row) => (row[column] ?? '').length * letterWidth)),
  );
  let y = pageSize[1];
  for (const row of rows) {
    if (y > pageSize[1] - 50) {
      pdf.addPage({ size: pageSize, margin: 0 }).font('Helvetica').fontSize(8);
      y = 30;
    }
    let x = 30;
    row.forEach((text, column) => {
      if (text !== '')
        pdf.text(text, x, y, {
          lineBreak: false,
          baseline: 'alphabetic',
          features: [],
          textWidth: text.length * letterWidth,
          wordCount: text.split(' ').length,
        });
      x += (widths[column] ?? 20) + rowHeight;
    });
    y += rowHeight;
  }
  pdf.end();
  await done;
  return new Uint8Array(Buffer.concat(parts));
}

/** One paragraph for every line; the smallest package that Office Open XML (ECMA-376) calls a document. */
async function textDocumentOf(rows: string[][]): Promise<Uint8Array> {
  const escaped = (text: string) =>
    text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
  const paragraphs = rows
    .map(([text = '']) => `<w:p><w:r><w:t xml:space="preserve">${escaped(text)}</w:t></w:r></w:p>`)
    .join('');
  const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';
  return zipSync({
    '[Content_Types].xml': strToU8(
      `${head}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/word/document.xml" ContentType="application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"/></Types>`,
    ),
    '_rels/.rels': strToU8(
      `${head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="word/document.xml"/></Relationships>`,
    ),
    'word/document.xml': strToU8(
      `${head}<w:document xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"><w:body>${paragraphs}</w:body></w:document>`,
    ),
  });
}
