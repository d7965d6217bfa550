import PDFDocument from 'pdfkit';
import { type Face, features, shapesOf } from '../fonts/face.ts';
import type { Mark, Page } from '../setting/display-list.ts';

export type PdfInfo = { title: string; madeAt: Date };

/** The pages as a PDF. `afterPage` is called after each one, so that progress can be told. */
export async function drawPdf(
  pages: readonly Page[],
  info: PdfInfo,
  afterPage: () => void = () => {},
): Promise<Uint8Array> {
  const document = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: 'en',
    info: { Title: info.title, Creator: 'Foldbook', CreationDate: info.madeAt, ModDate: info.madeAt },
  });
  const chunks: Uint8Array[] = [];
  const written = new Promise<void>((resolve, reject) => {
    document
      .on('data', (bytes) => chunks.push(bytes))
      .on('end', resolve)
      .on('error', reject);
  });
  const pen: Pen = { document, registered: new Set() };
  for (const page of pages) {
    document.addPage({ size: [page.widthPt, page.heightPt], margin: 0 });
    for (const mark of page.marks) drawMark(pen, mark);
    afterPage();
  }
  document.end();
  await written;
  return Buffer.concat(chunks);
}

type Pen = { document: PDFDocument; registered: Set<Face> };

function drawMark(pen: Pen, mark: Mark): void {
  const { document } = pen;
  switch (mark.is) {
    case 'text':
      drawText(pen, mark);
      break;
    case 'rect':
      finish(document.rect(mark.x, mark.y, mark.width, mark.height), mark);
      break;
    case 'circle':
      finish(document.circle(mark.x, mark.y, mark.radius), mark);
      break;
    case 'path':
      drawPath(document, mark);
      break;
  }
}

function drawPath(document: PDFDocument, mark: Extract<Mark, { is: 'path' }>): void {
  mark.points.forEach(([x, y], at) => {
    if (at === 0) document.moveTo(x, y);
    else document.lineTo(x, y);
  });
  if (mark.closed) document.closePath();
  if (mark.dashed) document.dash(2, { space: 3 });
  finish(document, mark);
  if (mark.dashed) document.undash();
}

function finish(document: PDFDocument, { fill, linePt }: { fill: string | null; linePt: number }): void {
  if (linePt > 0) document.lineWidth(linePt).strokeColor('#000000');
  if (fill !== null) document.fillColor(fill);
  if (fill !== null && linePt > 0) document.fillAndStroke();
  else if (fill !== null) document.fill();
  else document.stroke();
}

function drawText({ document, registered }: Pen, mark: Extract<Mark, { is: 'text' }>): void {
  const { line, x, y, sizePt } = mark;
  document.fillColor('#000000').fontSize(sizePt);
  let at = x;
  for (const { face, text, unitWidth } of line.runs) {
    if (!registered.has(face)) {
      document.registerFont(face.name, face.bytes).font(face.name);
      // pdfkit shapes a text anew each time it stands somewhere, which is most of the work of a PDF. Its one way to
      // the shaper is replaced by what was shaped for measuring; without this the pages would be the same, later.
      document._font.layoutRun = (words) => shapesOf(face, words);
      registered.add(face);
    }
    // Width and word count are given so that pdfkit does not measure what is measured already.
    document.font(face.name).text(text, at, y, {
      lineBreak: false,
      baseline: 'alphabetic',
      features,
      textWidth: unitWidth * sizePt,
      wordCount: 1,
    });
    at += unitWidth * sizePt;
  }
}
