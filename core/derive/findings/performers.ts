import type { Mix, Performer, Source } from '../../show/act.ts';
import {
  factsOfKind,
  marksOfKinds,
  type SourceGroup,
  type SourceKind,
  sourceKinds,
} from '../../show/source-kinds.ts';
import { type ActFacts, isLoudspeakerMix, placesOfKinds } from '../facts.ts';
import { outcomesThat } from '../outcomes.ts';
import { flows, hasOutcomeSomewhere } from '../sends.ts';
import { cellState } from '../wishes.ts';
import { type Case, casesOf, casesOfEach, type FindingRule } from './rule.ts';
import { aboutMix, aboutSource, casesOfMixes } from './say.ts';

/** Faults of what people on stage hear, and of what must never come out of a loudspeaker there. */
export const performerFindings: readonly FindingRule[] = [
  {
    code: 'performer-without-mix',
    severity: 'must fix',
    when: ['performers without mix'],
    needs: 'the performers, and who listens to what',
    cause: '{performer} listens to no mix.',
    remedy: 'Give {performer} a mix, or let them share one.',
    find: (facts) =>
      casesOf(facts.sheet.performers, (performer, at) =>
        mixesAt(facts, facts.people.mixesOf[at]).length === 0
          ? { say: { performer }, about: [aboutPerformer(performer)] }
          : null,
      ),
  },
  {
    code: 'own-voice-not-heard',
    severity: 'must fix',
    needs: 'whose microphone is whose, who listens to what, and all feeds',
    cause: '{performer} sings into {sources}, but does not get it in {mixes}.',
    remedy: 'Put {sources} into the mix, or confirm that {performer} wants it so.',
    find: (facts) => ownNotHeard(facts, voices, () => true),
  },
  {
    code: 'own-instrument-not-heard',
    severity: 'look again',
    needs: 'whose instrument is whose, who listens to what, and all feeds',
    cause:
      '{performer} plays {sources}, but gets none of it in-ear ({mixes}), where nothing comes in from outside.',
    remedy: 'Put {sources} into the mix, or confirm that {performer} wants it so.',
    find: (facts) => ownNotHeard(facts, instruments, (mix) => mix.deviceKind === 'in-ear'),
  },
  {
    code: 'click-missing',
    severity: 'must fix',
    when: ['performers with a click'],
    needs: 'who plays to a click, who listens to what, and all feeds',
    cause: '{performer} plays to a click, but gets none in {mixes}.',
    remedy: 'Put the click into the mix of {performer}.',
    find: (facts) =>
      casesOf(facts.sheet.performers, (performer, performerAt) => {
        const mixAts = facts.people.mixesOf[performerAt] ?? [];
        const mixes = mixesAt(facts, mixAts);
        if (!performer.needsClick || mixes.length === 0 || mixes.some((mix) => mix.mixedAt === 'elsewhere'))
          return null;
        const heard = placesOfKinds(facts, 'click').some((at) =>
          mixAts.some((mixAt) => flows(facts.sends, at, mixAt)),
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
    when: ['clicks'],
    needs: 'what every mix is heard through, and all feeds',
    cause: '{mix} sends {source} out of a loudspeaker on stage, into every open microphone.',
    remedy: 'Give it to in-ears only, or take it out of {mix}.',
    find: (facts) => onLoudspeakers(facts, ...clickKinds),
  },
  {
    code: 'ambience-on-a-loudspeaker',
    severity: 'must fix',
    when: ['ambience'],
    needs: 'what every mix is heard through, and all feeds',
    cause:
      '{mix} sends {source}, an open microphone for the room, out of a loudspeaker on stage: that is feedback.',
    remedy: 'Take {source} out of {mix}; ambience is for in-ears.',
    find: (facts) => onLoudspeakers(facts, 'ambience'),
  },
  {
    code: 'timecode-in-a-mix',
    severity: 'must fix',
    when: ['clicks'],
    needs: 'all feeds',
    cause: '{mix} gets {source}: timecode is a loud square signal for machines, never for ears.',
    remedy: 'Take {source} out of {mix}.',
    find: (facts) => feedCases(facts, placesOfKinds(facts, 'timecode'), (mix) => !isLoudspeakerMix(mix)),
  },
  {
    code: 'click-at-front-of-house',
    severity: 'look again',
    when: ['clicks'],
    needs: 'where every source is to be heard',
    cause: '{source} has a channel for front of house: one wrong fader and the audience hears it.',
    remedy: 'Mark it as heard in the monitors only, unless FOH needs it.',
    find: (facts) =>
      casesOf(placesOfKinds(facts, ...clickKinds), (at) => {
        const source = facts.sheet.sources[at];
        if (!source || facts.copies[at]?.foh == null) return null;
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
      const mixes = earMixesWithout(facts, 'ambience');
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
      casesOf(facts.sheet.performers, (performer, at) => {
        const mixAts = facts.people.mixesOf[at] ?? [];
        if (mixAts.length < 2) return null;
        const mixes = mixesAt(facts, mixAts);
        if (mixes.filter((mix) => mix.deviceKind !== 'side fill').length < 2) return null;
        return {
          say: { performer, mixes },
          about: [aboutPerformer(performer), ...mixes.map(aboutMix)],
        };
      }),
  },
];

/** Groups of sources that are no instrument somebody plays. */
const notPlayed: ReadonlySet<SourceGroup> = new Set(['vocals', 'speech', 'ambience', 'click', 'effects']);

const voices = marksOfKinds((_, { group }) => group === 'vocals');
const instruments = marksOfKinds((_, { group }) => !notPlayed.has(group));

const aboutPerformer = (performer: Performer) => ({ of: 'performer' as const, id: performer.id });

/** Kinds of what machines and headphones are for. */
const clickKinds = sourceKinds.filter((kind) => factsOfKind(kind).group === 'click');

/** Performers of whose own sources none is in any of their mixes. A wish of "none" is their word and no fault. */
function ownNotHeard(facts: ActFacts, kinds: Uint8Array, concerns: (mix: Mix) => boolean): readonly Case[] {
  return casesOf(facts.sheet.performers, (performer, performerAt) => {
    const mixAts = facts.people.mixesOf[performerAt] ?? [];
    const ownAts = facts.people.sourcesOf[performerAt] ?? [];
    if (ownAts.length === 0 || mixAts.length === 0) return null;
    for (const at of mixAts) {
      const mix = facts.sheet.mixes[at];
      // What a band's own desk holds is the band's to know.
      if (!mix || mix.mixedAt === 'elsewhere' || !concerns(mix)) return null;
    }
    const sources = unheard(facts, ownAts, mixAts, kinds);
    if (sources.length === 0) return null;
    const mixes = mixesAt(facts, mixAts);
    return {
      say: { performer, sources, mixes },
      about: [aboutPerformer(performer), ...sources.map(aboutSource), ...mixes.map(aboutMix)],
    };
  });
}

/** The sources of such kinds (1 by order) at these places, if none of them is asked for or refused in any of the mixes; else none. */
function unheard(
  facts: ActFacts,
  places: readonly number[],
  mixAts: readonly number[],
  kinds: Uint8Array,
): Source[] {
  const sources: Source[] = [];
  for (const at of places) {
    const source = facts.sheet.sources[at];
    if (!source || !kinds[facts.index.kindAt[at] ?? 0]) continue;
    if (isAskedOrRefused(facts, at, mixAts)) return [];
    sources.push(source);
  }
  return sources;
}

function mixesAt(facts: ActFacts, places: readonly number[] = []): Mix[] {
  return places.flatMap((at) => facts.sheet.mixes[at] ?? []);
}

function isAskedOrRefused({ wishes }: ActFacts, sourceAt: number, mixAts: readonly number[]): boolean {
  for (const mixAt of mixAts) {
    const asked = wishes.state[mixAt * wishes.sourceCount + sourceAt];
    if (asked === cellState.wanted || asked === cellState.none) return true;
  }
  return false;
}

/** A case for every feed that flows from a source at one of these places into such a mix. */
function feedCases(
  facts: ActFacts,
  places: readonly number[],
  isSuchMix: (mix: Mix) => boolean,
): readonly Case[] {
  return casesOfEach(places, (at) => {
    const source = facts.sheet.sources[at];
    if (!source || !hasOutcomeSomewhere(facts.sends, at, outcomesThat.flow)) return [];
    return casesOf(facts.sheet.mixes, (mix, mixAt) =>
      flows(facts.sends, at, mixAt) && isSuchMix(mix)
        ? { say: { mix, source }, about: [{ of: 'feed', mixId: mix.id, sourceId: source.id }] }
        : null,
    );
  });
}

function onLoudspeakers(facts: ActFacts, ...kinds: readonly SourceKind[]): readonly Case[] {
  return feedCases(
    facts,
    placesOfKinds(facts, ...kinds),
    (mix) => mix.deviceKind !== null && isLoudspeakerMix(mix),
  );
}

function earMixesWithout(facts: ActFacts, kind: SourceKind): Mix[] {
  const places = placesOfKinds(facts, kind);
  return facts.sheet.mixes.filter((mix, mixAt) => {
    if (mix.deviceKind !== 'in-ear' || mix.mixedAt === 'elsewhere') return false;
    return !places.some((at) => flows(facts.sends, at, mixAt));
  });
}
