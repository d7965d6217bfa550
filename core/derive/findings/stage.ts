import { openMicrophonesDb } from '../../acoustics/feedback.ts';
import { nullAngleDegrees, patternCoefficients } from '../../acoustics/microphone-patterns.ts';
import type { Mix, Source } from '../../show/act.ts';
import { placeOfSource } from '../../show/place-of-source.ts';
import { distanceM, placeOf } from '../../show/stage-place.ts';
import type { Subject } from '../derived.ts';
import { type ActFacts, isLoudspeakerMix, mixOf, sourceOf } from '../facts.ts';
import { countFlowing } from '../sends.ts';
import { isOpenMicrophone, nearWedgeM, pickupOnStage } from '../stage-pickup.ts';
import { type Case, casesOf, type FindingRule } from './rule.ts';
import { aboutMix, aboutSource, casesOfMixes, number, unsigned } from './say.ts';

/** Less rejection than this is worth a turn of the microphone or the wedge. Common practice. */
const goodRejectionDb = 10;
/** From this many open microphones on, their number is worth a word. */
const manyMicrophones = 4;

/** Hints from the stage plot and from data sheets. Estimates, never a clearance. */
export const stageFindings: readonly FindingRule[] = [
  {
    code: 'wedge-off-the-null',
    severity: 'know this',
    when: ['aimed microphones'],
    needs: 'pattern, aim and place of microphones, and the places of wedges',
    cause:
      '{mix} stands {angle} degrees off the front of {source} and is rejected by only {rejection}: {pattern} rejects most at {null} degrees.',
    remedy:
      'Turn or move one of them, and listen: this is a hint from plot and textbook pattern, and a hand on the grille undoes it.',
    find: (facts) => wedgesOffNull(facts),
  },
  {
    code: 'many-open-microphones',
    severity: 'know this',
    needs: 'what every mix is heard through, and all feeds',
    cause:
      '{mix} holds {count} open microphones in a loudspeaker: that costs {cost} of gain before feedback against one.',
    remedy: 'Take out what {mix} does not need. Ring out on the day and open outputs from silence.',
    find: (facts) => {
      const isOpen = new Uint8Array(facts.sheet.sources.length);
      let at = 0;
      for (const source of facts.sheet.sources) isOpen[at++] = isOpenMicrophone(source) ? 1 : 0;
      return casesOf(facts.sheet.mixes, (mix, mixAt) => {
        if (mix.deviceKind === null || !isLoudspeakerMix(mix)) return null;
        const count = countFlowing(facts.sends, mixAt, isOpen);
        if (count < manyMicrophones) return null;
        return {
          say: { mix, count, cost: () => unsigned(openMicrophonesDb(count)) },
          about: [aboutMix(mix)],
        };
      });
    },
  },
  {
    code: 'late-in-the-ears',
    severity: 'look again',
    needs: 'the latency of desk, copy, wireless links and device, and whose source it is',
    cause:
      '{performer} hears {source} {late} ms late in {mix}, later than musicians rated fair in a published test.',
    remedy: 'Look for a stage that can go: a digital link, an insert, a delay. {caution}',
    find: (facts) => lateSources(facts),
  },
  {
    code: 'place-unknown',
    severity: 'know this',
    needs: 'where wedges and fills stand',
    cause:
      'No place is known for {mixes}, so outputs, distances and microphone angles there are not worked out.',
    remedy: 'Put them on the plot.',
    find: (facts) => {
      const mixes = facts.sheet.mixes.filter(
        (mix) => mix.deviceKind !== null && isLoudspeakerMix(mix) && placeOf(mix) === null,
      );
      return casesOfMixes(mixes);
    },
  },
  {
    code: 'side-and-plot-disagree',
    severity: 'look again',
    when: ['places on the plot'],
    needs: 'places in words, and places on the plot',
    cause:
      '{name} is said to be stage {said}, but stands stage {drawn} on the plot: one of them is seen from the audience.',
    remedy: 'Ask the band from where their plot is seen.',
    find: ({ sheet }) => [
      ...sidesThatDisagree(sheet.performers, ({ id }) => ({ of: 'performer', id })),
      ...sidesThatDisagree(sheet.sources, aboutSource),
      ...sidesThatDisagree(sheet.mixes, aboutMix),
    ],
  },
];

function sidesThatDisagree<T extends { name: string; place: string; xM: number | null }>(
  rows: readonly T[],
  aboutRow: (row: T) => Subject,
): readonly Case[] {
  return casesOf(rows, (row) => {
    if (row.xM === null || Math.abs(row.xM) < 0.5) return null;
    const said = sideInWords(row.place);
    const drawn = row.xM > 0 ? 'left' : 'right';
    if (said === null || said === drawn) return null;
    return { say: { name: row, said, drawn }, about: [aboutRow(row)] };
  });
}

/** Stage sides as the trade writes them: SR, DSR, USR, stage right, and the same for left. */
function sideInWords(place: string): 'left' | 'right' | null {
  if (/\b[du]?sr\b|\bstage right\b/i.test(place)) return 'right';
  return /\b[du]?sl\b|\bstage left\b/i.test(place) ? 'left' : null;
}

function wedgesOffNull(facts: ActFacts): Case[] {
  const wedges = facts.sheet.mixes.filter((mix) => mix.deviceKind === 'wedge' && placeOf(mix) !== null);
  if (wedges.length === 0) return [];
  return facts.sheet.sources.flatMap((source) => {
    if (source.pattern === null || source.aimDeg === null || source.audience === 'not here') return [];
    return wedges.flatMap((mix) => caseOffNull(facts, source, mix) ?? []);
  });
}

function caseOffNull(facts: ActFacts, source: Source, mix: Mix): Case | null {
  const from = placeOfSource(facts.sheet, source);
  const to = placeOf(mix);
  if (!from || !to || distanceM(from, to) > nearWedgeM) return null;
  const pickup = pickupOnStage(source, from, to, facts.sheet.rig.airTemperatureC);
  if (!pickup || -pickup.responseDb >= goodRejectionDb) return null;
  const nullDegrees = nullAngleDegrees(patternCoefficients[pickup.pattern]);
  if (nullDegrees === null) return null;
  return {
    say: {
      mix,
      source,
      angle: number(pickup.offAxisDegrees, 0),
      rejection: unsigned(Math.max(0, -pickup.responseDb)),
      pattern: pickup.pattern,
      null: number(nullDegrees, 0),
    },
    about: [aboutMix(mix), aboutSource(source)],
  };
}

function lateSources(facts: ActFacts): Case[] {
  return facts.ownLatencies.flatMap(({ performerId, sourceId, mixId, latencyMs, rated, sentences }) => {
    const performer = facts.sheet.performers.find((it) => it.id === performerId);
    if (!performer || rated !== 'longer than rated fair') return [];
    return [
      {
        say: {
          performer,
          source: sourceOf(facts, sourceId),
          mix: mixOf(facts, mixId),
          late: number(latencyMs),
          caution: sentences.at(-1) ?? '',
        },
        about: [{ of: 'feed' as const, mixId, sourceId }],
      },
    ];
  });
}
