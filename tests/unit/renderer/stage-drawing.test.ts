import { describe, expect, test } from 'vitest';
import { nullAngleDegrees, patternCoefficients } from '../../../core/acoustics/microphone-patterns.ts';
import { micPatterns } from '../../../core/show/words.ts';
import { nextMark } from '../../../renderer/stage/next-mark.ts';
import { pointAt, polarPoints } from '../../../renderer/stage/polar-path.ts';

const farOff = ({ x, y }: { x: number; y: number }) => Math.hypot(x, y);

describe('the outline of a pattern', () => {
  test.each(micPatterns)('%s: all of it at the front, as much at the left as at the right', (pattern) => {
    const points = polarPoints(pattern, 0, 100);
    const [front] = points;
    expect(front?.x).toBeCloseTo(0, 9);
    expect(front?.y).toBeCloseTo(-100, 9);
    for (const [nth, point] of points.entries()) {
      const other = points[(points.length - nth) % points.length];
      expect(farOff(point)).toBeCloseTo(farOff(other ?? { x: 0, y: 0 }), 9);
      expect(farOff(point)).toBeLessThanOrEqual(100 + 1e-9);
    }
  });

  // First-order patterns a + (1 - a) cos: at the side they pick up a, at the back |2a - 1|.
  // Source: HyperPhysics, Directional Patterns of Microphones.
  test.each<[pattern: (typeof micPatterns)[number], side: number, back: number]>([
    ['omnidirectional', 100, 100],
    ['cardioid', 50, 0],
    ['hypercardioid', 25, 50],
    ['figure-8', 0, 100],
  ])('%s: %d hundredths at the side, %d at the back', (pattern, side, back) => {
    const points = polarPoints(pattern, 0, 100);
    expect(farOff(points[points.length / 4] ?? { x: -1, y: -1 })).toBeCloseTo(side, 9);
    expect(farOff(points[points.length / 2] ?? { x: -1, y: -1 })).toBeCloseTo(back, 9);
  });

  test('the outline comes in at the null', () => {
    for (const pattern of ['cardioid', 'supercardioid', 'hypercardioid', 'figure-8'] as const) {
      const nullDeg = nullAngleDegrees(patternCoefficients[pattern]) ?? Number.NaN;
      const points = polarPoints(pattern, 0, 100);
      const stepDeg = 360 / points.length;
      const nearest = points[Math.round(nullDeg / stepDeg)];
      expect(farOff(nearest ?? { x: 100, y: 100 })).toBeLessThan(6);
    }
  });

  test('it turns with its front', () => {
    const [turned] = polarPoints('cardioid', 90, 50);
    expect(turned).toMatchObject(pointAt(90, 50));
    expect(turned?.x).toBeCloseTo(50, 9);
  });
});

describe('an arrow key goes', () => {
  const marks = [
    { key: 'left', at: { x: 0, y: 100 } },
    { key: 'middle', at: { x: 100, y: 100 } },
    { key: 'right', at: { x: 200, y: 110 } },
    { key: 'aside', at: { x: 170, y: 20 } },
    { key: 'below', at: { x: 90, y: 200 } },
  ];
  const from = { x: 100, y: 100 };

  test.each([
    ['right to what lies ahead rather than aside', { x: 1, y: 0 }, 'right'],
    ['left', { x: -1, y: 0 }, 'left'],
    ['up to what there is', { x: 0, y: -1 }, 'aside'],
    ['down', { x: 0, y: 1 }, 'below'],
  ])('%s', (_, way, key) => {
    expect(nextMark(marks, from, way)).toBe(key);
  });

  test('nowhere where nothing lies in its direction', () => {
    expect(nextMark(marks, { x: 0, y: 100 }, { x: -1, y: 0 })).toBeNull();
  });
});
