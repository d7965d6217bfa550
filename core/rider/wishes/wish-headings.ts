import { factsOfKind } from '../../show/source-kinds.ts';
import { squash, tidy } from '../language/text.ts';
import type { WorkMix } from '../mixes/build-mixes.ts';
import type { Work } from '../page/work.ts';
import type { ReadWish } from '../reading.ts';
import { keysOf } from './wish-item.ts';
import { isCalledWhole } from './wish-names.ts';
import { targetsOf } from './wish-target.ts';

/**
 * What the heading of a row or column of amounts stands for: one source, a group, or several of either
 * ("Kick/Snare", "Keys + bass", "BV 1-3"). `numbers` are those of lines that stand beside it.
 */
export function targetsOfHeading(
  work: Work,
  mix: WorkMix,
  heading: string,
  numbers: readonly number[],
): ReadWish['target'] | null {
  const parts = isCalledWhole(work, heading) ? [] : partsOf(heading);
  const found = parts.map((part) => targetsOf(work, mix, part));
  if (parts.length > 1 && found.every((it) => it !== null && keysIn(work, it).length > 0)) {
    const keys = found.flatMap((it) => (it ? keysIn(work, it) : []));
    return { of: 'inputs', inputKeys: [...new Set(keys)] };
  }
  return targetsOf(work, mix, heading) ?? beginningOfName(work, heading) ?? targetsByNumber(work, numbers);
}

/** The things that a heading names; "BV 1/2" names "BV 1" and "BV 2". */
function partsOf(heading: string): string[] {
  const [, name = '', first = '', mark = '', last = ''] =
    /^(\p{L}.*?)\s*(\d{1,2})\s*([-–/+&,])\s*(\d{1,2})$/u.exec(heading) ?? [];
  if (name !== '') {
    const [from, to] = [Number(first), Number(last)];
    if (!/[-–]/.test(mark)) return [`${name} ${from}`, `${name} ${to}`];
    if (to > from) return Array.from({ length: to - from + 1 }, (_, at) => `${name} ${from + at}`);
  }
  return heading
    .split(/\s*[/+&,;]\s*|\s+(?:and|und|et|y|e|en|u)\s+/iu)
    .map(tidy)
    .filter((part) => part !== '');
}

function keysIn(work: Work, target: ReadWish['target']): string[] {
  if (target.of === 'inputs') return target.inputKeys;
  if (target.of !== 'group') return [];
  return work.inputs
    .filter((input) => factsOfKind(input.read.kind).group === target.group)
    .map((input) => input.read.key);
}

/** "Tres" over a column is the line "Tres cubano", whatever else the word means. */
function beginningOfName(work: Work, heading: string): ReadWish['target'] | null {
  const key = squash(heading);
  const inputs = work.inputs.filter(
    ({ read }) => key.length > 2 && squash(read.name.split(' ')[0] ?? '') === key,
  );
  return inputs.length === 0 ? null : keysOf(inputs);
}

function targetsByNumber(work: Work, numbers: readonly number[]): ReadWish['target'] | null {
  const inputs = work.inputs.filter((input) => numbers.includes(input.read.channel));
  return inputs.length === 0 ? null : keysOf(inputs);
}
