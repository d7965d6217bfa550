import { dbOfPower, powerOfDb } from '../acoustics/decibel.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Rig } from '../show/rig.ts';
import type { Feed, MixLevel } from './derived.ts';

/**
 * What every mix is expected to add up to at its start, and how much lower it starts as a whole so that the rig's
 * headroom stays. Sources have nothing to do with each other, so powers add; a second copy in a mix is the same
 * signal and adds amplitude to its first.
 */
export function deriveLevels(
  sheet: ActSheet,
  feeds: readonly (readonly Feed[])[],
  secondFeeds: readonly Feed[],
): MixLevel[] {
  const power = new Float64Array(sheet.mixes.length);
  const powerOf = rememberedPowers();
  for (const row of feeds)
    for (let mixAt = 0; mixAt < row.length; mixAt++) {
      const levelDb = row[mixAt]?.levelDb ?? null;
      if (levelDb !== null) power[mixAt] = (power[mixAt] ?? 0) + powerOf(levelDb);
    }
  const copiesInMix = new Map<string, number>();
  for (const { mixId, sourceId, levelDb } of secondFeeds) {
    const mixAt = sheet.mixes.findIndex((mix) => mix.id === mixId);
    const cell = JSON.stringify([mixId, sourceId]);
    const before = copiesInMix.get(cell) ?? 1;
    copiesInMix.set(cell, before + 1);
    // n equal copies have n times the amplitude and n squared times the power: two are 6 dB.
    if (mixAt >= 0 && levelDb !== null)
      power[mixAt] = (power[mixAt] ?? 0) + ((before + 1) ** 2 - before ** 2) * powerOf(levelDb);
  }
  return sheet.mixes.map((mix, mixAt) => {
    const sum = power[mixAt] ?? 0;
    const sumDb = sum > 0 ? dbOfPower(sum) : null;
    return { mixId: mix.id, sumDb, loweredByDb: sumDb === null ? 0 : loweringDb(sumDb, sheet.rig) };
  });
}

/** A matrix of thousands of sends holds a handful of levels, so each is turned into power once. */
function rememberedPowers(): (levelDb: number) => number {
  const known = new Map<number, number>();
  return (levelDb) => {
    const found = known.get(levelDb);
    if (found !== undefined) return found;
    const power = powerOfDb(levelDb);
    known.set(levelDb, power);
    return power;
  };
}

/** What a mix of this sum must be lowered by to leave the rig's headroom below full scale; 0 where it fits. */
function loweringDb(sumDb: number, rig: Rig): number {
  const expectedDbfs = rig.targetLevelDbfs + sumDb;
  return Math.min(0, -rig.headroomDb - expectedDbfs);
}
