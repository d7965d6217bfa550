import { twoCopiesEffect } from '../../acoustics/two-copies.ts';
import { type DoublingUnit, unitsOfSources } from '../../plan/doubling-order.ts';
import type { Copy, Source } from '../../show/act.ts';
import { addToList } from '../../show/add-to-list.ts';
import { remembered } from '../../show/remember.ts';
import type { Id } from '../../show/rig.ts';
import { type Purpose, purposes } from '../../show/words.ts';
import type { CopiesOfSource } from '../copies-of-source.ts';
import type { Feed } from '../derived.ts';
import { type ActFacts, copyRowOf, mixOf, sourceOf } from '../facts.ts';
import { feedOf, feedsOfSource } from '../feeds.ts';
import { outcomesFrom } from '../outcomes.ts';
import { hasOutcomeSomewhere } from '../sends.ts';
import { type Case, casesOf, casesOfEach, type FindingRule } from './rule.ts';
import { aboutSource, casesOfSources, copyName, decibels, number } from './say.ts';

/** Faults of channels and copies. */
export const copyFindings: readonly FindingRule[] = [
  {
    code: 'two-copies-in-one-mix',
    severity: 'must fix',
    when: ['decisions'],
    needs: 'a second copy put into a mix; trims, latencies and polarities of both copies',
    cause: '{mix} gets {source} twice, from {first} and {second}: {effect}.',
    remedy: 'Take one of the two copies out of {mix}.',
    find: (facts) => facts.secondFeeds.map((second) => twoCopies(facts, second)),
  },
  {
    code: 'monitor-copy-in-main-mix',
    severity: 'must fix',
    when: ['decided copies'],
    needs: 'which channels the desk sends to the main mix',
    cause:
      '{copy} of {source} goes to the main mix, so the audience hears it twice and a move for the stage is a move for the hall.',
    remedy: 'Take {copy} of {source} out of the main mix.',
    find: (facts) =>
      facts.sheet.copies
        .filter((copy) => copy.wanted && copy.inMainMix === true && isForStage(copy.purpose))
        .flatMap((copy) => caseOfCopy(facts, copy)),
  },
  {
    code: 'foh-copy-beside-monitor-copy',
    severity: 'look again',
    when: ['decisions'],
    needs: 'the copies of a source and the one chosen for a mix',
    cause:
      '{mix} takes {source} from the FOH channel although there is a copy for the stage, so every FOH setting is heard there.',
    remedy: 'Let the rule choose the copy, or keep the FOH channel if {mix} wants the sound of the hall.',
    find: (facts) => casesOfFeedsFrom(facts, 'foh', (copies) => copies?.monitors != null),
  },
  {
    code: 'parallel-copy-in-mix',
    severity: 'know this',
    when: ['decisions'],
    needs: 'the copy chosen for a mix',
    cause: '{mix} takes {source} from the parallel channel, which the FOH engineer shapes for effect.',
    remedy: 'Check that {mix} is meant to hear the parallel sound.',
    find: (facts) => casesOfFeedsFrom(facts, 'parallel', (copies) => copies?.parallel != null),
  },
  {
    code: 'chosen-copy-missing',
    severity: 'look again',
    when: ['decisions'],
    needs: 'the copy chosen for a mix, and the copies there are',
    cause: 'For {source} in {mix} {copy} was chosen, but there is no such channel, so {instead} feeds it.',
    remedy: 'Make that copy, or choose another one.',
    find: (facts) =>
      facts.sheet.decisions.flatMap((decision) => {
        if (decision.about !== 'feed') return [];
        const feed = feedAt(facts, decision.mixId, decision.sourceId);
        const has = facts.copies[facts.index.sourceAt.get(decision.sourceId) ?? -1]?.[decision.purpose];
        if (!feed || has !== null || feed.step === 'no wish' || feed.step === 'mixed elsewhere') return [];
        const instead = feed.purpose === null ? 'nothing' : copyName(feed.purpose);
        const { say, about } = caseOfFeed(facts, feed);
        return [{ say: { ...say, copy: copyName(decision.purpose), instead }, about }];
      }),
  },
  {
    code: 'source-without-channel',
    severity: 'must fix',
    when: ['copies without channel'],
    needs: 'the channels of the desk and those the act needs',
    cause: '{source} has no channel for {copy}: the act needs {needed} channels, the desk has {there}.',
    remedy: 'Drop a source or a copy, or mark what is not to be heard here.',
    find: (facts) =>
      casesOf(facts.plan.copies, (copy) => {
        const source = copy.channel === null ? sourceOf(facts, copy.sourceId) : undefined;
        if (!source) return null;
        const needed = facts.plan.copies.length;
        const there = facts.sheet.rig.channelCount;
        return {
          say: { source, copy: copyName(copy.purpose), needed, there },
          about: [aboutSource(source)],
        };
      }),
  },
  {
    code: 'channel-used-twice',
    severity: 'must fix',
    when: ['decided copies'],
    needs: 'the channels decided for copies',
    cause: 'Channel {channel} is given to {sources}: only one of them can be on it.',
    remedy: 'Give one of them another channel.',
    find: (facts) =>
      [...sourcesByChannel(facts)]
        .filter(([, users]) => users.length > 1)
        .map(([channel, users]) => ({
          say: { channel, sources: users },
          about: [{ of: 'channel', channel } as const, ...users.map(aboutSource)],
        })),
  },
  {
    code: 'channel-beyond-desk',
    severity: 'must fix',
    when: ['decided copies'],
    needs: 'the channels of the desk',
    cause: '{source} is on channel {channel}, but the desk ends at {there}.',
    remedy: 'Give it a channel that the desk has.',
    find: (facts) =>
      casesOf(facts.plan.copies, ({ sourceId, channel }) => {
        const there = facts.sheet.rig.channelCount;
        const source = channel === null || channel <= there ? undefined : sourceOf(facts, sourceId);
        if (!source || channel === null) return null;
        return {
          say: { source, channel, there },
          about: [{ of: 'channel', channel }, aboutSource(source)],
        };
      }),
  },
  {
    code: 'no-room-for-monitor-copies',
    severity: 'know this',
    needs: 'the channels left when every source has its own',
    cause:
      '{sources} would gain from a copy for monitors, but no channel is left: FOH settings will be heard on stage.',
    remedy: 'Free channels, or agree with FOH to go easy on those sources.',
    find: (facts) => {
      const sources = facts.plan.passedOver.flatMap(({ sourceId }) => sourceOf(facts, sourceId) ?? []);
      return casesOfSources(sources);
    },
  },
  {
    code: 'phase-pair-doubled-alone',
    severity: 'look again',
    when: ['decided copies'],
    needs: 'the copies of microphones that belong together',
    cause:
      'A copy for monitors is there of {doubled}, but not of {alone}, though they belong together: mixes hear them through different processing.',
    remedy: 'Double all of them, or none.',
    find: (facts) =>
      casesOf(unitsWithSeveral(facts), (unit) => {
        const open = unit.filter((at) => facts.sheet.sources[at]?.audience === 'front of house and monitors');
        const isDoubled = (at: number) => facts.copies[at]?.monitors != null;
        if (open.every(isDoubled) || !open.some(isDoubled)) return null;
        return {
          say: {
            doubled: sourcesAt(facts, open.filter(isDoubled)),
            alone: sourcesAt(
              facts,
              open.filter((at) => !isDoubled(at)),
            ),
          },
          about: sourcesAt(facts, unit).map(aboutSource),
        };
      }),
  },
  {
    code: 'phase-pair-copies-differ',
    severity: 'look again',
    when: ['decided copies'],
    needs: 'polarity and latency of the copies of microphones that belong together',
    cause:
      '{sources} stand to each other otherwise in {copy} than at FOH ({difference}), so they add up differently on stage.',
    remedy: 'Give both copies the same polarity and the same delay as at FOH.',
    find: (facts) =>
      casesOfEach(unitsWithSeveral(facts), (unit) => unequalCopies(facts, sourcesAt(facts, unit))),
  },
  {
    code: 'copy-feeds-no-mix',
    severity: 'know this',
    when: ['decided copies'],
    needs: 'the copies made for a kind of device, and the mixes',
    cause: '{copy} of {source} takes channel {channel}, but no mix is fed from it.',
    remedy: 'Give the channel back, or choose this copy for a mix.',
    find: (facts) =>
      casesOf(facts.plan.copies, (copy) => {
        if (copy.channel === null || (copy.purpose !== 'wedges' && copy.purpose !== 'in-ears')) return null;
        const sourceAt = facts.index.sourceAt.get(copy.sourceId);
        const source = sourceAt === undefined ? undefined : facts.sheet.sources[sourceAt];
        if (sourceAt === undefined || !source) return null;
        if (hasOutcomeSomewhere(facts.sends, sourceAt, outcomesFrom[copy.purpose])) return null;
        return {
          say: { source, copy: copyName(copy.purpose), channel: copy.channel },
          about: [aboutSource(source), { of: 'channel', channel: copy.channel }],
        };
      }),
  },
];

function isForStage(purpose: Purpose): boolean {
  return purpose === 'monitors' || purpose === 'wedges' || purpose === 'in-ears';
}

function feedAt(facts: ActFacts, mixId: Id, sourceId: Id): Feed | undefined {
  const sourceAt = facts.index.sourceAt.get(sourceId);
  const mixAt = facts.index.mixAt.get(mixId);
  return sourceAt === undefined || mixAt === undefined ? undefined : feedOf(facts, sourceAt, mixAt);
}

/** A case for every feed from copies for a purpose, of those sources whose copies stand so. */
function casesOfFeedsFrom(
  facts: ActFacts,
  purpose: Purpose,
  isSo: (copies: CopiesOfSource | undefined) => boolean,
): readonly Case[] {
  const outcomes = outcomesFrom[purpose];
  if ((facts.sends.outcomesOfAll & outcomes) === 0) return [];
  return facts.sheet.sources.flatMap((_, sourceAt) =>
    isSo(facts.copies[sourceAt]) && hasOutcomeSomewhere(facts.sends, sourceAt, outcomes)
      ? feedsOfSource(facts, sourceAt)
          .filter((feed) => feed.purpose === purpose)
          .map((feed) => caseOfFeed(facts, feed))
      : [],
  );
}

function caseOfFeed(facts: ActFacts, { mixId, sourceId }: Feed): Case {
  return {
    say: { mix: mixOf(facts, mixId), source: sourceOf(facts, sourceId) },
    about: [{ of: 'feed', mixId, sourceId }],
  };
}

function caseOfCopy(facts: ActFacts, copy: Copy): Case[] {
  const source = sourceOf(facts, copy.sourceId);
  if (!source) return [];
  return [{ say: { source, copy: copyName(copy.purpose) }, about: [aboutSource(source)] }];
}

/** The sources on every channel. */
function sourcesByChannel(facts: ActFacts): Map<number, Source[]> {
  const users = new Map<number, Source[]>();
  for (const { sourceId, channel } of facts.plan.copies) {
    const source = sourceOf(facts, sourceId);
    if (channel === null || !source) continue;
    addToList(users, channel, source);
  }
  return users;
}

/** What two copies do to each other, in words: sum, and where they comb the first notches. */
function twoCopies(facts: ActFacts, second: Feed): Case {
  const first = feedAt(facts, second.mixId, second.sourceId);
  const heard = (feed: Feed | undefined) => {
    const row = feed?.purpose ? copyRowOf(facts, feed.sourceId, feed.purpose) : undefined;
    return {
      levelDb: (feed?.levelDb ?? -Infinity) + (row?.trimDb ?? 0),
      latencyMs: row?.latencyMs ?? 0,
      polarityInverted: row?.polarityInverted ?? false,
    };
  };
  const { sumDb, firstNotchHz, latencyDifferenceMs } = twoCopiesEffect(heard(first), heard(second));
  const sum =
    sumDb === -Infinity ? 'they cancel each other' : `together they are ${decibels(sumDb)} against one`;
  const effect =
    firstNotchHz === null
      ? sum
      : `${number(latencyDifferenceMs, 2)} ms apart they comb, the first notch at ${number(firstNotchHz, 0)} Hz`;
  const { say, about } = caseOfFeed(facts, second);
  return {
    say: {
      ...say,
      first: copyName(first?.purpose ?? 'foh'),
      second: copyName(second.purpose ?? 'foh'),
      effect,
    },
    about,
  };
}

const unitsWithSeveral = remembered((facts: ActFacts): DoublingUnit[] => [
  ...new Set(unitsOfSources(facts.sheet.sources).filter((unit) => unit.length > 1)),
]);

function sourcesAt(facts: ActFacts, places: readonly number[]): Source[] {
  return places.flatMap((at) => facts.sheet.sources[at] ?? []);
}

/** Polarity and latency between the microphones of a unit, compared between FOH and each copy for the stage. */
function unequalCopies(facts: ActFacts, unit: readonly Source[]): Case[] {
  const [first, ...others] = unit;
  if (!first) return [];
  return purposes.filter(isForStage).flatMap((purpose) =>
    others.flatMap((other) => {
      const hasBoth = [first, other].every(
        ({ id }) => facts.copies[facts.index.sourceAt.get(id) ?? -1]?.[purpose] != null,
      );
      if (!hasBoth) return [];
      const between = (of: Purpose) => {
        const a = copyRowOf(facts, first.id, of);
        const b = copyRowOf(facts, other.id, of);
        return {
          inverted: (a?.polarityInverted ?? false) !== (b?.polarityInverted ?? false),
          lateMs: (b?.latencyMs ?? 0) - (a?.latencyMs ?? 0),
        };
      };
      const atFoh = between('foh');
      const here = between(purpose);
      const lateMs = here.lateMs - atFoh.lateMs;
      if (atFoh.inverted === here.inverted && lateMs === 0) return [];
      const difference = atFoh.inverted === here.inverted ? `${number(lateMs, 2)} ms` : 'opposite polarity';
      return [
        {
          say: { sources: [first, other], copy: copyName(purpose), difference },
          about: [first, other].map(aboutSource),
        },
      ];
    }),
  );
}
