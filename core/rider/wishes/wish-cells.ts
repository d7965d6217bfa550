import { cellAmount, type ReadAmount } from '../language/amounts.ts';
import type { WorkMix } from '../mixes/build-mixes.ts';
import { shorten, type Work, type WorkInput } from '../page/work.ts';
import type { ReadWish } from '../reading.ts';
import { askTarget, push, settleScale } from './wish-asking.ts';
import { targetsOf } from './wish-target.ts';

/** A cell where an input's row meets a mix's column. A bare number has no scale: that is asked once. */
export function readCell(work: Work, mix: WorkMix, cell: WorkMix['cells'][number], areLevels: boolean): void {
  const read = (areLevels ? bareLevel(cell.text) : null) ?? cellAmount(cell.text, work.tongue);
  const words = `${cell.heading} ${cell.text}`;
  if (!read) {
    if (cell.input) note(work, mix, cell.input.found.at, words);
    return;
  }
  const settled = read.doubt === '' ? read : settleScale(work, cell.text, read);
  if (cell.input)
    push(mix, words, { of: 'inputs', inputKeys: [cell.input.read.key] }, settled.amount, settled.levelDb);
  else {
    const inputs = targetsOf(work, mix, cell.heading) ?? targetsByNumber(work, cell.numbers ?? []);
    if (inputs) push(mix, words, inputs, settled.amount, settled.levelDb);
    else askTarget(work, mix, words, settled, cell.heading);
  }
}

function targetsByNumber(work: Work, numbers: readonly number[]): ReadWish['target'] | null {
  const inputs = work.inputs.filter((input) => numbers.includes(input.read.channel));
  return inputs.length === 0 ? null : { of: 'inputs', inputKeys: inputs.map((input) => input.read.key) };
}

/** Where other cells stand below zero, "0" is full level and no wish for silence. */
function bareLevel(text: string): ReadAmount | null {
  const number = /^[+-]?\d{1,3}(?:[.,]\d+)?$/.exec(text.trim().replace('−', '-'));
  if (!number) return null;
  return {
    amount: null,
    levelDb: Number(number[0].replace(',', '.')),
    doubt: 'A bare number is read as dB.',
  };
}

function note(work: Work, mix: WorkMix, at: WorkInput['found']['at'], words: string): void {
  work.found.puzzles.push({
    at,
    text: words,
    why: `"${shorten(words)}" for ${mix.read.label} is no amount that is known.`,
  });
}
