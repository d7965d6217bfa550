import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findStockCollisions } from '../../../core/plan/day/stock.ts';
import { festivalDay } from '../../helpers/festival-day.ts';

type Drawn = { start: number; length: number; packs: number };

const drawnDay = fc.record({
  acts: fc.array(
    fc.record({
      start: fc.integer({ min: 600, max: 900 }),
      length: fc.integer({ min: 10, max: 90 }),
      packs: fc.integer({ min: 1, max: 4 }),
    }),
    { minLength: 1, maxLength: 8 },
  ),
  have: fc.integer({ min: 0, max: 6 }),
  handOut: fc.integer({ min: 0, max: 20 }),
  back: fc.integer({ min: 0, max: 30 }),
});

/** Packs handed out one by one: the first that is back again, else a new one. Each act takes the ones it needs. */
function packsByHand(acts: readonly Drawn[], handOut: number, back: number): number {
  const backAt: number[] = [];
  for (const { start, length, packs } of acts.toSorted((a, b) => a.start - b.start))
    for (let taken = 0; taken < packs; taken++) {
      const free = backAt.findIndex((at) => at <= start - handOut);
      const until = start + length + back;
      if (free < 0) backAt.push(until);
      else backAt[free] = until;
    }
  return backAt.length;
}

/**
 * Handing out in order of start, the first free one each time, needs no more items than there are spans at once
 * (interval partitioning; Kleinberg and Tardos, Algorithm Design, 4.1, from memory). So the crew that does it by
 * hand and the count must agree.
 */
test('the fewest further packs are what a crew needs that hands out the first pack that is back', () => {
  fc.assert(
    fc.property(drawnDay, ({ acts, have, handOut, back }) => {
      const show = festivalDay({
        acts: acts.map(({ start, length }, at) => ({
          id: `act ${at}`,
          dayId: 'day',
          order: at,
          name: `Act ${at + 1}`,
          startMinute: start,
          endMinute: start + length,
        })),
        sources: [],
        performers: [],
        listeners: [],
        mixes: acts.map(({ packs }, at) => ({
          id: `mix ${at}`,
          actId: `act ${at}`,
          order: 0,
          name: 'Mix',
          deviceKind: 'in-ear',
          deviceCount: packs,
        })),
        stockItems: [
          {
            id: 'packs',
            rigId: 'rig',
            kind: 'in-ear pack',
            count: have,
            handOutMinutes: handOut,
            returnMinutes: 0,
            chargeMinutes: back,
          },
        ],
      });
      const [collision] = findStockCollisions(show, 'day').collisions;
      expect(collision?.extra ?? 0).toBe(Math.max(0, packsByHand(acts, handOut, back) - have));
    }),
    { numRuns: 200 },
  );
});
