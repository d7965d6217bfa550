import { channelNumbers, numberedText } from '../language/numbers.ts';
import { readSourceName } from '../language/source-name.ts';
import { tidy } from '../language/text.ts';
import type { Cell, Line } from '../page/lines.ts';
import { saysNothing } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import { readDetails } from './details.ts';
import { partInLine, pushInput } from './found-input.ts';
import { splitNameAndDetails } from './name-and-details.ts';

/** Fewer numbered items than these in one run of text are no list. */
const leastItems = 3;

const itemStart =
  /(?<before>^|[\s,;|/])(?<word>(?:ch(?:annel)?|kanal|canale?|kanaal|voie|tranche|in(?:put)?)\.?\s*#?\s*)?(?<numbers>\d{1,2}(?:\s?[+/&-]\s?\d{1,2})?)\s*(?<mark>[).:=]|-(?=\s))?\s*(?=\p{L})/giu;

type Item = { numbers: number[]; text: string };

/** "1) cassa 2) rullante 3) charleston", "ch1 kick, ch2 snare, ...": several numbered lines in one run of text. */
export function takeManyNumbered(walk: Walk, line: Line): boolean {
  if (line.cells.length !== 1) return false;
  const items = numberedItems(line.text);
  if (items.length < leastItems) return false;
  const pieces = items.map(({ numbers, text }) => ({ numbers, split: splitNameAndDetails(text, walk) }));
  const named = pieces.filter(({ split }) => readSourceName(split.name, walk.tongue).stem !== null);
  if (named.length * 3 < items.length * 2) return false;
  pieces.forEach(({ numbers, split }, index) => {
    if (saysNothing(split.name)) return;
    pushInput(
      walk,
      { ...line, part: partInLine(walk, line, index) },
      {
        name: split.name,
        numbers,
        detail: split.beside,
        details: readDetails(split.details, walk.tongue),
        performerText: split.performer,
      },
    );
  });
  return true;
}

/** Lists side by side in one row are no more than these. */
const mostBeside = 100;

/** The items of a text whose numbers go on from one to the next, each set off by a mark, a word or a comma. */
function numberedItems(text: string): Item[] {
  const items: (Item & { from: number; start: number })[] = [];
  for (const found of text.matchAll(itemStart)) {
    const { before = '', word, numbers: written = '', mark } = found.groups ?? {};
    const isSetOff =
      Boolean(word || mark) ||
      before !== ' ' ||
      found.index === 0 ||
      /[,;]\s*$/.test(text.slice(0, found.index + 1));
    const numbers = channelNumbers(written);
    const next = (items.at(-1)?.numbers.at(-1) ?? 0) + 1;
    const [first] = numbers;
    if (!isSetOff || first === undefined || (items.length > 0 && first !== next)) continue;
    items.push({ numbers, text: '', from: found.index, start: found.index + found[0].length });
  }
  return items.map(({ numbers, start }, at) => ({
    numbers,
    text: tidy(text.slice(start, items[at + 1]?.from ?? text.length).replace(/[\s,;|/]+$/, '')),
  }));
}

/** "1 | Kick | 9 | Bass DI", "1 Kick   9 Bass DI": lists side by side without headings, each as a line of its own. */
export function sideBySide(walk: Walk, line: Line): Line[] {
  const around = [walk.lines[walk.at - 1], walk.lines[walk.at + 1]];
  const starts = line.cells.flatMap((cell, at) => {
    const number = numberOf(cell, line.cells[at + 1]);
    const isRun = around.some((other, step) => {
      const found = other?.cells.findIndex((it, place) =>
        line.loose ? place === at : it.column === cell.column,
      );
      const beside = other?.cells[found ?? -1];
      const next = beside && numberOf(beside, other?.cells[(found ?? -1) + 1]);
      return number !== null && next === number + (step === 0 ? -1 : 1);
    });
    return isRun ? [at] : [];
  });
  if (starts.length < 2 || starts[0] !== 0) return [line];
  return starts.map((start, part) => {
    const cells = line.cells.slice(start, starts[part + 1] ?? line.cells.length);
    const text = cells.map((cell) => cell.text).join(' | ');
    return { ...line, part: line.part + part * mostBeside, cells, text };
  });
}

/** The number that a cell begins with, where a name stands behind it in the cell or in the next one. */
function numberOf({ text }: Cell, next: Cell | undefined): number | null {
  if (/^\d{1,3}[.):]?$/.test(text))
    return next && /\p{L}{2}/u.test(next.text) ? Number.parseInt(text, 10) : null;
  return numberedText(text)?.numbers[0] ?? null;
}
