import type { LayerName } from '../../core/plan/day/day-plan.ts';
import type { Habit } from '../../core/plan/day/habits.ts';
import type { Entry } from '../../core/plan/day/problem.ts';
import { count } from './count.ts';

/** Texts of the Day screen. */
export const englishDay = {
  first: 'First day',
  empty: 'This day has no act yet.',
  emptyTodo: 'Bring in the first rider; its patch appears here.',
  parts: { patch: 'Patch', order: 'Running order' },
  partsLabel: 'Parts of the day',

  // The patch.
  table: (name: string) => `Patch of ${name}`,
  planTable: (name: string) => `Planned patch of ${name}`,
  socket: 'socket',
  entry: {
    hot: 'plugged in the changeover',
    cold: 'plugged ahead',
    kept: 'stays',
  } satisfies Record<Entry, string>,
  firstEntry: 'set up before the first act',
  legend: 'Marks',
  lockedMark: 'locked',
  moveMark: 'moves in the plan, from',
  and: (others: string) => `and ${others}`,
  from: 'moves in the plan, from ',
  newHere: 'nowhere',
  changes: (hot: number) => `${hot} in the changeover`,
  ahead: (cold: number) => `${cold} ahead`,
  stays: (kept: number) => `${kept} stay`,
  setUp: (lines: number) => `${count(lines, 'line')} to set up`,
  needsOf: (needed: string, there: string) => `${needed} of ${there} min`,
  needsSpoken: (needed: string, there: string) => `needs ${needed} of ${there} minutes`,
  tooLong: (by: string) => `${by} too long`,
  noSchedule: 'no schedule',
  withoutSocket: (n: number) => `${count(n, 'line')} without a socket`,

  // The chosen cell.
  chosen: 'Chosen socket',
  freeHere: (socket: string, act: string) => `${socket} is free during ${act}.`,
  reserved: (socket: string, why: string) => `${socket} is reserved: ${why}.`,
  isHere: (socket: string, act: string) => `${socket}, ${act}`,
  clash: (others: string) => `In the same socket: ${others}.`,
  lock: 'Lock here',
  openLock: 'Open the lock',
  moveTo: 'Move to',
  moveNowhere: 'choose a socket',
  occupied: (socket: string, by: string) => `${socket} (${by})`,
  inMixes: 'In the mixes',
  sharedLine: 'Stays on stage as',
  riser: 'Riser',
  lockLabel: (source: string, socket: string) => `Lock ${source} to ${socket}`,
  openLabel: (source: string) => `Open the lock of ${source}`,

  // What the day costs.
  costs: 'All changeovers together',
  costLines: 'lines',
  costMinutes: 'minutes',
  costHands: 'hands, min',
  costWork: 'work',
  changeoversTooLong: (n: number) => `${count(n, 'changeover')} too long`,
  now: 'As it stands',
  habit: {
    'list order': 'Each list from socket 1',
    'one festival patch': 'Fixed homes',
    'keep and fill': 'Keep and fill',
  } satisfies Record<Habit, string>,
  broken: (n: number) => `breaks ${count(n, 'rule')}`,
  planned: 'Planned',
  workWhy:
    'Work: 10 for each line that is plugged and 2 for each metre to its box; less than half of it while another act plays.',
  provenMinimal: 'proven minimal',
  holds: (proof: string) => `The day stands as planned: ${proof}.`,
  withinGap: (percent: string) => `at most ${percent} % above the proven bound`,
  planDay: 'Plan the day',
  planAgain: 'Plan again',
  stop: 'Stop',
  stopping: 'Stopping …',
  planning: 'Planning the day',
  soFar: (layer: string, cost: number, bound: number) =>
    bound > 0 ? `${layer}: work ${cost} found, none under ${bound}` : `${layer}: work ${cost} found`,
  starting: 'Looking for a first plan …',
  cannotPlan: 'The day cannot be planned as it is.',
  stopped: 'Stopped: this is the best plan until then.',
  stoppedEmpty: 'Stopped before a plan was found.',
  stale: 'The day has changed since this plan was made.',
  staleTodo: 'Plan it again.',
  layer: {
    sockets: 'Sockets',
    channels: 'Channels',
    buses: 'Buses',
    outputs: 'Outputs',
  } satisfies Record<LayerName, string>,
  noPlan: (layer: string) => `${layer}: no plan keeps every rule.`,

  // What a plan would change.
  difference: 'What the plan changes',
  replugsSpoken: (from: number, to: number) =>
    from === to
      ? `${count(to, 'line')} to plug in the changeovers, as now`
      : `${count(to, 'line')} to plug in the changeovers instead of ${from}`,
  saves: (units: number) =>
    units === 0
      ? 'the same work'
      : units > 0
        ? `${units} less work`
        : `${-units} more work, because a rule is kept that is broken now`,
  moves: (parts: readonly string[]) => `Moves ${parts.join(', ')}.`,
  moveCount: {
    sockets: (n: number) => count(n, 'line'),
    channels: (n: number) => count(n, 'channel'),
    buses: (n: number) => count(n, 'mix to another bus', 'mixes to other buses'),
    outputs: (n: number) => count(n, 'mix to another output', 'mixes to other outputs'),
  } satisfies Record<LayerName, (n: number) => string>,
  nothingMoves: 'Nothing moves: the plan holds everything where it is.',
  whatMoves: 'What moves',
  move: (name: string, from: string, to: string) =>
    from === '' ? `${name}: ${to}` : `${name}: ${from} → ${to}`,
  kept: (cost: number, gain: number, least: number) =>
    `What is patched is kept. A new plan would be ${cost}, a gain of ${gain}, and you ask for more than ${least}.`,
  renewed: (gain: number, least: number) => `A new plan gains ${gain}, more than the ${least} you ask for.`,
  released: (names: string) => `Could not stay where it was: ${names}.`,
  take: 'Take the plan',
  takeNearest: 'Take the nearest plan',
  hold: 'Hold it so',
  leave: 'Leave it',
  show: 'Show',
  showPlan: 'the plan',
  showNow: 'as it stands',

  // The running order.
  order: (name: string) => `Running order of ${name}`,
  place: 'Place',
  act: 'Act',
  starts: 'Starts',
  ends: 'Ends',
  before: 'Changeover, minutes',
  neededOf: (needed: string, there: string) => `${needed} of ${there}`,
  soundCheck: 'Sound check',
  soundCheckFrom: 'Sound check from',
  soundCheckTo: 'Sound check to',
  prePatch: 'Patch ahead',
  prePatchWhy: 'Its risers are patched while the act before plays.',
  lineCheckAhead: 'Check ahead',
  lineCheckAheadWhy: 'What is patched ahead is also line-checked ahead, on headphones.',
  onStage: 'Stays, risers',
  sharedLines: (n: number) => count(n, 'shared line'),
  nextDay: 'next day',
  later: 'Later acts move along',
  handle: (place: number, act: string) => `${place}, move ${act}; with the keys Alt and up or down`,
  insertAfter: (act: string) => `Insert an act after ${act}`,
  insert: '+',
  newAct: 'New act',
  drop: 'Drop',
  dropOf: (act: string) => `Drop ${act}`,
  dropAsk: (act: string) => `Drop ${act} from the day?`,
  dropWhat: (sources: number, mixes: number) =>
    `Its rider, ${count(sources, 'source')} and ${count(mixes, 'mix', 'mixes')} go with it. Undo brings everything back.`,
  dropKeep: 'Keep it',
  settings: 'The day',
  crewSize: 'People on stage',
  changeoverMinutes: 'Changeover, where times do not say it',
  spareVocalLines: 'Spare lines for the lead vocal',
  channelsInUsualOrder: 'Channels in the usual order where it costs no move',
  keepUnlessGain: 'Keep what is patched unless a plan gains more than',
  keepUnlessGainWhy: 'In units of work. Empty: every plan starts afresh.',
  doubts: 'To look at before planning',
  stock: 'Shared kit',
  noStock: 'The house stock lasts all day.',
  noStockListed: 'The rig lists no stock, so nothing is counted.',
  unlisted: (names: string) => `Not counted, because the rig lists no such stock: ${names}.`,
  timeBad: 'Type a time, for example 14:30.',
  timeOut: 'This time would leave the two days that a running order can have.',
};
