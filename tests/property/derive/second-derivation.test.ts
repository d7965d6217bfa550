import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { anySheet, patienceMs } from './any-act.ts';
import { slowCue, slowFeed, slowSumDb } from './slow-derivation.ts';

vi.setConfig({ testTimeout: patienceMs });

/** Thousands of acts: the rules meet in ways that no table of cases thinks of. */
const acts = { numRuns: 1500 };

describe('a second derivation, slow and obvious, agrees', () => {
  test('on every feed: copy, channel, start level and wish', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        const { plan, feeds } = deriveAct(sheet);
        sheet.sources.forEach((source, sourceAt) => {
          sheet.mixes.forEach((mix, mixAt) => {
            const feed = feeds[sourceAt]?.[mixAt];
            const { purpose, channel, levelDb, wishId } = feed ?? {};
            expect({ purpose, channel, levelDb, wishId }).toEqual(slowFeed(sheet, plan, mix, source));
          });
        });
      }),
      acts,
    );
  });

  test('on the sum of every mix, and on what it is lowered by', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        const { feeds, secondFeeds, levels } = deriveAct(sheet);
        sheet.mixes.forEach((mix, mixAt) => {
          const levelsDb = feeds.flatMap((row) => {
            const feed = row[mixAt];
            if (!feed || feed.levelDb === null) return [];
            const copies =
              1 + secondFeeds.filter((it) => it.mixId === mix.id && it.sourceId === feed.sourceId).length;
            // Copies of one signal add amplitude: twice is 6 dB.
            return [feed.levelDb + 20 * Math.log10(copies)];
          });
          const sumDb = slowSumDb(levelsDb);
          const level = levels[mixAt];
          if (sumDb === null) expect(level?.sumDb).toBeNull();
          else expect(level?.sumDb).toBeCloseTo(sumDb, 6);
          const overDb =
            sumDb === null ? 0 : Math.max(0, sheet.rig.targetLevelDbfs + sumDb + sheet.rig.headroomDb);
          expect(level?.loweredByDb).toBeCloseTo(-overDb, 6);
        });
      }),
      acts,
    );
  });

  test('on the cue of every mix: output, format, level and delay', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        const { plan, cues } = deriveAct(sheet);
        sheet.mixes.forEach((mix, mixAt) => {
          const slow = slowCue(sheet, plan, mix);
          const cue = cues[mixAt];
          expect([cue?.cueOutputId, cue?.format]).toEqual([slow.cueOutputId, slow.format]);
          for (const figure of ['offsetDb', 'delayMs'] as const) {
            const value = slow[figure];
            if (value === null) expect(cue?.[figure]).toBeNull();
            else expect(cue?.[figure]).toBeCloseTo(value, 6);
          }
        });
      }),
      acts,
    );
  });
});
