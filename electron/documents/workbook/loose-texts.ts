import { cleanText } from '../decode-text.ts';
import type { Archive } from '../open-archive.ts';
import { walkXml } from '../walk-xml.ts';

/** Parts of a workbook that hold text beside its cells. */
export const looseTextParts = /^xl\/(?:comments[^/]*|comments\/[^/]+|drawings\/[^/]+)\.xml$/;

/** Notes on cells and the texts of text boxes and shapes (a drawn stage plot has its names there), one each. */
export function readLooseTexts(archive: Archive): string[] {
  return archive.names
    .filter((name) => looseTextParts.test(name))
    .flatMap((name) => textsOf(archive.text(name) ?? ''))
    .map((text) => cleanText(text).replace(/\s+/g, ' ').trim())
    .filter((text) => text !== '');
}

function textsOf(xml: string): string[] {
  const texts: string[] = [];
  let inText = false;
  walkXml(xml, {
    open: (name, attribute) => {
      if (name === 'comment') texts.push(`Note on cell ${attribute('ref') ?? '?'}: `);
      if (name === 'txBody') texts.push('');
      if (name === 't') inText = true;
    },
    text: (text) => {
      if (inText && texts.length > 0) texts[texts.length - 1] += text;
    },
    close: (name) => {
      if (name === 't') inText = false;
      if (name === 'p' && texts.length > 0) texts[texts.length - 1] += ' ';
    },
  });
  return texts;
}
