import type { Mix, Source } from '../../show/act.ts';
import { type ActFacts, isLoudspeakerMix, mixOf, pairsOf, sourceOf } from '../facts.ts';
import { feedOf, feedsOfSource } from '../feeds.ts';
import { outcomesThat } from '../outcomes.ts';
import { hasOutcome, hasOutcomeSomewhere, startLevelDb } from '../sends.ts';
import { cellState } from '../wishes.ts';
import { type Case, casesOf, type FindingRule } from './rule.ts';
import { aboutMix, aboutSource, casesOfMixes, decibels, unsigned } from './say.ts';

/** Faults of what mixes take of sources. */
export const feedFindings: readonly FindingRule[] = [
  {
    code: 'source-cannot-be-heard',
    severity: 'must fix',
    needs: 'the wishes, and the channels of every source',
    cause: '{source} is asked for in {mixes}, but has no channel on this desk that could feed it there.',
    remedy: 'Give {source} a channel, or tell the band that it will not be in the monitors.',
    find: (facts) =>
      bySource(facts, outcomesThat.haveNoChannel, (source, mixes) => ({
        say: { source, mixes },
        about: [aboutSource(source), ...feedSubjects(source, mixes)],
      })),
  },
  {
    code: 'source-nobody-hears',
    severity: 'look again',
    when: ['sources without FOH channel'],
    needs: 'where every source is to be heard, and all feeds',
    cause: '{source} is in no mix and not at front of house: nobody hears it.',
    remedy: 'Put it into a mix, or mark it as not to be heard here.',
    find: (facts) =>
      casesOf(facts.sheet.sources, (source, sourceAt) => {
        if (source.audience === 'not here' || facts.copies[sourceAt]?.foh != null) return null;
        if (source.kind === 'talkback' || flowsOrIsAsked(facts, sourceAt)) return null;
        if (facts.sheet.decisions.some((it) => it.about === 'effect send' && it.sourceId === source.id))
          return null;
        return { say: { source }, about: [aboutSource(source)] };
      }),
  },
  {
    code: 'post-fader-from-foh',
    severity: 'look again',
    when: ['decisions'],
    needs: 'the tap of every feed and the copy it comes from',
    cause:
      '{mix} takes {source} after the fader of the FOH channel, so every move of that fader moves the mix.',
    remedy: 'Set the send to pre-fader, or feed {mix} from a copy for monitors.',
    find: (facts) => {
      if (!hasDecidedTap(facts)) return [];
      return facts.sheet.sources.flatMap((_, sourceAt) =>
        feedsOfSource(facts, sourceAt)
          .filter(
            (feed) => feed.tap === 'post-fader' && (feed.purpose === 'foh' || feed.purpose === 'parallel'),
          )
          .map((feed) => ({
            say: { mix: mixOf(facts, feed.mixId), source: sourceOf(facts, feed.sourceId) },
            about: [{ of: 'feed', mixId: feed.mixId, sourceId: feed.sourceId } as const],
          })),
      );
    },
  },
  {
    code: 'taps-mixed',
    severity: 'know this',
    when: ['decisions'],
    needs: 'the tap of every feed',
    cause:
      '{mix} takes some copies for the stage before the fader and some after: a fader moves {post}, and not the rest.',
    remedy: 'Use one tap for all copies of a mix, and leave the faders at 0.',
    find: (facts) => {
      if (!hasDecidedTap(facts)) return [];
      return facts.sheet.mixes.flatMap((mix, mixAt) => {
        const feeds = facts.sheet.sources
          .map((_, sourceAt) => feedOf(facts, sourceAt, mixAt))
          .filter((feed) => feed.purpose !== null && feed.purpose !== 'foh');
        const post = feeds.filter((feed) => feed.tap === 'post-fader');
        if (post.length === 0 || post.length === feeds.length) return [];
        const sources = post.flatMap((feed) => sourceOf(facts, feed.sourceId) ?? []);
        return [{ say: { mix, post: sources }, about: [aboutMix(mix)] }];
      });
    },
  },
  {
    code: 'foh-only-source-in-mix',
    severity: 'look again',
    when: ['sources for FOH only'],
    needs: 'where every source is to be heard, and the wishes',
    cause:
      '{source} is for front of house only, but is asked for by name in {mixes}, and the FOH channel feeds it there.',
    remedy: 'Take the wish out, or let the source be heard in the monitors too.',
    find: (facts) =>
      bySource(
        facts,
        outcomesThat.flow,
        (source, mixes) => ({
          say: { source, mixes },
          about: [aboutSource(source), ...feedSubjects(source, mixes)],
        }),
        (source) => source.audience === 'front of house only',
      ),
  },
  {
    code: 'level-above-unity',
    severity: 'know this',
    needs: 'levels in wishes and decisions',
    cause: '{mix} asks for {source} at {level}; it starts at 0 dB, because nothing starts above unity.',
    remedy: 'Raise it by ear once the performer is there.',
    find: (facts) => levelsAboveUnity(facts),
  },
  {
    code: 'only-with-others',
    severity: 'look again',
    needs: 'the wishes of a mix',
    cause: '{mix} asks for some sources only, which switches off what it asks for besides: {others}.',
    remedy: 'Ask which is meant, and drop the "only" or the other wishes.',
    find: (facts) =>
      (facts.sends.outcomesOfAll & outcomesThat.areSwitchedOff) === 0
        ? []
        : casesOf(facts.sheet.mixes, (mix, mixAt) => {
            const others = switchedOffByName(facts, mixAt);
            if (others.length === 0) return null;
            return { say: { mix, others }, about: [aboutMix(mix)] };
          }),
  },
  {
    code: 'wishes-in-a-circle',
    severity: 'must fix',
    needs: 'wishes that name another mix',
    cause: '{mix} is to be the same as {other}, and {other} leads back to {mix}: neither says what it holds.',
    remedy: 'Give one of them wishes of its own.',
    find: (facts) =>
      facts.wishes.circular.flatMap((wishAt) => {
        const wish = facts.sheet.wishes[wishAt];
        const mix = wish && mixOf(facts, wish.mixId);
        const other = wish?.sameAsMixId ? mixOf(facts, wish.sameAsMixId) : undefined;
        if (!mix || !other) return [];
        return [{ say: { mix, other }, about: [aboutMix(mix), aboutMix(other)] }];
      }),
  },
  {
    code: 'wish-of-an-empty-group',
    severity: 'look again',
    needs: 'wishes for groups, and the sources',
    cause: '{mix} asks for {group}, but the act has no such source.',
    remedy: 'Ask the band what is meant, or take the wish out.',
    find: (facts) =>
      facts.wishes.emptyGroups.flatMap((wishAt) => {
        const wish = facts.sheet.wishes[wishAt];
        const mix = wish && mixOf(facts, wish.mixId);
        if (!mix || wish.amount === 'none') return [];
        return [{ say: { mix, group: wish.group ?? '' }, about: [aboutMix(mix)] }];
      }),
  },
  {
    code: 'wishes-not-confirmed',
    severity: 'know this',
    needs: 'the state of the act, and which wishes somebody confirmed',
    cause: 'The act is {state}, but wishes in {mixes} are still as they stood on paper (wishes: {count}).',
    remedy: 'Confirm them with the performer; a wish on paper is a draft.',
    find: (facts) => {
      const { state } = facts.sheet.act;
      if (state === 'advancing' || state === 'done') return [];
      const open = new Set<Mix>();
      let count = 0;
      for (const wish of facts.sheet.wishes) {
        if (wish.confirmed || wish.words === '') continue;
        const mix = mixOf(facts, wish.mixId);
        if (!mix) continue;
        open.add(mix);
        count++;
      }
      const mixes = [...open];
      return casesOfMixes(mixes, { count, state });
    },
  },
  {
    code: 'decision-without-wish',
    severity: 'know this',
    when: ['decisions'],
    needs: 'decisions on single feeds, and the wishes',
    cause: 'Something was decided for {source} in {mix}, but {mix} does not ask for it, so nothing flows.',
    remedy: 'Add the wish, or take the decision back.',
    find: (facts) => decisionsWithoutWish(facts),
  },
  {
    code: 'everything-in-a-loudspeaker',
    severity: 'know this',
    needs: 'wishes for everything, and what a mix is heard through',
    cause:
      '{mix} asks for everything, and it comes out of a loudspeaker on stage: that is mud and little gain before feedback.',
    remedy: 'Ask the performer for the two or three sources that matter.',
    find: (facts) =>
      casesOf(facts.wishes.forEverything, (wishAt) => {
        const wish = facts.sheet.wishes[wishAt];
        const mix = wish && mixOf(facts, wish.mixId);
        if (!mix || wish.amount === 'none' || mix.deviceKind === null || !isLoudspeakerMix(mix)) return null;
        return { say: { mix }, about: [aboutMix(mix)] };
      }),
  },
  {
    code: 'mix-starts-lower',
    severity: 'know this',
    needs: 'the start levels, the target level and the headroom of the rig',
    cause: '{mix} would add up to {sum} above one source; it starts {lowered} so that the headroom stays.',
    remedy: 'Ask for less in this mix: what is turned down makes room for the rest.',
    find: (facts) =>
      casesOf(facts.levels, (level, mixAt) => {
        if (level.sumDb === null || level.loweredByDb > -tellableDb) return null;
        const mix = facts.sheet.mixes[mixAt];
        if (!mix) return null;
        const { sumDb, loweredByDb } = level;
        const sum = () => decibels(sumDb);
        const lowered = () => `${unsigned(-loweredByDb)} lower`;
        return { say: { mix, sum, lowered }, about: [aboutMix(mix)] };
      }),
  },
  {
    code: 'mix-is-empty',
    severity: 'look again',
    needs: 'all feeds',
    cause: 'Nothing is in {mix} yet.',
    remedy: 'Ask what {mix} is to hold, or copy the wishes of a similar one.',
    find: (facts) =>
      casesOf(facts.levels, (level, mixAt) => {
        const mix = level.sumDb === null ? facts.sheet.mixes[mixAt] : undefined;
        if (!mix || mix.mixedAt === 'elsewhere') return null;
        return { say: { mix }, about: [aboutMix(mix)] };
      }),
  },
  {
    code: 'pair-split-in-mix',
    severity: 'look again',
    when: ['pairs'],
    needs: 'stereo pairs, and all feeds',
    cause: '{mix} takes {one} but not {other}, the other side of its pair.',
    remedy: 'Put both sides in, or say that one side is meant.',
    find: (facts) => pairCases(facts, (oneDb, otherDb) => (oneDb === null) !== (otherDb === null)),
  },
  {
    code: 'pair-levels-differ',
    severity: 'know this',
    when: ['pairs'],
    needs: 'stereo pairs, and all start levels',
    cause: '{mix} takes {one} and {other} at different levels, so the pair leans to one side.',
    remedy: 'Give both sides one level, unless the performer wants it so.',
    find: (facts) =>
      pairCases(facts, (oneDb, otherDb) => oneDb !== null && otherDb !== null && oneDb !== otherDb),
  },
];

/** A mix that starts this much lower is worth a word; less would be written as 0 dB. */
const tellableDb = 0.05;

/** One case for each source that has one of these outcomes; with the mixes where it has. */
function bySource(
  facts: ActFacts,
  outcomes: number,
  caseOf: (source: Source, mixes: Mix[]) => Case,
  concerns: (source: Source) => boolean = () => true,
): readonly Case[] {
  if ((facts.sends.outcomesOfAll & outcomes) === 0) return [];
  return casesOf(facts.sheet.sources, (source, sourceAt) => {
    if (!concerns(source) || !hasOutcomeSomewhere(facts.sends, sourceAt, outcomes)) return null;
    return caseOf(
      source,
      facts.sheet.mixes.filter((_, mixAt) => hasOutcome(facts.sends, sourceAt, mixAt, outcomes)),
    );
  });
}

/** Whether a source flows into some mix, or is asked for in one that is made elsewhere. */
function flowsOrIsAsked(facts: ActFacts, sourceAt: number): boolean {
  return hasOutcomeSomewhere(facts.sends, sourceAt, outcomesThat.flow | outcomesThat.areElsewhere);
}

function feedSubjects(source: Source, mixes: readonly Mix[]) {
  return mixes.map((mix) => ({ of: 'feed' as const, mixId: mix.id, sourceId: source.id }));
}

function hasDecidedTap(facts: ActFacts): boolean {
  for (const { tap } of facts.cells.byCell.values()) if (tap !== undefined) return true;
  return false;
}

function levelsAboveUnity(facts: ActFacts): Case[] {
  const { wishes, cells, sheet } = facts;
  const someAboveUnity = wishes.levelsDb.some((levelDb) => levelDb > 0);
  if (!someAboveUnity && cells.byCell.size === 0) return [];
  const wishedDb = (cell: number) => wishes.levelsDb[wishes.levelAt[cell] ?? 0] ?? 0;
  const asked = new Set<number>();
  // A cell that no wish reaches has the first level too; it is sorted out with the rest below.
  if (someAboveUnity)
    for (let cell = 0; cell < wishes.levelAt.length; cell++) if (wishedDb(cell) > 0) asked.add(cell);
  for (const [cell, { levelDb }] of cells.byCell) if (levelDb !== undefined) asked.add(cell);
  return [...asked].flatMap((cell) => {
    const askedDb = cells.byCell.get(cell)?.levelDb ?? wishedDb(cell);
    const mix = sheet.mixes[Math.floor(cell / wishes.sourceCount)];
    const source = sheet.sources[cell % wishes.sourceCount];
    if (askedDb <= 0 || wishes.state[cell] !== cellState.wanted) return [];
    if (!mix || !source || mix.mixedAt === 'elsewhere') return [];
    return [
      {
        say: { mix, source, level: decibels(askedDb) },
        about: feedSubjects(source, [mix]),
      },
    ];
  });
}

/** Sources that a mix asks for by name or group, and that an "only" of the same mix switches off. */
function switchedOffByName(facts: ActFacts, mixAt: number): Source[] {
  const first = mixAt * facts.wishes.sourceCount;
  return facts.sheet.sources.filter((_, at) => {
    if (facts.wishes.state[first + at] !== cellState.switchedOff) return false;
    const wish = facts.sheet.wishes[facts.wishes.wishAt[first + at] ?? -1];
    // "Everything" with an "only" says the same thing twice; and another mix's wishes are not this one's words.
    return wish !== undefined && wish.sameAsMixId === null && wish.group !== 'everything';
  });
}

function decisionsWithoutWish(facts: ActFacts): Case[] {
  const { cells, wishes, sheet } = facts;
  if (cells.byCell.size === 0 && cells.second.length === 0) return [];
  const decided = new Set(cells.byCell.keys());
  for (const { mixAt, sourceAt } of cells.second) decided.add(mixAt * wishes.sourceCount + sourceAt);
  return [...decided].flatMap((cell) => {
    const mix = sheet.mixes[Math.floor(cell / wishes.sourceCount)];
    const source = sheet.sources[cell % wishes.sourceCount];
    if (!mix || !source || wishes.state[cell] === cellState.wanted) return [];
    return [{ say: { mix, source }, about: feedSubjects(source, [mix]) }];
  });
}

/** A case for every mix and stereo pair whose two start levels (null: off) stand so to each other; each pair once. */
function pairCases(facts: ActFacts, isSo: (oneDb: number | null, otherDb: number | null) => boolean): Case[] {
  return pairsOf(facts).flatMap(({ one, oneAt, other, otherAt }) =>
    facts.sheet.mixes.flatMap((mix, mixAt) => {
      const oneDb = startLevelDb(facts.sends, oneAt, mixAt);
      if (mix.mixedAt === 'elsewhere' || !isSo(oneDb, startLevelDb(facts.sends, otherAt, mixAt))) return [];
      const [first, second] = oneDb === null ? [other, one] : [one, other];
      return [
        {
          say: { mix, one: first, other: second },
          about: feedSubjects(one, [mix]).concat(feedSubjects(other, [mix])),
        },
      ];
    }),
  );
}
