import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

const packageFolder = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));

/** A piece of text as a PDF reader finds it, in points from the top left of its page; `y` is its base line. */
export type FoundText = { text: string; x: number; y: number; width: number; sizePt: number };
export type FoundPage = { widthPt: number; heightPt: number; texts: FoundText[] };

/** The pages of a PDF as a reader that has nothing to do with the writer finds them. */
export async function pdfPages(bytes: Uint8Array): Promise<FoundPage[]> {
  const task = getDocument({
    data: new Uint8Array(bytes),
    verbosity: 0,
    cMapUrl: `${join(packageFolder, 'cmaps')}/`,
    standardFontDataUrl: `${join(packageFolder, 'standard_fonts')}/`,
  });
  const document = await task.promise;
  const pages: FoundPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [, , widthPt = 0, heightPt = 0] = page.view;
    const content = await page.getTextContent({ disableNormalization: true });
    const texts = content.items.flatMap((item) => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [, , , scale = 0, x = 0, y = 0] = item.transform as number[];
      return [{ text: item.str, x, y: heightPt - y, width: item.width, sizePt: scale }];
    });
    pages.push({ widthPt, heightPt, texts });
  }
  await task.destroy();
  return pages;
}

/** All words of some pages in one line, so that a name is found wherever it was broken. */
export function wordsOf(pages: readonly FoundPage[]): string {
  return pages
    .flatMap(({ texts }) => texts.map(({ text }) => text))
    .join(' ')
    .replace(/\s+/g, ' ');
}
