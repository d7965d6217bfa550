import type { Weight } from '../fonts/font-table.ts';
import type { SetLine, TypeCase } from '../fonts/type-case.ts';
import { setLine, unitWidth } from './set-line.ts';

/**
 * Where a line may end: after spaces, hyphens and slashes, and between signs of scripts that write without spaces.
 */
const pieces =
  /[\u3040-\u30ff\u3400-\u9fff\uac00-\ud7af\uff01-\uff60][\u3001\u3002\uff0c\uff0e\uff09\u300d]?|[^ \-/\u2013\u3040-\u30ff\u3400-\u9fff\uac00-\ud7af\uff01-\uff60]+[-/\u2013]*[ ]*|[-/\u2013]+[ ]*|[ ]+/g;

/** All but the no-break spaces, at which no line ends. */
const breakingSpaces = /[^\S\u00a0\u202f]+/g;

/** A text in lines no wider than `widthPt`. A word that is wider than a line is broken; nothing is left out. */
export function wrapText(
  text: string,
  widthPt: number,
  sizePt: number,
  weight: Weight,
  typeCase: TypeCase,
): SetLine[] {
  return wrapWords(text, widthPt / sizePt, weight, typeCase).map((line) => setLine(line, weight, typeCase));
}

function wrapWords(text: string, width: number, weight: Weight, typeCase: TypeCase): string[] {
  const whole = text.replace(breakingSpaces, ' ').trim();
  if (whole === '') return [];
  const measure = (it: string) => unitWidth(it.trimEnd(), weight, typeCase);
  if (measure(whole) <= width) return [whole];
  const lines: string[] = [];
  let line = '';
  for (const piece of whole.match(pieces) ?? [whole]) {
    if (line !== '' && measure(line + piece) > width) {
      lines.push(line.trimEnd());
      line = '';
    }
    if (measure(line + piece) <= width) {
      line += piece;
      continue;
    }
    const parts = brokenWord(piece, width, measure);
    line = parts.pop() ?? '';
    lines.push(...parts);
  }
  if (line.trim() !== '') lines.push(line.trimEnd());
  return lines;
}

function brokenWord(word: string, width: number, measure: (text: string) => number): string[] {
  const parts: string[] = [];
  let part = '';
  for (const { segment } of new Intl.Segmenter().segment(word)) {
    if (part !== '' && measure(part + segment) > width) {
      parts.push(part);
      part = '';
    }
    part += segment;
  }
  return [...parts, part];
}

/** The widest word of a text, in points: a column narrower than that breaks words. */
export function widestWord(text: string, sizePt: number, weight: Weight, typeCase: TypeCase): number {
  const words = text.replace(breakingSpaces, ' ').match(pieces) ?? [];
  return words.reduce(
    (widest, word) => Math.max(widest, unitWidth(word.trimEnd(), weight, typeCase) * sizePt),
    0,
  );
}
