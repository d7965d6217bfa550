import type { Amount } from '../../show/words.ts';
import type { Grid } from '../grid.ts';
import { textOfRow } from '../page/lines.ts';
import type { Language } from '../words/table.ts';
import { cellAmount } from './amounts.ts';
import { lookUp } from './lexicon.ts';
import { fold } from './text.ts';
import { wishWords } from './vocabulary.ts';

/** What the signs of a table of mixes mean, where the rider says so: the sign, folded, to its amount. */
export type Legend = ReadonlyMap<string, Amount>;

/** Pieces of a legend: "0 = off / + little / ++ medium". */
const between = /\s*(?:[/|;,·•]|\s{2,}|\n)\s*/;
const pair = /^(?<sign>[^\s=:]{1,3})\s*(?:[=:→]|\s-\s|\s)\s*(?<words>[^=:]{2,30})$/u;

/** The legend that a line is, or null: at least two signs, each with an amount in words, and nothing else. */
export function legendIn(text: string, spoken: ReadonlySet<Language>): Map<string, Amount> | null {
  const plain = text
    .replace(/^[^:=+|]{3,24}(?::|\s[-–—|])\s+(?=\S{1,3}\s*[=:]?\s)/u, '')
    .replace(/[().\s]+$/, '');
  const pieces = plain.split(between).filter((piece) => piece !== '');
  if (pieces.length < 2 || pieces.length > 12) return null;
  const legend = new Map<string, Amount>();
  for (const piece of pieces) {
    const found = pair.exec(piece.replace(/^\((?!\S{1,2}\))/, ''))?.groups;
    const sign = found?.sign;
    const amount = found?.words ? amountOfWords(found.words, spoken) : null;
    // "Empty = as you like" asks for nothing.
    if (!amount && isLeftOpen.test(piece)) continue;
    if (!sign || !amount || !isSign(sign)) return null;
    legend.set(fold(sign), amount);
  }
  return legend.size >= 2 ? legend : null;
}

const isLeftOpen =
  /^(?:empty|blank|none|nothing|leer|leeres feld|vide|case vide|rien|vac[ií]o|en blanco|vuot[oa]|leeg|vazi[oa]|em branco|\?|n\/a)\s*[=:→-]/iu;

/** A mark, a number or a letter or two: no word that is itself an amount. */
const isSign = (sign: string) => /^(?:[^\p{L}\p{N}]{1,3}|\d{1,3}%?|\p{L}{1,2})$/u.test(sign);

function amountOfWords(words: string, spoken: ReadonlySet<Language>): Amount | null {
  const senses = lookUp(wishWords, words, spoken) ?? [];
  const amount = senses.find((sense) => sense.subject === 'amount');
  if (amount) return amount.meaning as Amount;
  return cellAmount(words, { spoken, legend: new Map() })?.amount ?? null;
}

/** "+ means nice and loud" in the middle of a sentence. */
const inSentence =
  /(?<![^\s,;(.])(?<sign>\+{1,3}|x{1,3}|\*{1,3})\s+(?:means?|is|stands for|bedeutet|hei(?:ß|ss)t|steht für|veut dire|signifie|significa|quiere decir|vuol dire|sta per|betekent|is gelijk aan|quer dizer)\s+(?<words>[^,;.]{2,30})/giu;

function legendOfSentences(text: string, spoken: ReadonlySet<Language>): [string, Amount][] {
  return [...text.matchAll(inSentence)].flatMap(({ groups }): [string, Amount][] => {
    const amount = groups?.words ? amountOfWords(groups.words.trim(), spoken) : null;
    return groups?.sign && amount ? [[fold(groups.sign), amount]] : [];
  });
}

/**
 * What the rider does not say: where one plus sign means lots, two cannot mean less; and where no three stand
 * anywhere, two are the most there is (common practice).
 */
function withMore(legend: Map<string, Amount>, hasThree: boolean): Legend {
  const one = legend.get('+');
  if (!legend.has('++') && (one === 'lots' || !hasThree)) legend.set('++', 'lots');
  if (one === undefined && !hasThree) legend.set('+', 'some');
  return legend;
}

const threeSigns = /(?<!\+)\+{3}(?!\+)/;

/** Rows looked at for a legend. */
const mostRows = 400;

/** All legends of a rider as one. */
export function legendOf(grid: Grid, spoken: ReadonlySet<Language>): Legend {
  const told = new Map<string, Amount>();
  let hasThree = false;
  for (const { rows } of grid.sheets)
    for (const row of rows.slice(0, mostRows)) {
      const text = textOfRow(row);
      hasThree ||= threeSigns.test(text);
      for (const [sign, amount] of legendOfSentences(text, spoken)) told.set(sign, amount);
      if (text.length > 200) continue;
      for (const [sign, amount] of legendIn(text, spoken) ?? []) told.set(sign, amount);
    }
  return withMore(told, hasThree);
}
