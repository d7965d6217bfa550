import type { Changeover } from '../../core/changeover/changeover.ts';
import { count } from './count.ts';

/** Texts of the Changeover screen. */
export const englishChangeover = {
  empty: 'There is no act to change over to.',
  emptyTodo: 'Bring in the riders of the day first.',
  fromTo: (from: string, to: string) => `From ${from} to ${to}`,
  first: (act: string) => `Before the first act: ${act}`,
  firstTodo: 'The first act is set up in peace. Choose a later act for its changeover.',

  // The clock.
  there: 'there is',
  needed: 'needed',
  bound: (time: string) => `Nobody can do it in less than ${time} with these people.`,
  ways: (time: string) => `Ways over the stage add ${time}.`,
  spare: (time: string) => `${time} to spare`,
  short: (time: string) => `${time} too long`,
  untimed: 'from the usual changeover of the day: the acts have no times',
  overlap: (minutes: number) => `the sets overlap by ${minutes} min`,
  between: (from: string, to: string) => `${from} to ${to}`,
  limit: {
    hands: 'What holds it up is hands: more people would help.',
    desk: 'What holds it up is the desk: more people do not make it shorter.',
    'order of tasks': 'What holds it up is the order of the tasks: more people do not make it shorter.',
  } satisfies Record<Changeover['limitedBy'], string>,
  people: 'People on stage',
  fewer: 'One person fewer',
  more: 'One person more',
  begin: 'Start the clock',
  began: 'left on the clock',
  overtime: 'over time',
  stopClock: 'Clear the clock',
  left: (time: string) => `${time} of work left`,
  allDone: 'All done',
  done: (done: number, all: number) => `${done} of ${count(all, 'task')} done`,
  clear: 'Clear the ticks',
  clearLabel: (act: string) => `Clear the ticks before ${act}`,
  tickLabel: (what: string) => `Tick: ${what}`,
  untickLabel: (what: string) => `Untick: ${what}`,
  beginLabel: (act: string) => `Start the clock before ${act}`,
  stopLabel: (act: string) => `Clear the clock before ${act}`,

  // The tasks.
  view: 'Tasks',
  views: { people: 'By person', places: 'By place' },
  desk: 'Desk',
  ahead: (act: string) => `Ahead, while ${act} plays`,
  nobody: 'Nobody yet',
  walk: (metres: number) => `${metres} m to walk`,

  nothing: 'Nothing to do.',
  critical: 'critical',
  criticalWhy: 'critical: if this is late, everything is late',
  offFirst: 'First of all',
  taskCount: (n: number) => count(n, 'task'),
  noPlace: 'Elsewhere',
  box: (name: string) => `Box ${name}`,

  // Devices and kit.
  devices: 'Listening devices',
  who: 'Who',
  device: 'Device',
  output: 'Output',
  comesFrom: 'From',
  newDevice: 'store',
  noDevice: 'none yet',
  earCaution: 'Hand out packs turned down; the performer turns them up. Loud monitors harm hearing.',
  kit: 'Shared kit',
  kitFits: 'The house stock lasts through this changeover.',
};
