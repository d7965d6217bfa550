import type { Amount } from '../../show/words.ts';
import type { Language } from '../words/table.ts';
import { lookUp } from './lexicon.ts';
import type { Scale } from './scale.ts';
import { fold } from './text.ts';
import { amountWords } from './vocabulary.ts';

/** How much: in a word or in dB. `doubt` says why a look is needed, or is empty. */
export type ReadAmount = { amount: Amount | null; levelDb: number | null; doubt: string };

/** What a rider's amounts are written in: its languages, and its own signs where it explains them. */
export type Speech = { spoken: ReadonlySet<Language>; legend: ReadonlyMap<string, Amount> };

const word = (amount: Amount, doubt = ''): ReadAmount => ({ amount, levelDb: null, doubt });

/** Levels outside this are no level of a send. */
const lowestDb = -120;
const highestDb = 20;

/** A share of the most there is, as an amount: practice reads 10/10 as lots, 5/10 as some, 2/10 as little. */
function fromShare(share: number, doubt = ''): ReadAmount {
  if (share <= 0) return word('none', doubt);
  if (share < 0.4) return word('little', doubt);
  if (share <= 0.7) return word('some', doubt);
  return word('lots', doubt);
}

/**
 * An amount written as a sign or number: "+++", "x", "-6 dB", "80 %", "8/10". A bare number has no scale: it is
 * read as dB where it is below zero, else as tenths or per cent, with a doubt. Null where it is no amount.
 * `alone` says that the text is a whole cell, where a mark or a bare number can only be an amount.
 */
export function signAmount(text: string, alone: boolean): ReadAmount | null {
  const sign = fold(text).replace(/\s+/g, '').replace(',', '.');
  const plus = /^\++$/.exec(sign);
  if (plus) return word(sign.length >= 3 ? 'lots' : sign.length === 2 ? 'some' : 'little');
  const db = /^[@(]?([+-]?\d+(?:\.\d+)?)db(?:fs|u)?\)?$/.exec(sign);
  if (db) {
    const levelDb = Number(db[1]);
    if (levelDb < lowestDb || levelDb > highestDb) return null;
    return { amount: null, levelDb, doubt: '' };
  }
  if (/^-?(?:inf|∞|oo)(?:db)?$/.test(sign)) return word('none');
  const percent = /^(\d{1,3})(?:%|percent|prozent|pct)$/.exec(sign);
  if (percent) return fromShare(Number(percent[1]) / 100);
  const share = /^(\d{1,3})\/(5|10|100)$/.exec(sign);
  if (share && Number(share[1]) <= Number(share[2])) return fromShare(Number(share[1]) / Number(share[2]));
  if (!alone || /\d\s+\d/.test(text)) return null;
  if (/^xx+$/.test(sign)) return word('lots');
  if (/^\([x✓o+•]\)$/.test(sign)) return word('little');
  if (/^[x✓✔☑•●■√✗*y]$|^(?:yes|ja|oui|si|sim|ok|v)$/.test(sign)) return word('some');
  if (/^(?:-+|0|n|no|nein|non|nao|nee|off|aus|○|☐|n\/a|\/)$/.test(sign)) return word('none');
  const number = /^([+-]?\d+(?:\.\d+)?)$/.exec(sign);
  if (!number) return null;
  const value = Number(number[1]);
  if (value < 0 && value >= lowestDb)
    return { amount: null, levelDb: value, doubt: 'A number below zero is read as dB.' };
  if (value <= 10) return fromShare(value / 10, 'A bare number is read as tenths.');
  if (value <= 100) return fromShare(value / 100, 'A bare number is read as per cent.');
  return null;
}

/** A bare number as an amount on the scale that the rider tells; null where it is no number or stands beyond it. */
export function scaledAmount(text: string, scale: Scale): ReadAmount | null {
  const number = /^[+-]?\d{1,3}(?:[.,]\d+)?$/.exec(text.trim().replace(/[−–]/, '-').replace(/\s/g, ''));
  if (!number) return null;
  const value = Number(number[0].replace(',', '.'));
  if (scale === 'db')
    return value < lowestDb || value > highestDb ? null : { amount: null, levelDb: value, doubt: '' };
  return value < 0 || value > scale.most ? null : fromShare(value / scale.most);
}

/** The amount that a whole cell of a table of mixes asks for, or null where it is none. */
export function cellAmount(text: string, { spoken, legend }: Speech): ReadAmount | null {
  const told = legend.get(fold(text));
  if (told) return word(told);
  const sign = signAmount(text, true);
  if (sign) return sign;
  const senses = lookUp(amountWords, text, spoken);
  const amount = senses?.[0]?.meaning;
  if (amount) return word(amount as Amount);
  const short = letterAmounts[fold(text).replace(/[.\s]/g, '')];
  return short ? word(short) : null;
}

/** Single letters in a table of mixes (common practice; German and Romance initials where they do not clash). */
const letterAmounts: Record<string, Amount> = {
  h: 'lots',
  hi: 'lots',
  m: 'some',
  l: 'little',
  lo: 'little',
  loud: 'lots',
};
