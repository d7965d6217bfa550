import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright';

const require = createRequire(import.meta.url);
const source = (name: string) => readFileSync(require.resolve(`pdfjs-dist/legacy/build/${name}`), 'utf8');

/** What the page below has: pdf.js, and the two things asked of it. */
type Painter = {
  paint(base64: string, pageNumber: number, widthPx: number): Promise<string>;
  difference(one: string, other: string): Promise<{ whole: number; worstSquare: number }>;
};
declare global {
  interface Window {
    painter: Painter;
  }
}

/** A page in Chromium that paints PDF pages with pdf.js and compares pictures. */
export async function openPainter(browser: Browser): Promise<Page> {
  const page = await browser.newPage();
  await page.setContent('<!doctype html><title>Pictures</title>');
  for (const name of ['pdf.worker.min.mjs', 'pdf.min.mjs'])
    await page.addScriptTag({ type: 'module', content: source(name) });
  await page.addScriptTag({ type: 'module', content: painterSource });
  await page.waitForFunction(() => window.painter !== undefined);
  return page;
}

/** Plain JavaScript of the page: a picture is a data address; a difference the share of pixels that are unlike. */
const painterSource = `
const { getDocument, GlobalWorkerOptions } = globalThis.pdfjsLib;
GlobalWorkerOptions.workerSrc = 'none';
const bytesOf = (base64) => Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
const canvasOf = (width, height) => Object.assign(document.createElement('canvas'), { width, height });
async function pixelsOf(address, width, height) {
  const image = new Image();
  image.src = address;
  await image.decode();
  const canvas = canvasOf(width ?? image.width, height ?? image.height);
  const context = canvas.getContext('2d');
  context.drawImage(image, 0, 0);
  return { width: image.width, height: image.height, data: context.getImageData(0, 0, canvas.width, canvas.height).data };
}
window.painter = {
  async paint(base64, pageNumber, widthPx) {
    const task = getDocument({ data: bytesOf(base64), verbosity: 0 });
    const pdf = await task.promise;
    const page = await pdf.getPage(pageNumber);
    const scale = widthPx / page.getViewport({ scale: 1 }).width;
    const viewport = page.getViewport({ scale });
    const canvas = canvasOf(Math.round(viewport.width), Math.round(viewport.height));
    await page.render({ canvas, viewport, background: 'white' }).promise;
    await task.destroy();
    return canvas.toDataURL('image/png');
  },
  async difference(one, other) {
    const a = await pixelsOf(one);
    const b = await pixelsOf(other);
    if (a.width !== b.width || a.height !== b.height) return { whole: 1, worstSquare: 1 };
    const side = 64;
    const across = Math.ceil(a.width / side);
    const squares = new Map();
    let whole = 0;
    for (let at = 0; at < a.data.length / 4; at++) {
      if (Math.abs(a.data[at * 4] - b.data[at * 4]) <= 96) continue;
      whole++;
      const square = Math.floor(at / a.width / side) * across + Math.floor((at % a.width) / side);
      squares.set(square, (squares.get(square) ?? 0) + 1);
    }
    return {
      whole: whole / (a.data.length / 4),
      worstSquare: Math.max(0, ...squares.values()) / (side * side),
    };
  },
};
`;
