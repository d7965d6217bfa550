import type { Archive } from '../open-archive.ts';
import { walkXml } from '../walk-xml.ts';

type Level = { bullet: boolean; start: number };
/** A list by its id: the levels it has, and the list it counts together with. */
type List = { counter: string; levels: Map<string, Level> };

/**
 * Counts the numbers of a text document's lists. Word processors do not write a list's numbers into the text: they
 * are counted anew whenever it is shown, and a rider's channel numbers are often such numbers.
 */
export class ListNumbers {
  readonly #lists: Map<string, List>;
  readonly #styles: Map<string, { list: string; level: string }>;
  readonly #counts = new Map<string, number>();

  constructor(archive: Archive) {
    this.#lists = readLists(archive.text('word/numbering.xml'));
    this.#styles = readListStyles(archive.text('word/styles.xml'));
  }

  /** The list that a paragraph's style puts it in, or null. */
  ofStyle(style: string): { list: string; level: string } | null {
    return this.#styles.get(style) ?? null;
  }

  /** The next number of a list at a level, a dash for a bullet, or null where there is no such list. */
  next(list: string, level: string): string | null {
    const found = this.#lists.get(list);
    const of = found?.levels.get(level);
    if (!found || !of) return null;
    if (of.bullet) return '-';
    const key = `${found.counter}/${level}`;
    const number = (this.#counts.get(key) ?? of.start - 1) + 1;
    this.#counts.set(key, number);
    for (const other of this.#counts.keys()) {
      const [counter, deeper] = other.split('/');
      if (counter === found.counter && Number(deeper) > Number(level)) this.#counts.delete(other);
    }
    return String(number);
  }
}

function readLists(xml: string | null): Map<string, List> {
  const abstract = new Map<string, Map<string, Level>>();
  const lists = new Map<string, List>();
  if (!xml) return lists;
  let levels = new Map<string, Level>();
  let level: Level = { bullet: false, start: 1 };
  let list = '';
  walkXml(xml, {
    open: (name, attribute) => {
      const value = attribute('val') ?? '';
      if (name === 'abstractNum') {
        levels = new Map();
        abstract.set(attribute('abstractNumId') ?? '', levels);
      } else if (name === 'lvl') {
        level = { bullet: false, start: 1 };
        levels.set(attribute('ilvl') ?? '0', level);
      } else if (name === 'start') level.start = Number(value);
      else if (name === 'numFmt') level.bullet = value === 'bullet' || value === 'none';
      else if (name === 'num') list = attribute('numId') ?? '';
      else if (name === 'abstractNumId')
        lists.set(list, { counter: value, levels: abstract.get(value) ?? new Map() });
    },
  });
  return lists;
}

function readListStyles(xml: string | null): Map<string, { list: string; level: string }> {
  const styles = new Map<string, { list: string; level: string }>();
  if (!xml) return styles;
  let style = '';
  let level = '0';
  walkXml(xml, {
    open: (name, attribute) => {
      if (name === 'style') {
        style = attribute('styleId') ?? '';
        level = '0';
      } else if (name === 'ilvl') level = attribute('val') ?? '0';
      else if (name === 'numId') styles.set(style, { list: attribute('val') ?? '', level });
    },
  });
  return styles;
}
