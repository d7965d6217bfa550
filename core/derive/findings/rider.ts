import { daysBetween } from '../calendar.ts';
import type { FindingRule } from './rule.ts';
import { aboutSource, number } from './say.ts';

/** A rider written longer before the day than this is likely to be of an old line-up. Common practice. */
const oldRiderDays = 365;

/** A name as it is said aloud. */
const nameSaid = (source: { name: string }) => source.name.trim().toLowerCase();

/** Whether two names may be said alike. Turning every name into small letters would take three times as long. */
function someMayBeAlike(sources: readonly { name: string }[]): boolean {
  const seen = new Set<number>();
  for (const { name } of sources) {
    const sum = sumOfLetters(name);
    if (sum === null) return true;
    seen.add(sum);
  }
  return seen.size < sources.length;
}

/** A number that is the same for names said alike; null: one of its letters has more than one small form. */
function sumOfLetters(name: string): number | null {
  let sum = 0;
  for (let at = 0; at < name.length; at++) {
    const code = name.charCodeAt(at);
    if (code > lastOfAscii) return null;
    // A capital and its small letter differ in this bit alone.
    if (code > space) sum = (Math.imul(sum, 31) + (code | space)) | 0;
  }
  return sum;
}

const space = 32;
const lastOfAscii = 127;

/** Faults of papers, names and times. */
export const riderFindings: readonly FindingRule[] = [
  {
    code: 'rider-has-expired',
    severity: 'look again',
    needs: 'the day of the show, and how long the rider says it holds',
    cause: '"{file}" holds until {until}, and the act plays on {day}.',
    remedy: 'Ask the band itself for the current rider.',
    find: ({ sheet: { riders, day, act } }) =>
      riders
        .filter((rider) => rider.validUntil !== '' && day.date !== '' && rider.validUntil < day.date)
        .map((rider) => ({
          say: { file: rider.fileName, until: rider.validUntil, day: day.date },
          about: [{ of: 'act' as const, id: act.id }],
        })),
  },
  {
    code: 'rider-is-old',
    severity: 'know this',
    needs: 'the day of the show, and when the rider was written',
    cause: '"{file}" was written {months} months before the day: the line-up may have changed.',
    remedy: 'Ask the band itself whether it is current.',
    find: ({ sheet: { riders, day, act } }) => {
      // Only the newest says what the plan was made from.
      const rider = riders.at(-1);
      const days = rider ? daysBetween(rider.writtenOn, day.date) : null;
      if (!rider || days === null || days <= oldRiderDays) return [];
      const months = number(days / 30.44, 0);
      return [{ say: { file: rider.fileName, months }, about: [{ of: 'act', id: act.id }] }];
    },
  },
  {
    code: 'rider-line-twice',
    severity: 'know this',
    when: ['rider numbers'],
    needs: 'the numbers of the rider',
    cause: 'The rider gives line {line} to {sources}.',
    remedy: 'Ask the band which it is; the plan keeps both as lines of their own.',
    find: ({ sheet }) =>
      [...Map.groupBy(sheet.sources, (source) => source.riderLine)]
        .filter(([line, sources]) => line !== null && sources.length > 1)
        .map(([line, sources]) => ({
          say: { line: line ?? 0, sources },
          about: sources.map(aboutSource),
        })),
  },
  {
    code: 'same-name-twice',
    severity: 'look again',
    needs: 'the names of sources',
    cause: '{count} sources are called {name}: on stage nobody knows which one is meant.',
    remedy: 'Give each a name of its own.',
    find: ({ sheet }) => {
      // In nearly every act all names differ, and then no lists are made.
      if (!someMayBeAlike(sheet.sources)) return [];
      return [...Map.groupBy(sheet.sources, nameSaid)]
        .filter(([, sources]) => sources.length > 1)
        .map(([, sources]) => ({
          say: { count: sources.length, name: sources[0] },
          about: sources.map(aboutSource),
        }));
    },
  },
  {
    code: 'act-ends-before-it-starts',
    severity: 'must fix',
    needs: 'the times of the act',
    cause: 'The act ends before it starts.',
    remedy: 'Correct its times; a set past midnight goes on counting beyond 24:00.',
    find: ({ sheet: { act } }) =>
      act.startMinute !== null && act.endMinute !== null && act.endMinute <= act.startMinute
        ? [{ about: [{ of: 'act', id: act.id }] }]
        : [],
  },
  {
    code: 'nothing-to-plan',
    severity: 'know this',
    needs: 'the sources and mixes of the act',
    cause: 'The act has no {what} yet.',
    remedy: 'Bring in its rider, or enter them by hand.',
    find: ({ sheet: { sources, mixes, act } }) => {
      if (sources.length > 0 && mixes.length > 0) return [];
      const what = sources.length > 0 ? 'mixes' : mixes.length > 0 ? 'sources' : 'sources and no mixes';
      return [{ say: { what }, about: [{ of: 'act', id: act.id }] }];
    },
  },
];
