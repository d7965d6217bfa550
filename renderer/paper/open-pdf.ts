import { getDocument, type PDFDocumentProxy, PDFWorker } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { startThread } from '../parts/own-thread.ts';
import workerAddress from './pdf-worker.ts?worker&url';

export type PdfPage = {
  /** From 1. */
  number: number;
  widthPt: number;
  heightPt: number;
  /** The page as a PNG. */
  picture(pixelsPerPoint: number): Promise<Blob>;
};
export type OpenPdf = { pages: PdfPage[]; close(): void };

/** Opens the bytes of a PDF that the program made, to be looked at or printed. */
export async function openPdf(bytes: Uint8Array): Promise<OpenPdf> {
  const thread = startThread(workerAddress);
  const worker = PDFWorker.create({ port: thread });
  // The reader takes the bytes away with it.
  const task = getDocument({ data: bytes.slice(), worker, verbosity: 0 });
  const close = () => {
    void task.destroy().finally(() => {
      worker.destroy();
      thread.terminate();
    });
  };
  try {
    const pdf = await task.promise;
    const pages: PdfPage[] = [];
    for (let number = 1; number <= pdf.numPages; number++) pages.push(await pageOf(pdf, number));
    return { pages, close };
  } catch (error) {
    close();
    throw error;
  }
}

async function pageOf(pdf: PDFDocumentProxy, number: number): Promise<PdfPage> {
  const page = await pdf.getPage(number);
  const { width: widthPt, height: heightPt } = page.getViewport({ scale: 1 });
  const picture = async (pixelsPerPoint: number) => {
    const viewport = page.getViewport({ scale: pixelsPerPoint });
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(viewport.width);
    canvas.height = Math.round(viewport.height);
    // Drawn as for a printer: the other way waits for frames of the screen, of which a hidden window has none.
    await page.render({ canvas, viewport, intent: 'print' }).promise;
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve));
    // A canvas holds its memory until it is collected; a day has hundreds of pages.
    canvas.width = 0;
    page.cleanup();
    if (!blob) throw new Error(`Page ${number} could not be drawn.`);
    return blob;
  };
  return { number, widthPt, heightPt, picture };
}
