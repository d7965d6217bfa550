import type { Moment } from '../state/view-store.ts';

/** The moments of the day by name: on the tabs, in titles, and what the key of each leads to. */
export const englishMoments = {
  advance: 'Advance',
  mixes: 'Mixes',
  stage: 'Stage',
  day: 'Day',
  changeover: 'Changeover',
  show: 'Show',
  paper: 'Paper',
  rig: 'Rig',
  recall: 'Recall',
} satisfies Record<Moment, string>;
