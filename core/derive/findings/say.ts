import type { Mix, Source } from '../../show/act.ts';
import type { Purpose } from '../../show/words.ts';
import type { Subject } from '../derived.ts';
import type { Case } from './rule.ts';

/** Names in quotes, so that a sentence stays readable whatever a source is called. */
export function quoted(row: { name: string } | undefined): string {
  return row ? `"${row.name}"` : 'something that is not in the show';
}

/** Names as a list: one, two and three, and how many more. */
export function listed(rows: readonly { name: string }[]): string {
  const names = rows.slice(0, 3).map(quoted);
  const more = rows.length - names.length;
  if (more > 0) return `${names.join(', ')} and ${more} more`;
  return names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)}` : (names[0] ?? 'nothing');
}

const copyNames: Record<Purpose, string> = {
  foh: 'the FOH channel',
  monitors: 'the copy for monitors',
  wedges: 'the copy for wedges',
  'in-ears': 'the copy for in-ears',
  parallel: 'the parallel channel',
};

export function copyName(purpose: Purpose): string {
  return copyNames[purpose];
}

/** Levels as the trade says them: one digit, a sign, a true minus never. */
export function decibels(levelDb: number): string {
  if (levelDb === -Infinity) return 'nothing';
  const rounded = inTenths(levelDb);
  return rounded > 0 ? `+${rounded} dB` : `${rounded} dB`;
}

/** A level without the sign above 0, as where the words beside it say which way it goes. */
export function unsigned(levelDb: number): string {
  if (levelDb === -Infinity) return 'nothing';
  return `${inTenths(levelDb)} dB`;
}

/** Adding 0 makes a minus zero plain. */
function inTenths(levelDb: number): number {
  return Math.round(levelDb * 10) / 10 + 0;
}

export function number(value: number, digits = 1): string {
  return String(Math.round(value * 10 ** digits) / 10 ** digits);
}

export const aboutSource = (source: Source): Subject => ({ of: 'source', id: source.id });
export const aboutMix = (mix: Mix): Subject => ({ of: 'mix', id: mix.id });

/** One case for all of these sources together, with `{sources}` filled in; none where there are no such sources. */
export function casesOfSources(sources: readonly Source[], say: Case['say'] = {}): Case[] {
  return sources.length === 0 ? [] : [{ say: { sources, ...say }, about: sources.map(aboutSource) }];
}

/** One case for all of these mixes together, with `{mixes}` filled in; none where there are no such mixes. */
export function casesOfMixes(mixes: readonly Mix[], say: Case['say'] = {}): Case[] {
  return mixes.length === 0 ? [] : [{ say: { mixes, ...say }, about: mixes.map(aboutMix) }];
}

/** One case for each of these sources, with `{source}` filled in. */
export function caseOfEachSource(sources: readonly Source[]): Case[] {
  return sources.map((source) => ({ say: { source }, about: [aboutSource(source)] }));
}

/** One case for each of these mixes, with `{mix}` filled in. */
export function caseOfEachMix(mixes: readonly Mix[]): Case[] {
  return mixes.map((mix) => ({ say: { mix }, about: [aboutMix(mix)] }));
}
