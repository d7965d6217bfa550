import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  angleOnScreen,
  fittedView,
  pannedView,
  type Side,
  type StageView,
  toMetres,
  toScreen,
  zoomedView,
} from '../../../renderer/stage/stage-view.ts';

const size = { width: 800, height: 600 };
const view = (side: Side): StageView => ({ side, size, pxPerM: 50, middle: { xM: 0, yM: 4 } });

describe('where things of the stage are on the screen', () => {
  // Stage left is at the performer's left, facing the audience; house left is at the audience's left. Common practice.
  test.each<[place: string, side: Side, xM: number, yM: number, x: number, y: number]>([
    ['stage left is at the engineer’s left', 'engineer', 2, 4, 300, 300],
    ['stage left is at the audience’s right', 'audience', 2, 4, 500, 300],
    ['the front edge is ahead of the engineer', 'engineer', 0, 0, 400, 100],
    ['the front edge is nearest to the audience', 'audience', 0, 0, 400, 500],
  ])('%s', (_, side, xM, yM, x, y) => {
    expect(toScreen(view(side), { xM, yM })).toEqual({ x, y });
  });

  test.each<[place: string, side: Side, bearing: number, angle: number]>([
    ['what points upstage points up for the audience', 'audience', 0, 0],
    ['and down for the engineer', 'engineer', 0, 180],
    ['what points stage left points right for the audience', 'audience', 90, 90],
    ['and left for the engineer', 'engineer', 90, 270],
  ])('%s', (_, side, bearing, angle) => {
    expect(angleOnScreen(side, bearing)).toBe(angle);
  });

  test('all of the stage fits, with what stands beside it', () => {
    const extent = { leftM: -6, rightM: 8, frontM: -0.5, backM: 9 };
    for (const side of ['engineer', 'audience'] as const) {
      const fitted = fittedView(side, size, extent);
      for (const xM of [extent.leftM, extent.rightM])
        for (const yM of [extent.frontM, extent.backM]) {
          const { x, y } = toScreen(fitted, { xM, yM });
          expect(x > 0 && x < size.width && y > 0 && y < size.height).toBe(true);
        }
    }
  });
});

const metre = fc.double({ min: -30, max: 30, noNaN: true });
const place = fc.record({ xM: metre, yM: metre });
const pixel = fc.double({ min: -500, max: 1500, noNaN: true });
const point = fc.record({ x: pixel, y: pixel });
const anyView = fc.record({
  side: fc.constantFrom<Side>('engineer', 'audience'),
  size: fc.constant(size),
  pxPerM: fc.double({ min: 8, max: 300, noNaN: true }),
  middle: place,
});

describe('on any drawing', () => {
  test('from the stage to the screen and back is the same place', () => {
    fc.assert(
      fc.property(anyView, place, (drawn, at) => {
        const back = toMetres(drawn, toScreen(drawn, at));
        expect(back.xM).toBeCloseTo(at.xM, 8);
        expect(back.yM).toBeCloseTo(at.yM, 8);
      }),
    );
  });

  test('the two views are one drawing turned by half a turn about its middle', () => {
    fc.assert(
      fc.property(anyView, place, (drawn, at) => {
        const one = toScreen({ ...drawn, side: 'engineer' }, at);
        const other = toScreen({ ...drawn, side: 'audience' }, at);
        expect(one.x + other.x).toBeCloseTo(size.width, 6);
        expect(one.y + other.y).toBeCloseTo(size.height, 6);
      }),
    );
  });

  test('what lies under the pointer stays there when one goes nearer', () => {
    fc.assert(
      fc.property(anyView, point, fc.double({ min: 0.2, max: 5, noNaN: true }), (drawn, at, factor) => {
        const under = toMetres(drawn, at);
        const after = toScreen(zoomedView(drawn, factor, at), under);
        expect(after.x).toBeCloseTo(at.x, 5);
        expect(after.y).toBeCloseTo(at.y, 5);
      }),
    );
  });

  test('what is pushed lies under the hand', () => {
    fc.assert(
      fc.property(anyView, place, point, (drawn, at, way) => {
        const before = toScreen(drawn, at);
        const after = toScreen(pannedView(drawn, way), at);
        expect(after.x - before.x).toBeCloseTo(way.x, 6);
        expect(after.y - before.y).toBeCloseTo(way.y, 6);
      }),
    );
  });
});
