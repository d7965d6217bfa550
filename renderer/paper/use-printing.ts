import { useCallback, useEffect, useRef, useState } from 'react';
import { type OpenPdf, openPdf } from './open-pdf.ts';

export type PrintPage = { address: string; lies: boolean };
/** Pages drawn for the printer so far, and of how many. */
export type Drawing = { done: number; of: number };

/** Fine enough for 9 point type and hairlines; more only makes the printer wait. */
const printDotsPerInch = 220;

/** Draws the pages of a PDF for the printer and opens the print dialog of the browser or the system. */
export function usePrinting(): {
  drawing: Drawing | null;
  pages: readonly PrintPage[];
  /** Answers false where it was stopped. Throws where a page cannot be drawn. */
  print(bytes: Uint8Array, pageCount: number): Promise<boolean>;
  stop(): void;
} {
  const [drawing, setDrawing] = useState<Drawing | null>(null);
  const [pages, setPages] = useState<readonly PrintPage[]>([]);
  const stopped = useRef(false);
  const stop = useCallback(() => {
    stopped.current = true;
  }, []);
  const print = useCallback(async (bytes: Uint8Array, pageCount: number) => {
    stopped.current = false;
    setDrawing({ done: 0, of: pageCount });
    const ready: PrintPage[] = [];
    let pdf: OpenPdf | null = null;
    try {
      pdf = await openPdf(bytes);
      for (const page of pdf.pages) {
        if (stopped.current) break;
        setDrawing({ done: ready.length, of: pageCount });
        const address = URL.createObjectURL(await page.picture(printDotsPerInch / 72));
        ready.push({ address, lies: page.widthPt > page.heightPt });
      }
    } finally {
      pdf?.close();
      setDrawing(null);
    }
    if (stopped.current) {
      forget(ready);
      return false;
    }
    setPages(ready);
    return true;
  }, []);
  useEffect(() => stop, [stop]);
  useEffect(() => {
    if (pages.length === 0) return;
    let left = false;
    const after = () => setPages([]);
    window.addEventListener('afterprint', after);
    const pictures = [...document.querySelectorAll<HTMLImageElement>('.print-pages img')];
    void Promise.all(pictures.map((it) => it.decode())).then(() => left || window.print());
    return () => {
      left = true;
      window.removeEventListener('afterprint', after);
      forget(pages);
    };
  }, [pages]);
  return { drawing, pages, print, stop };
}

function forget(pages: readonly PrintPage[]): void {
  for (const { address } of pages) URL.revokeObjectURL(address);
}
