import type { Mix, Performer, Source } from '../../show/act.ts';
import { addToList } from '../../show/add-to-list.ts';
import { remembered } from '../../show/remember.ts';
import type { Id } from '../../show/rig.ts';
import { factsOfKind, type SourceGroup } from '../../show/source-kinds.ts';
import { type ActFacts, isLoudspeakerMix } from '../facts.ts';
import { outcomesThat } from '../outcomes.ts';
import { flows, hasOutcomeSomewhere } from '../sends.ts';
import { cellState } from '../wishes.ts';
import { type Case, casesOf, type FindingRule } from './rule.ts';
import { aboutMix, aboutSource, casesOfMixes } from './say.ts';

/** Faults of what people on stage hear, and of what must never come out of a loudspeaker there. */
export const performerFindings: readonly FindingRule[] = [
  {
    code: 'performer-without-mix',
    severity: 'must fix',
    needs: 'the performers, and who listens to what',
    cause: '{performer} listens to no mix.',
    remedy: 'Give {performer} a mix, or let them share one.',
    find: (facts) =>
      listening(facts)
        .filter(({ mixAts }) => mixAts.length === 0)
        .map(({ performer }) => ({
          say: { performer },
          about: [aboutPerformer(performer)],
        })),
  },
  {
    code: 'own-voice-not-heard',
    severity: 'must fix',
    needs: 'whose microphone is whose, who listens to what, and all feeds',
    cause: '{performer} sings into {sources}, but does not get it in {mixes}.',
    remedy: 'Put {sources} into the mix, or confirm that {performer} wants it so.',
    find: (facts) =>
      ownNotHeard(
        facts,
        (source) => factsOfKind(source.kind).group === 'vocals',
        () => true,
      ),
  },
  {
    code: 'own-instrument-not-heard',
    severity: 'look again',
    needs: 'whose instrument is whose, who listens to what, and all feeds',
    cause:
      '{performer} plays {sources}, but gets none of it in-ear ({mixes}), where nothing comes in from outside.',
    remedy: 'Put {sources} into the mix, or confirm that {performer} wants it so.',
    find: (facts) =>
      ownNotHeard(
        facts,
        (source) => !notPlayed.has(factsOfKind(source.kind).group),
        (mix) => mix.deviceKind === 'in-ear',
      ),
  },
  {
    code: 'click-missing',
    severity: 'must fix',
    needs: 'who plays to a click, who listens to what, and all feeds',
    cause: '{performer} plays to a click, but gets none in {mixes}.',
    remedy: 'Put the click into the mix of {performer}.',
    find: (facts) =>
      casesOf(listening(facts), ({ performer, mixes, mixAts }) => {
        if (!performer.needsClick || mixes.length === 0 || mixes.some((mix) => mix.mixedAt === 'elsewhere'))
          return null;
        const heard = facts.sheet.sources.some(
          (source, at) => source.kind === 'click' && mixAts.some((mixAt) => flows(facts.sends, at, mixAt)),
        );
        if (heard) return null;
        return {
          say: { performer, mixes },
          about: [aboutPerformer(performer), ...mixes.map(aboutMix)],
        };
      }),
  },
  {
    code: 'click-on-a-loudspeaker',
    severity: 'must fix',
    needs: 'what every mix is heard through, and all feeds',
    cause: '{mix} sends {source} out of a loudspeaker on stage, into every open microphone.',
    remedy: 'Give it to in-ears only, or take it out of {mix}.',
    find: (facts) => onLoudspeakers(facts, (source) => factsOfKind(source.kind).group === 'click'),
  },
  {
    code: 'ambience-on-a-loudspeaker',
    severity: 'must fix',
    needs: 'what every mix is heard through, and all feeds',
    cause:
      '{mix} sends {source}, an open microphone for the room, out of a loudspeaker on stage: that is feedback.',
    remedy: 'Take {source} out of {mix}; ambience is for in-ears.',
    find: (facts) => onLoudspeakers(facts, (source) => source.kind === 'ambience'),
  },
  {
    code: 'timecode-in-a-mix',
    severity: 'must fix',
    needs: 'all feeds',
    cause: '{mix} gets {source}: timecode is a loud square signal for machines, never for ears.',
    remedy: 'Take {source} out of {mix}.',
    find: (facts) =>
      feedCases(
        facts,
        (source) => source.kind === 'timecode',
        (mix) => !isLoudspeakerMix(mix),
      ),
  },
  {
    code: 'click-at-front-of-house',
    severity: 'look again',
    needs: 'where every source is to be heard',
    cause: '{source} has a channel for front of house: one wrong fader and the audience hears it.',
    remedy: 'Mark it as heard in the monitors only, unless FOH needs it.',
    find: (facts) =>
      casesOf(facts.sheet.sources, (source, sourceAt) => {
        const machine = factsOfKind(source.kind).group === 'click';
        if (!machine || facts.copies[sourceAt]?.foh == null) return null;
        return { say: { source }, about: [aboutSource(source)] };
      }),
  },
  {
    code: 'ears-without-ambience',
    severity: 'know this',
    needs: 'what every mix is heard through, and all feeds',
    cause: 'No ambience is in {mixes}: whoever is in-ear hears neither the audience nor each other talk.',
    remedy: 'Offer a pair of ambience microphones, in the monitors only.',
    find: (facts) => {
      const mixes = earMixesWithout(facts, (source) => source.kind === 'ambience');
      return casesOfMixes(mixes);
    },
  },
  {
    code: 'performer-in-several-mixes',
    severity: 'know this',
    needs: 'who listens to what',
    cause: '{performer} listens to {mixes}: a request has to be made in each of them.',
    remedy: 'Check that both are meant.',
    find: (facts) =>
      listening(facts)
        .filter(({ mixes }) => mixes.filter((mix) => mix.deviceKind !== 'side fill').length > 1)
        .map(({ performer, mixes }) => ({
          say: { performer, mixes },
          about: [aboutPerformer(performer), ...mixes.map(aboutMix)],
        })),
  },
];

/** Groups of sources that are no instrument somebody plays. */
const notPlayed: ReadonlySet<SourceGroup> = new Set(['vocals', 'speech', 'ambience', 'click', 'effects']);

const aboutPerformer = (performer: Performer) => ({ of: 'performer' as const, id: performer.id });

type Listening = { performer: Performer; mixes: Mix[]; mixAts: number[] };

/** Every performer with the mixes they listen to. */
const listening = remembered((facts: ActFacts): Listening[] => {
  const byPerformer = new Map<Id, Listening>(
    facts.sheet.performers.map((performer) => [performer.id, { performer, mixes: [], mixAts: [] }]),
  );
  for (const { performerId, mixId } of facts.sheet.listeners) {
    const mixAt = facts.index.mixAt.get(mixId);
    const mix = facts.sheet.mixes[mixAt ?? -1];
    const entry = byPerformer.get(performerId);
    if (!entry || !mix || mixAt === undefined || entry.mixAts.includes(mixAt)) continue;
    entry.mixes.push(mix);
    entry.mixAts.push(mixAt);
  }
  return [...byPerformer.values()];
});

/** The sources of every performer that are to be heard here. */
const ownSources = remembered((facts: ActFacts): Map<Id, { source: Source; sourceAt: number }[]> => {
  const own = new Map<Id, { source: Source; sourceAt: number }[]>();
  for (const [sourceAt, source] of facts.sheet.sources.entries())
    if (source.performerId !== null && source.audience !== 'not here')
      addToList(own, source.performerId, { source, sourceAt });
  return own;
});

/** Performers of whose own sources none is in any of their mixes. A wish of "none" is their word and no fault. */
function ownNotHeard(
  facts: ActFacts,
  isOwn: (source: Source) => boolean,
  concerns: (mix: Mix) => boolean,
): readonly Case[] {
  const own = ownSources(facts);
  return casesOf(listening(facts), ({ performer, mixes, mixAts }) => {
    const sources = own.get(performer.id)?.filter(({ source }) => isOwn(source)) ?? [];
    if (sources.length === 0 || mixes.length === 0) return null;
    // What a band's own desk holds is the band's to know.
    if (!mixes.every((mix) => mix.mixedAt === 'house desk' && concerns(mix))) return null;
    const heardOrRefused = sources.some(({ sourceAt }) =>
      mixAts.some((mixAt) => {
        const state = facts.wishes.state[mixAt * facts.wishes.sourceCount + sourceAt];
        return state === cellState.wanted || state === cellState.none;
      }),
    );
    if (heardOrRefused) return null;
    const rows = sources.map(({ source }) => source);
    return {
      say: { performer, sources: rows, mixes },
      about: [aboutPerformer(performer), ...rows.map(aboutSource), ...mixes.map(aboutMix)],
    };
  });
}

/** A case for every feed that flows from such a source into such a mix. */
function feedCases(
  facts: ActFacts,
  isSuchSource: (source: Source) => boolean,
  isSuchMix: (mix: Mix) => boolean,
): Case[] {
  const cases: Case[] = [];
  for (const [sourceAt, source] of facts.sheet.sources.entries()) {
    if (!isSuchSource(source) || !hasOutcomeSomewhere(facts.sends, sourceAt, outcomesThat.flow)) continue;
    for (const [mixAt, mix] of facts.sheet.mixes.entries())
      if (flows(facts.sends, sourceAt, mixAt) && isSuchMix(mix))
        cases.push({
          say: { mix, source },
          about: [{ of: 'feed', mixId: mix.id, sourceId: source.id }],
        });
  }
  return cases;
}

function onLoudspeakers(facts: ActFacts, isSo: (source: Source) => boolean): Case[] {
  return feedCases(facts, isSo, (mix) => mix.deviceKind !== null && isLoudspeakerMix(mix));
}

function earMixesWithout(facts: ActFacts, isSo: (source: Source) => boolean): Mix[] {
  const such: number[] = [];
  for (const [at, source] of facts.sheet.sources.entries()) if (isSo(source)) such.push(at);
  return facts.sheet.mixes.filter((mix, mixAt) => {
    if (mix.deviceKind !== 'in-ear' || mix.mixedAt === 'elsewhere') return false;
    return !such.some((sourceAt) => flows(facts.sends, sourceAt, mixAt));
  });
}
