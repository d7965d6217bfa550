import type { Decision } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Change } from '../show/change.ts';

/** Parts of a plan that can be put back to what the program proposes. */
export const planSections = ['copies', 'channels', 'sockets', 'buses', 'outputs', 'cue', 'levels'] as const;
export type PlanSection = (typeof planSections)[number];

/** Which decisions belong to a section. Copies and channels are rows of their own. */
const sectionOf: Record<Decision['about'], PlanSection> = {
  socket: 'sockets',
  phantom: 'sockets',
  bus: 'buses',
  output: 'outputs',
  device: 'outputs',
  cue: 'cue',
  feed: 'copies',
  'second feed': 'copies',
  'effect send': 'copies',
  tap: 'levels',
  level: 'levels',
};

/** A way back, and what it costs: to be shown before it is taken. */
export type Restoring = {
  change: Change;
  /** How many of the engineer's decisions would go. */
  decisions: number;
};

/**
 * Puts one section of an act, or the whole act, back to what the program proposes. Nothing is done here: the change
 * can be shown, asked about, applied and undone. Wishes and alternates are no part of a plan and stay.
 */
export function restoreProposal(sheet: ActSheet, section: PlanSection | 'whole act'): Restoring {
  const concerns = (it: PlanSection) => section === 'whole act' || section === it;
  const decisions = sheet.decisions.filter((decision) => concerns(sectionOf[decision.about]));
  const removedCopies = concerns('copies') ? sheet.copies : [];
  // Only the channel goes back: that the copy is wanted, its trim and its delay stay decided.
  const movedCopies =
    concerns('channels') && !concerns('copies') ? sheet.copies.filter((copy) => copy.channel !== null) : [];
  return {
    change: {
      label:
        section === 'whole act'
          ? `Put ${sheet.act.name} back to the proposal`
          : `Put ${section} back to the proposal`,
      put: movedCopies.map((copy) => ({ table: 'copies' as const, row: { ...copy, channel: null } })),
      remove: [
        ...decisions.map(({ id }) => ({ table: 'decisions' as const, id })),
        ...removedCopies.map(({ id }) => ({ table: 'copies' as const, id })),
      ],
    },
    decisions:
      decisions.filter((decision) => decision.locked).length +
      [...removedCopies, ...movedCopies].filter((copy) => copy.locked).length,
  };
}
