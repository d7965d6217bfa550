import { describe, expect, test } from 'vitest';
import { airStage, pathLatencyMs } from '../../../core/acoustics/latency.ts';
import {
  drySingersSameUpToMs,
  type LatencyInstrument,
  latencyGuidance,
  latencyInstruments,
  ratedLatencies,
  ratedLatencyRangeMs,
  vocalInEarRuleMs,
} from '../../../core/acoustics/latency-tolerance.ts';
import { judgeSoundAfterPicture } from '../../../core/acoustics/sound-and-picture.ts';
import { checkReference, decimals, num, nums, word } from '../../helpers/reference.ts';

checkReference('latency', {
  'latency-by-instrument': (row) => {
    const rated = ratedLatencies[word(row.in, 'instrument') as LatencyInstrument];
    return [
      { what: 'in-ear good', got: rated['in-ear'].goodMs, want: row.out.in_ear_good_ms },
      { what: 'wedge good', got: rated.wedge.goodMs, want: row.out.wedge_good_ms },
      { what: 'in-ear fair', got: rated['in-ear'].fairMs, want: row.out.in_ear_fair_ms },
      { what: 'wedge fair', got: rated.wedge.fairMs, want: row.out.wedge_fair_ms },
    ];
  },
  'latency-range': (row) => [
    { what: 'smallest', got: ratedLatencyRangeMs.smallestMs, want: row.out.smallest_ms },
    { what: 'largest', got: ratedLatencyRangeMs.largestMs, want: row.out.largest_ms },
  ],
  ordering: (row) => {
    const inEarBelowWedge = (rated: 'goodMs' | 'fairMs') =>
      latencyInstruments.filter(
        (it) => ratedLatencies[it]['in-ear'][rated] < ratedLatencies[it].wedge[rated],
      );
    const allButKeyboard = latencyInstruments.filter((it) => it !== 'keyboard');
    if ('monitors' in row.in)
      return [
        { what: 'less tolerant on in-ears, good', got: inEarBelowWedge('goodMs'), want: allButKeyboard },
        { what: 'less tolerant on in-ears, fair', got: inEarBelowWedge('fairMs'), want: allButKeyboard },
      ];
    const inEarFairBelowWedgeGood = latencyInstruments.filter(
      (it) => ratedLatencies[it]['in-ear'].fairMs < ratedLatencies[it].wedge.goodMs,
    );
    return [{ what: 'in-ear fair below wedge good', got: inEarFairBelowWedgeGood, want: ['vocals'] }];
  },
  'dry-in-ear-vocals': (row) => {
    const latencyMs = num(row.in, 'latency_ms');
    if ('coloration_differs_from_reference' in row.out)
      return [
        {
          what: 'colour heard',
          got: latencyMs > drySingersSameUpToMs.colourMs,
          want: row.out.coloration_differs_from_reference,
        },
      ];
    return [
      {
        what: 'liked less',
        got: latencyMs > drySingersSameUpToMs.preferenceMs,
        want: row.out.preference_differs_from_zero_latency,
      },
    ];
  },
  rule: (row) => [{ what: 'rule of thumb', got: vocalInEarRuleMs, want: row.out.below_ms }],
  'sound-and-picture': (row) => {
    const early = num(row.out, 'sound_early_ms');
    const late = num(row.out, 'sound_late_ms');
    const [within, beyond] =
      row.in.what === 'detectability' ? ['not noticed', 'noticed'] : ['noticed', 'not accepted'];
    return [
      { what: 'late, just within', got: judgeSoundAfterPicture(late), want: within },
      { what: 'late, just beyond', got: judgeSoundAfterPicture(late + 1), want: beyond },
      { what: 'early, just within', got: judgeSoundAfterPicture(-early), want: within },
      { what: 'early, just beyond', got: judgeSoundAfterPicture(-early - 1), want: beyond },
    ];
  },
  'sum-of-stages': (row) => {
    const stages = nums(row.in, 'stages_ms').map((latencyMs, at) => ({ name: `stage ${at + 1}`, latencyMs }));
    return [{ what: 'total', got: pathLatencyMs(stages), want: row.out.total_ms, within: decimals(4) }];
  },
});

describe('the latency of a path', () => {
  test('has the way through the air as a stage of a wedge', () => {
    // 1.7 m at 20 C: 4.9534 ms, tests/reference/latency.json.
    const path = [{ name: 'desk', latencyMs: 2 }, airStage(1.7, 20)];
    expect(pathLatencyMs(path)).toBeCloseTo(6.9534, 4);
  });

  test('names the stage that has no sane latency', () => {
    expect(() => pathLatencyMs([{ name: 'link', latencyMs: -1 }])).toThrow(/latencyMs of link must be/);
  });

  test.each([
    { latencyMs: 1, group: 'vocals', monitor: 'in-ear', rated: 'good' },
    { latencyMs: 1.1, group: 'vocals', monitor: 'in-ear', rated: 'fair' },
    { latencyMs: 6.6, group: 'vocals', monitor: 'in-ear', rated: 'longer than rated fair' },
    { latencyMs: 6.6, group: 'vocals', monitor: 'wedge', rated: 'good' },
    { latencyMs: 2, group: 'woodwind', monitor: 'in-ear', rated: 'fair' },
    { latencyMs: 6, group: 'playback', monitor: 'in-ear', rated: null },
  ] as const)(
    '$latencyMs ms for $group on $monitor was rated $rated',
    ({ latencyMs, group, monitor, rated }) => {
      expect(latencyGuidance(latencyMs, group, monitor).rated).toBe(rated);
    },
  );

  test('is compared in sentences that name the source and say that they set no limit', () => {
    const { sentences } = latencyGuidance(6, 'vocals', 'in-ear');
    expect(sentences[0]).toBe(
      'In one test (AES 2007, paper 7198) for vocals on in-ears, up to 1 ms was rated good and up to 6.5 ms fair.',
    );
    expect(sentences[1]).toMatch(/DAGA 2012.*less than 5 ms/);
    expect(sentences.at(-1)).toMatch(/not a limit/);
  });

  test('says so where no tested delay was rated good', () => {
    expect(latencyGuidance(2, 'woodwind', 'in-ear').sentences[0]).toMatch(/no tested delay was rated good/);
  });

  test('gives the overall range where nobody tested such a source', () => {
    expect(latencyGuidance(2, 'brass', 'in-ear').sentences[0]).toMatch(/from 42 ms down to 1\.4 ms or less/);
  });
});
