import { cellAmount, type ReadAmount, scaledAmount } from '../language/amounts.ts';
import { fold } from '../language/text.ts';
import type { WorkMix } from '../mixes/build-mixes.ts';
import { shorten, type Work, type WorkInput } from '../page/work.ts';
import { askTarget, push, settleScale } from './wish-asking.ts';
import { targetsOfHeading } from './wish-headings.ts';

/** A cell where an input's row meets a mix's column. A bare number has no scale: that is asked once. */
export function readCell(work: Work, mix: WorkMix, cell: WorkMix['cells'][number]): void {
  const read = amountIn(work, cell.text);
  const words = `${cell.heading} ${cell.text}`;
  if (!read) {
    if (cell.input) note(work, mix, cell.input.found.at, words);
    return;
  }
  const settled = read.doubt === '' ? read : settleScale(work, cell.text, read);
  if (cell.input)
    push(mix, words, { of: 'inputs', inputKeys: [cell.input.read.key] }, settled.amount, settled.levelDb);
  else {
    const target = targetsOfHeading(work, mix, cell.heading, cell.numbers ?? []);
    if (target) push(mix, words, target, settled.amount, settled.levelDb);
    else askTarget(work, mix, words, settled, cell.heading);
  }
}

/** The rider's own signs go before its scale, and that before what numbers are elsewhere. */
function amountIn(work: Work, text: string): ReadAmount | null {
  const isTold = work.tongue.legend.has(fold(text)) || work.scale === null;
  return (isTold ? null : scaledAmount(text, work.scale ?? 'db')) ?? cellAmount(text, work.tongue);
}

function note(work: Work, mix: WorkMix, at: WorkInput['found']['at'], words: string): void {
  work.found.puzzles.push({
    at,
    text: words,
    why: `"${shorten(words)}" for ${mix.read.label} is no amount that is known.`,
  });
}
