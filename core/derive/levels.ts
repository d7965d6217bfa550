import { dbOfPower, powerOfDb } from '../acoustics/decibel.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Rig } from '../show/rig.ts';
import type { Feed, MixLevel } from './derived.ts';
import { oneWhereItFlows } from './outcomes.ts';
import type { Sends } from './sends.ts';

/**
 * What every mix is expected to add up to at its start, and how much lower it starts as a whole so that the rig's
 * headroom stays. Sources have nothing to do with each other, so powers add; a second copy in a mix is the same
 * signal and adds amplitude to its first.
 */
export function deriveLevels(sheet: ActSheet, sends: Sends, secondFeeds: readonly Feed[]): MixLevel[] {
  const power = new Float64Array(sheet.mixes.length);
  const { sourceCount, outcome, levelAt } = sends;
  // A matrix of thousands of sends holds a handful of levels, so each is turned into power once.
  const powerAt = Float64Array.from(sends.levelsDb, powerOfDb);
  for (let mixAt = 0, cell = 0; mixAt < power.length; mixAt++) {
    let sum = 0;
    // Which cells flow follows no pattern that a processor could guess, so silent ones add 0 instead of being skipped.
    for (let sourceAt = 0; sourceAt < sourceCount; sourceAt++, cell++)
      sum += (oneWhereItFlows[outcome[cell] ?? 0] ?? 0) * (powerAt[levelAt[cell] ?? 0] ?? 0);
    power[mixAt] = sum;
  }
  const copiesInMix = new Map<string, number>();
  for (const { mixId, sourceId, levelDb } of secondFeeds) {
    const mixAt = sheet.mixes.findIndex((mix) => mix.id === mixId);
    const cell = JSON.stringify([mixId, sourceId]);
    const before = copiesInMix.get(cell) ?? 1;
    copiesInMix.set(cell, before + 1);
    // n equal copies have n times the amplitude and n squared times the power: two are 6 dB.
    if (mixAt >= 0 && levelDb !== null)
      power[mixAt] = (power[mixAt] ?? 0) + ((before + 1) ** 2 - before ** 2) * powerOfDb(levelDb);
  }
  return sheet.mixes.map((mix, mixAt) => {
    const sum = power[mixAt] ?? 0;
    const sumDb = sum > 0 ? dbOfPower(sum) : null;
    return { mixId: mix.id, sumDb, loweredByDb: sumDb === null ? 0 : loweringDb(sumDb, sheet.rig) };
  });
}

/** What a mix of this sum must be lowered by to leave the rig's headroom below full scale; 0 where it fits. */
function loweringDb(sumDb: number, rig: Rig): number {
  const expectedDbfs = rig.targetLevelDbfs + sumDb;
  return Math.min(0, -rig.headroomDb - expectedDbfs);
}
