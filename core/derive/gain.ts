import { gainNeededDb, microphoneOutputDbu } from '../acoustics/microphone-level.ts';
import { rowsOfCopies } from '../plan/plan-copies.ts';
import type { Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Rig } from '../show/rig.ts';
import { type GainOwner, type Purpose, purposes } from '../show/words.ts';
import { type CopiesOfSource, noCopies } from './copies-of-source.ts';
import type { CopyTrim, SourceGain } from './derived.ts';

/**
 * Gain of every source's one preamp and what it does to the trims of its copies. All copies of a source share
 * the preamp: when its owner moves the gain by x dB, every copy of the other side needs -x dB of trim to stay
 * where it was.
 */
export function deriveGains(sheet: ActSheet, copies: readonly CopiesOfSource[]): SourceGain[] {
  const rows = rowsOfCopies(sheet);
  const { rig } = sheet;
  const target = { targetDbfs: rig.targetLevelDbfs, fullScaleDbu: rig.fullScaleDbu };
  return sheet.sources.map((source, at): SourceGain => {
    const owner = source.gainOwner ?? rig.gainOwner;
    const movedDb = gainMovedDb(source);
    const inputDbu = inputLevelDbu(source);
    const trims: CopyTrim[] = [];
    const ofSource = copies[at] ?? noCopies;
    const rowsOfSource = rows[at];
    for (const purpose of purposes)
      if (ofSource[purpose] !== null)
        trims.push(trimOf(purpose, rowsOfSource?.[purpose]?.trimDb ?? 0, owner, movedDb, rig));
    return {
      sourceId: source.id,
      owner,
      inputDbu,
      neededDb: inputDbu === null ? null : gainNeededDb(inputDbu, target),
      gainDb: source.gainDb,
      movedDb,
      trims,
    };
  });
}

/** How far the gain has moved since the trims were set, in dB; 0 where one of the two is not known. */
function gainMovedDb({ gainDb, trimmedAtGainDb }: Source): number {
  return gainDb === null || trimmedAtGainDb === null ? 0 : gainDb - trimmedAtGainDb;
}

/** Level expected at the socket in dBu: from the microphone's data, or as given for a DI or line; null: not known. */
function inputLevelDbu(source: Source): number | null {
  const { sensitivityMvPerPa, expectedDbSpl, expectedDbu } = source;
  if (sensitivityMvPerPa !== null && expectedDbSpl !== null && (source.pickUp ?? 'mic') === 'mic')
    return microphoneOutputDbu(sensitivityMvPerPa, expectedDbSpl);
  return expectedDbu;
}

/** The side of the desk that a copy belongs to. */
function sideOfCopy(purpose: Purpose): GainOwner {
  return purpose === 'foh' || purpose === 'parallel' ? 'front of house' : 'monitors';
}

/**
 * The trim of one copy after the gain moved, held in the desk's range. The owner's own copies stay: the owner
 * wanted the change. Where nobody is named, front of house is taken to have moved it (common practice).
 */
function trimOf(
  purpose: Purpose,
  trimDb: number,
  owner: GainOwner | null,
  movedDb: number,
  rig: Rig,
): CopyTrim {
  const compensates = sideOfCopy(purpose) !== (owner ?? 'front of house');
  const neededDb = compensates ? trimDb - movedDb : trimDb;
  const setDb = Math.min(Math.max(neededDb, rig.trimMinDb), rig.trimMaxDb);
  return { purpose, trimDb, neededDb, setDb, shortDb: neededDb - setDb };
}

/**
 * What moving a source's gain by `byDb` would do to its copies' trims, before anybody touches it: the trims that
 * are needed, those the desk can give, and what would be missing. Empty: the source has no channel.
 */
export function trimsAfterGainMove(gain: SourceGain, byDb: number, rig: Rig): CopyTrim[] {
  return gain.trims.map(({ purpose, trimDb }) =>
    trimOf(purpose, trimDb, gain.owner, gain.movedDb + byDb, rig),
  );
}
