import PDFDocument from 'pdfkit';
import { type Face, featuresOf } from '../fonts/type-case.ts';
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
  const registered = new Set<Face>();
  for (const page of pages) {
    document.addPage({ size: [page.widthPt, page.heightPt], margin: 0 });
    for (const mark of page.marks) drawMark(document, mark, registered);
    afterPage();
  }
  document.end();
  await written;
  return Buffer.concat(chunks);
}

function drawMark(document: PDFDocument, mark: Mark, registered: Set<Face>): void {
  switch (mark.is) {
    case 'text':
      drawText(document, mark, registered);
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

function drawText(
  document: PDFDocument,
  { line, x, y, sizePt }: Extract<Mark, { is: 'text' }>,
  registered: Set<Face>,
): void {
  document.fillColor('#000000').fontSize(sizePt);
  let at = x;
  for (const { face, text, unitWidth } of line.runs) {
    if (!registered.has(face)) {
      document.registerFont(face.name, face.bytes);
      registered.add(face);
    }
    const features = featuresOf(text);
    // Width and word count are given so that pdfkit does not measure what is measured already.
    document.font(face.name).text(text, at, y, {
      lineBreak: false,
      baseline: 'alphabetic',
      ...(features && { features }),
      textWidth: unitWidth * sizePt,
      wordCount: 1,
    });
    at += unitWidth * sizePt;
  }
}
