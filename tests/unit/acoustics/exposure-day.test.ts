import { describe, expect, test } from 'vitest';
import { type DaySegment, exposureOfDay } from '../../../core/acoustics/exposure-day.ts';
import { exposureOfWeek } from '../../../core/acoustics/exposure-week.ts';

const part = (what: string, levelDba: number, hours: number, through: DaySegment['through'] = null) => ({
  what,
  levelDba,
  hours,
  through,
});

/** The worked day of tests/reference/noise-exposure.json. */
const engineersDay = [
  part('sound checks', 88, 2, 'wedge'),
  part('beside the stage', 82, 3.5),
  part('first set', 100, 1.5, 'wedge'),
  part('second set', 97, 1, 'wedge'),
];

describe("an engineer's day", () => {
  const day = exposureOfDay(engineersDay);

  test('adds up to one daily level and one dose for each criterion', () => {
    expect(day.hours).toBe(8);
    expect(day.lex8hDba).toBeCloseTo(94.359, 3);
    expect(day.doses.niosh.dosePercent).toBeCloseTo(871.88, 2);
    expect(day.doses['osha action'].twaDba).toBeCloseTo(92.497, 3);
    // 29 CFR 1910.95: from 90 dBA only the two sets count, 1.5 of 2 h and 1 of 3.03 h.
    expect(day.doses['osha permissible'].dosePercent).toBeCloseTo(75 + 100 / 3.0314, 2);
    expect(day.euValuesReached).toEqual(['lower action value', 'upper action value', 'limit value']);
  });

  test('names the parts that are louder than a criterion permits for any time', () => {
    expect(day.doses['osha permissible'].partsAboveCeiling).toEqual([]);
    const loud = exposureOfDay([
      part('first set', 100, 1),
      part('cue burst', 118, 0.01),
      part('nothing', 120, 0),
    ]);
    expect(loud.doses['osha permissible'].partsAboveCeiling).toEqual(['cue burst']);
    expect(loud.doses.niosh.partsAboveCeiling).toEqual([]);
  });

  test('shows which part it comes from', () => {
    expect(day.parts.map(({ what }) => what)).toEqual(engineersDay.map(({ what }) => what));
    expect(day.parts.reduce((sum, { sharePercent }) => sum + sharePercent, 0)).toBeCloseTo(100, 9);
    // 1.5 h at 100 dBA are 6 of the day's 8.7314 Pa2h.
    expect(day.parts[2]?.sharePercent).toBeCloseTo((100 * 6) / 8.7314, 2);
  });

  test('says first that it is an estimate and not a clearance, and who decides', () => {
    expect(day.cautions[0]).toMatch(/estimate, not a clearance/);
    expect(day.cautions[1]).toMatch(/local regulations and the competent person/);
    expect(day.assumptions.join(' ')).toMatch(/nothing was measured/);
  });

  test.each([
    { through: 'in-ear', warned: true },
    { through: 'drum fill', warned: false },
    { through: 'wedge', warned: false },
    { through: null, warned: false },
  ] as const)('listening through $through has the caution on in-ears: $warned', ({ through, warned }) => {
    const { cautions } = exposureOfDay([part('set', 95, 1, through)]);
    expect(cautions.some((caution) => caution.startsWith('In-ears are not'))).toBe(warned);
  });
});

describe('a day without sound', () => {
  test.each([
    { name: 'no parts', segments: [] },
    { name: 'silence', segments: [part('day off', -Infinity, 8)] },
  ])('has no level, no dose and all its cautions: $name', ({ segments }) => {
    const day = exposureOfDay(segments);
    expect(day.lex8hDba).toBe(-Infinity);
    expect(day.doses.niosh).toMatchObject({ dosePercent: 0, twaDba: null });
    expect(day.parts.every(({ sharePercent }) => sharePercent === 0)).toBe(true);
    expect(day.cautions.length).toBeGreaterThan(2);
  });
});

describe('a week of days', () => {
  const eightHoursAt = (levelDba: number) => [part('set', levelDba, 8)];

  test('is averaged over five working days', () => {
    // Daily levels and result: tests/reference/noise-exposure.json, week-of-days.
    expect(exposureOfWeek([85, 88, 91, 82, 80].map(eightHoursAt)).lexWeeklyDba).toBeCloseTo(86.928, 3);
    expect(exposureOfWeek([eightHoursAt(85)]).lexWeeklyDba).toBeCloseTo(85 - 6.9897, 3);
  });

  test('takes a share of the weekly listening allowance of ITU-T H.870: forty hours at 80 dBA are all of it', () => {
    expect(exposureOfWeek([80, 80, 80, 80, 80].map(eightHoursAt)).allowancePercent).toBeCloseTo(100, 9);
  });

  test('says that it is an estimate, and that the average may hide a day', () => {
    const week = exposureOfWeek([[part('set', 95, 1, 'in-ear')], []]);
    expect(week.cautions[0]).toMatch(/estimate, not a clearance/);
    expect(week.cautions.some((caution) => caution.startsWith('In-ears are not'))).toBe(true);
    expect(week.assumptions.at(-1)).toMatch(/a quiet day hides a loud one/);
  });
});
