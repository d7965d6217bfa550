import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { euValuesReached, lex8hDba, soundExposurePa2h } from '../../../core/acoustics/daily-exposure.ts';
import { exposureOfDay } from '../../../core/acoustics/exposure-day.ts';
import {
  dosePercent,
  type ExposureCriterion,
  exposureCriteria,
  referenceHours,
} from '../../../core/acoustics/exposure-dose.ts';
import { exposureOfWeek } from '../../../core/acoustics/exposure-week.ts';
import {
  exposurePoints,
  lexWeeklyDba,
  lexWeeklyOfPointsDba,
} from '../../../core/acoustics/weekly-exposure.ts';
import { deviceKinds } from '../../../core/show/words.ts';

const level = fc.double({ min: 40, max: 130, noNaN: true });
const hours = fc.double({ min: 0, max: 12, noNaN: true });
const segment = fc.record({ levelDba: level, hours });
const day = fc.array(segment, { maxLength: 12 });
const criterion = fc.constantFrom<ExposureCriterion>(...Object.values(exposureCriteria));

const near = (got: number, want: number) =>
  expect(got).toBeCloseTo(want, 9 - Math.ceil(Math.log10(1 + Math.abs(want))));

describe('the dose of a day', () => {
  test('is the sum of the doses of its parts, in any order', () => {
    fc.assert(
      fc.property(day, day, criterion, (morning, evening, rule) => {
        const whole = dosePercent([...morning, ...evening], rule);
        near(dosePercent(morning, rule) + dosePercent(evening, rule), whole);
        near(dosePercent([...evening, ...morning].reverse(), rule), whole);
      }),
    );
  });

  test('does not change when a part is cut in two', () => {
    fc.assert(
      fc.property(
        segment,
        fc.double({ min: 0, max: 1, noNaN: true }),
        criterion,
        ({ levelDba, hours }, share, rule) => {
          const cut = [
            { levelDba, hours: hours * share },
            { levelDba, hours: hours - hours * share },
          ];
          near(dosePercent(cut, rule), dosePercent([{ levelDba, hours }], rule));
          near(soundExposurePa2h(cut), soundExposurePa2h([{ levelDba, hours }]));
        },
      ),
    );
  });

  test('is 100 % after the permitted time, and that time halves with each exchange rate', () => {
    fc.assert(
      fc.property(level, criterion, (levelDba, rule) => {
        const permitted = referenceHours(levelDba, rule);
        fc.pre(permitted !== null && permitted <= 8000);
        if (permitted === null) return;
        expect(dosePercent([{ levelDba, hours: permitted }], rule)).toBeCloseTo(100, 9);
        const louder = referenceHours(levelDba + rule.exchangeRateDb, rule);
        expect(permitted / (louder ?? Number.NaN)).toBeCloseTo(2, 9);
      }),
    );
  });

  test('by NIOSH is never lower than by OSHA', () => {
    fc.assert(
      fc.property(day, (segments) => {
        const { niosh, 'osha action': action, 'osha permissible': permissible } = exposureCriteria;
        const byAction = dosePercent(segments, action);
        expect(dosePercent(segments, permissible)).toBeLessThanOrEqual(byAction);
        // From 80 dBA up the recommended rule is the stricter one; below, the law counts nothing.
        expect(byAction).toBeLessThanOrEqual(dosePercent(segments, niosh) * 1.6);
      }),
    );
  });
});

describe('the daily exposure level', () => {
  test('of eight even hours is their level', () => {
    fc.assert(
      fc.property(level, (levelDba) => {
        expect(lex8hDba([{ levelDba, hours: 8 }])).toBeCloseTo(levelDba, 9);
      }),
    );
  });

  test('never falls when a part is added, and rises by 3.01 dB when the time is doubled', () => {
    fc.assert(
      fc.property(day, segment, (segments, more) => {
        const before = lex8hDba(segments);
        expect(lex8hDba([...segments, more])).toBeGreaterThanOrEqual(before - 1e-9);
        if (before > -100) expect(lex8hDba([...segments, ...segments]) - before).toBeCloseTo(3.0103, 4);
      }),
    );
  });

  test('reaches the EU values in their order', () => {
    fc.assert(
      fc.property(level, fc.option(level), (lexDba, peakDbc) => {
        const reached = euValuesReached(lexDba, peakDbc);
        expect(reached).toEqual(
          ['lower action value', 'upper action value', 'limit value'].slice(0, reached.length),
        );
      }),
    );
  });

  test('of a week comes out the same by levels and by points', () => {
    fc.assert(
      fc.property(fc.array(level, { minLength: 1, maxLength: 7 }), (days) => {
        const points = days.reduce((sum, lexDba) => sum + exposurePoints(lexDba), 0);
        expect(lexWeeklyOfPointsDba(points)).toBeCloseTo(lexWeeklyDba(days), 9);
      }),
    );
  });
});

describe('the estimate of a day and of a week', () => {
  const part = fc.record({
    levelDba: fc.oneof(level, fc.constant(-Infinity)),
    hours,
    what: fc.constant('a set'),
    through: fc.constantFrom(...deviceKinds, null),
  });

  test('always says that it is an estimate and no clearance, and calls no day safe', () => {
    fc.assert(
      fc.property(fc.array(part, { maxLength: 8 }), (segments) => {
        for (const estimate of [exposureOfDay(segments), exposureOfWeek([segments, segments])]) {
          expect(estimate.cautions[0]).toContain('not a clearance');
          expect(JSON.stringify(estimate)).not.toMatch(/\bsafe/i);
        }
      }),
    );
  });
});
