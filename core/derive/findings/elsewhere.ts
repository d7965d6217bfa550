import { type ActFacts, mixOf, placesOfKinds, sourceOf } from '../facts.ts';
import { outcomesThat } from '../outcomes.ts';
import { hasOutcomeSomewhere } from '../sends.ts';
import { casesOf, type FindingRule } from './rule.ts';
import { aboutMix, aboutSource, casesOfMixes, casesOfSources } from './say.ts';

/** Faults of mixes from another desk, of guests' files, and of talking to each other. */
export const elsewhereFindings: readonly FindingRule[] = [
  {
    code: 'mix-made-elsewhere',
    severity: 'know this',
    when: ['mixes made elsewhere'],
    needs: 'where every mix is made',
    cause: 'Another desk makes {mixes}: no send of this desk reaches there.',
    remedy: 'Tell their listeners whom to ask, and keep a spare mix of this desk ready.',
    find: (facts) => {
      const mixes = elsewhere(facts);
      return casesOfMixes(mixes);
    },
  },
  {
    code: 'split-not-settled',
    severity: 'must fix',
    when: ['mixes made elsewhere'],
    needs: 'where every mix is made, and who brings a splitter',
    cause:
      'Another desk makes {mixes} and needs splits (lines: {count}), but nobody is named who brings the splitter.',
    remedy: 'Settle with the band who brings splitter and tails, and where their desk stands.',
    find: (facts) => {
      const mixes = elsewhere(facts);
      if (mixes.length === 0 || facts.splits.length === 0 || facts.sheet.act.splitBy !== null) return [];
      return [{ say: { mixes, count: facts.splits.length }, about: mixes.map(aboutMix) }];
    },
  },
  {
    code: 'split-phantom-not-settled',
    severity: 'look again',
    when: ['mixes made elsewhere'],
    needs: 'who gives 48 V on a split',
    cause:
      '48 V is needed by what is split to another desk ({sources}), but nobody is named who gives it: both sides or none would.',
    remedy: 'Settle it: one side of a split gives 48 V, and only one.',
    find: (facts) => {
      if (facts.sheet.act.splitPhantomBy !== null) return [];
      const sources = facts.splits
        .flatMap(({ sourceId }) => sourceOf(facts, sourceId) ?? [])
        .filter((source) => source.phantom === 'needed');
      return casesOfSources(sources);
    },
  },
  {
    code: 'split-phantom-from-both',
    severity: 'must fix',
    when: ['mixes made elsewhere'],
    needs: 'who gives 48 V on a split, and the switches of the sockets',
    cause: 'The band gives 48 V on the split, but this desk has it on for {sources} too.',
    remedy: 'Switch it off here, with the outputs muted.',
    find: (facts) => {
      if (facts.sheet.act.splitPhantomBy !== 'band') return [];
      const sources = facts.splits
        .filter(({ sourceId }) => facts.plan.patches[facts.index.sourceAt.get(sourceId) ?? -1]?.phantomOn)
        .flatMap(({ sourceId }) => sourceOf(facts, sourceId) ?? []);
      return casesOfSources(sources);
    },
  },
  {
    code: 'guest-file-not-mapped',
    severity: 'must fix',
    needs: 'whether a guest brings a file for the house desk',
    cause:
      'A guest brings a file for this desk, and its outputs were not mapped to the wedges and packs of the house: loading it can open wrong outputs.',
    remedy: 'Map and look at it before the day, and load it with all outputs muted.',
    find: ({ sheet: { act } }) =>
      act.ownDeskFile && !act.deskFileMapped ? [{ about: [{ of: 'act', id: act.id }] }] : [],
  },
  {
    code: 'talkback-reaches-nobody',
    severity: 'look again',
    when: ['talk microphones'],
    needs: 'the talk microphones of the act, and all feeds',
    cause: '{source} is a talk microphone, but it is in no mix: nobody hears what is said.',
    remedy: 'Put it into the mixes of those who are to hear it.',
    find: (facts) =>
      casesOf(placesOfKinds(facts, 'talkback'), (at) => {
        const source = facts.sheet.sources[at];
        if (!source || source.audience === 'not here') return null;
        if (hasOutcomeSomewhere(facts.sends, at, outcomesThat.flow | outcomesThat.areElsewhere)) return null;
        return { say: { source }, about: [aboutSource(source)] };
      }),
  },
  {
    code: 'talkback-at-front-of-house',
    severity: 'must fix',
    when: ['talk microphones'],
    needs: 'where every talk microphone is to be heard',
    cause:
      '{source} is a talk microphone with a channel for front of house: the audience would hear what is said on stage.',
    remedy: 'Mark it as heard in the monitors only.',
    find: (facts) =>
      casesOf(placesOfKinds(facts, 'talkback'), (at) => {
        const source = facts.sheet.sources[at];
        if (!source || facts.copies[at]?.foh == null) return null;
        return { say: { source }, about: [aboutSource(source)] };
      }),
  },
  {
    code: 'engineer-cannot-talk',
    severity: 'know this',
    when: ['mixes without talk'],
    needs: 'where the talk microphone of the engineer goes',
    cause: 'The engineer cannot talk to {mixes} while checking them.',
    remedy: 'Agree on signs, or send a second person to the performer.',
    find: (facts) => {
      const mixes = facts.talk
        .filter((talk) => !talk.engineerReaches && talk.talkSourceIds.length === 0)
        .flatMap((talk) => mixOf(facts, talk.mixId) ?? []);
      return casesOfMixes(mixes);
    },
  },
];

function elsewhere(facts: ActFacts) {
  return facts.sheet.mixes.filter((mix) => mix.mixedAt === 'elsewhere');
}
