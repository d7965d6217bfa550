import type { CopyTrim } from '../derived.ts';
import { type ActFacts, sourceOf } from '../facts.ts';
import { type Case, casesOf, type FindingRule } from './rule.ts';
import { aboutSource, casesOfSources, copyName, decibels } from './say.ts';

/** Faults of the shared preamp and of trims. */
export const gainFindings: readonly FindingRule[] = [
  {
    code: 'no-gain-owner',
    severity: 'look again',
    when: ['gains of nobody'],
    needs: 'who sets the gain of sources with several copies',
    cause:
      'Nobody is named who sets the gain of {sources}, which several copies share: an unannounced move changes a mix.',
    remedy: 'Name who sets gains in the rig; the other side works with trim only.',
    find: (facts) => {
      const sources = facts.gains
        .filter((gain) => gain.owner === null && gain.trims.length > 1)
        .flatMap((gain) => sourceOf(facts, gain.sourceId) ?? []);
      return casesOfSources(sources);
    },
  },
  {
    code: 'gain-range-upside-down',
    severity: 'look again',
    needs: 'the gain range of the desk',
    cause:
      'The rig gives the desk a lowest gain of {lowest} and a highest of {highest}: no gain lies between, so none is checked.',
    remedy: 'Correct the lowest or the highest gain in the rig.',
    find: ({ sheet: { rig, act } }) =>
      rig.gainMinDb > rig.gainMaxDb
        ? [
            {
              say: { lowest: decibels(rig.gainMinDb), highest: decibels(rig.gainMaxDb) },
              about: [{ of: 'act', id: act.id }],
            },
          ]
        : [],
  },
  {
    code: 'gain-out-of-range',
    severity: 'look again',
    when: ['expected levels'],
    needs: 'sensitivity and expected level of a source, and the gain range of the desk',
    cause:
      '{source} needs about {needed} of gain to reach the target, and the desk gives {lowest} to {highest}.',
    remedy: '{remedy}',
    find: (facts) =>
      casesOf(facts.gains, ({ sourceId, neededDb }) => {
        const { gainMinDb, gainMaxDb } = facts.sheet.rig;
        if (neededDb === null || gainMinDb > gainMaxDb) return null;
        if (neededDb >= gainMinDb && neededDb <= gainMaxDb) return null;
        const source = sourceOf(facts, sourceId);
        if (!source) return null;
        const remedy =
          neededDb > gainMaxDb
            ? 'Use a more sensitive microphone, or bring it nearer.'
            : 'Use a pad, or a less sensitive microphone.';
        return {
          say: {
            source,
            needed: decibels(neededDb),
            lowest: decibels(gainMinDb),
            highest: decibels(gainMaxDb),
            remedy,
          },
          about: [aboutSource(source)],
        };
      }),
  },
  {
    code: 'gain-far-from-needed',
    severity: 'know this',
    when: ['gains that are set'],
    needs: 'the gain as it stands, and what the source is expected to need',
    cause:
      'The gain of {source} stands at {gain}, and about {needed} was expected: something may be other than the plan says.',
    remedy: 'Check the microphone, its pad and the level before you trust either figure.',
    find: (facts) =>
      casesOf(facts.gains, ({ sourceId, gainDb, neededDb }) => {
        if (gainDb === null || neededDb === null || Math.abs(gainDb - neededDb) <= surprisingDb) return null;
        const source = sourceOf(facts, sourceId);
        if (!source) return null;
        return {
          say: { source, gain: decibels(gainDb), needed: decibels(neededDb) },
          about: [aboutSource(source)],
        };
      }),
  },
  {
    code: 'gain-moved',
    severity: 'know this',
    when: ['gains that are set'],
    needs: 'the gain as it stands, and the gain the trims were set at',
    cause:
      'The gain of {source} moved by {moved} since the trims were set: {copies} would be that much {louder}.',
    remedy: 'Set the trim of {trims}.',
    find: (facts) =>
      casesOf(facts.gains, ({ sourceId, movedDb, trims }) => {
        if (movedDb === 0) return null;
        const source = sourceOf(facts, sourceId);
        const moving = trims.filter((trim) => trim.neededDb !== trim.trimDb);
        if (!source || moving.length === 0) return null;
        return {
          say: {
            source,
            moved: decibels(movedDb),
            copies: moving.map((trim) => copyName(trim.purpose)).join(' and '),
            louder: movedDb > 0 ? 'louder' : 'quieter',
            trims: moving.map((trim) => `${copyName(trim.purpose)} to ${decibels(trim.setDb)}`).join(', '),
          },
          about: [aboutSource(source)],
        };
      }),
  },
  {
    code: 'trim-out-of-range',
    severity: 'look again',
    when: ['gains that are set', 'decided copies'],
    needs: 'the trims of copies, the move of the gain, and the trim range of the desk',
    cause:
      '{copy} of {source} needs {needed} of trim, and the desk ends at {set}: it stays {short} too {loud}.',
    remedy: 'Move the gain back by {short}, or change the sends of the mixes it feeds.',
    find: (facts) =>
      facts.gains
        .filter(({ trims }) => trims.some((trim) => trim.shortDb !== 0))
        .flatMap(({ sourceId, trims }) =>
          trims.filter((trim) => trim.shortDb !== 0).flatMap((trim) => caseOfTrim(facts, sourceId, trim)),
        ),
  },
];

/** A gain this far from what the data sheets expect is worth a look. Common practice. */
const surprisingDb = 15;

function caseOfTrim(facts: ActFacts, sourceId: string, trim: CopyTrim): Case[] {
  const source = sourceOf(facts, sourceId);
  if (!source) return [];
  return [
    {
      say: {
        copy: copyName(trim.purpose),
        source,
        needed: decibels(trim.neededDb),
        set: decibels(trim.setDb),
        short: decibels(Math.abs(trim.shortDb)).replace('+', ''),
        loud: trim.shortDb > 0 ? 'quiet' : 'loud',
      },
      about: [aboutSource(source)],
    },
  ];
}
