import type { ActSheet } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import type { Derived } from './derived.ts';

/** What happens on the engineer's side when the mix under check changes. */
export type CueChange = {
  /** The cue output that falls silent, or null where the same one goes on. */
  silentCueOutputId: Id | null;
  /** The cue output that carries the next mix, or null where there is none. */
  nextCueOutputId: Id | null;
  /** How much the cue's level setting moves on an output that goes on, in dB; null where it is not known. */
  levelMovesByDb: number | null;
  /** Delay of the next cue in milliseconds, or null. */
  delayMs: number | null;
  formatChanges: boolean;
  /** Whether the engineer's talk microphone then reaches the performer under check. */
  talkReaches: boolean;
  /** What to say and do, one sentence each. */
  sentences: string[];
};

/**
 * From one mix under check to the next: in-ear mixes are heard on the cue pack and wedges on the cue wedge, so
 * one falls silent and the other takes over. null where one of the mixes is not in the act.
 */
export function cueChange(sheet: ActSheet, derived: Derived, fromMixId: Id, toMixId: Id): CueChange | null {
  const from = derived.cues.find((cue) => cue.mixId === fromMixId);
  const to = derived.cues.find((cue) => cue.mixId === toMixId);
  const talk = derived.talk.find((it) => it.mixId === toMixId);
  if (!from || !to || !talk) return null;
  const same = from.cueOutputId === to.cueOutputId;
  const nameOf = (id: Id | null) => sheet.cueOutputs.find((cue) => cue.id === id)?.name ?? 'nothing';
  const levelMovesByDb =
    same && from.offsetDb !== null && to.offsetDb !== null ? to.offsetDb - from.offsetDb : null;
  const sentences = [
    same
      ? `"${nameOf(to.cueOutputId)}" goes on.`
      : `"${nameOf(from.cueOutputId)}" falls silent; take it off before "${nameOf(to.cueOutputId)}" opens.`,
    to.offsetDb === null
      ? 'Its level is not known: bring it up from silence.'
      : `It is matched at ${Math.round(to.offsetDb * 10) / 10} dB.`,
    ...(to.delayMs === null ? [] : [`It is delayed by ${Math.round(to.delayMs * 10) / 10} ms.`]),
    talk.why,
  ];
  return {
    silentCueOutputId: same ? null : from.cueOutputId,
    nextCueOutputId: to.cueOutputId,
    levelMovesByDb,
    delayMs: to.delayMs,
    formatChanges: from.format !== to.format,
    talkReaches: talk.engineerReaches,
    sentences,
  };
}
