import type { Moment } from '../state/view-store.ts';

/**
 * Every key of the program. `where` says when it counts: everywhere, or in one moment. A key without Ctrl or Alt
 * does nothing while a text is being typed. Ctrl stands for Cmd too. Nothing that destroys is on a single key
 * without undo.
 */
export type Binding = {
  id: string;
  keys: readonly string[];
  where: 'everywhere' | Moment;
  text: string;
  /** Shown on the card only: the widget that has the focus handles it. */
  shownOnly?: true;
};

const table = [
  { id: 'find', keys: ['Ctrl+K'], where: 'everywhere', text: 'Find anything' },
  { id: 'keys', keys: ['?', 'F1'], where: 'everywhere', text: 'Show this card' },
  { id: 'undo', keys: ['Ctrl+Z'], where: 'everywhere', text: 'Undo' },
  { id: 'redo', keys: ['Ctrl+Shift+Z', 'Ctrl+Y'], where: 'everywhere', text: 'Redo' },
  { id: 'keep', keys: ['Ctrl+S'], where: 'everywhere', text: 'Back-ups, kept states and files' },
  { id: 'theme', keys: ['F8'], where: 'everywhere', text: 'Night or day theme' },
  { id: 'region', keys: ['F6'], where: 'everywhere', text: 'Next part of the window' },
  { id: 'regionBack', keys: ['Shift+F6'], where: 'everywhere', text: 'Part of the window before' },
  { id: 'advance', keys: ['Alt+1'], where: 'everywhere', text: 'Advance' },
  { id: 'mixes', keys: ['Alt+2'], where: 'everywhere', text: 'Mixes' },
  { id: 'stage', keys: ['Alt+3'], where: 'everywhere', text: 'Stage' },
  { id: 'day', keys: ['Alt+4'], where: 'everywhere', text: 'Day' },
  { id: 'changeover', keys: ['Alt+5'], where: 'everywhere', text: 'Changeover' },
  { id: 'show', keys: ['Alt+6'], where: 'everywhere', text: 'Show' },
  { id: 'paper', keys: ['Alt+7'], where: 'everywhere', text: 'Paper' },
  { id: 'rig', keys: ['Alt+8'], where: 'everywhere', text: 'Rig' },
  { id: 'recall', keys: ['Alt+9'], where: 'everywhere', text: 'Recall' },
  { id: 'actBefore', keys: ['Alt+PageUp'], where: 'everywhere', text: 'Act before' },
  { id: 'actAfter', keys: ['Alt+PageDown'], where: 'everywhere', text: 'Act after' },
] as const satisfies readonly Binding[];

const shown = [
  {
    id: 'cellMove',
    keys: ['Arrows', 'Home', 'End'],
    where: 'mixes',
    text: 'Move; with Shift choose a range, with Ctrl go to the edge',
    shownOnly: true,
  },
  { id: 'cellAll', keys: ['Ctrl+A'], where: 'mixes', text: 'Choose all cells', shownOnly: true },
  {
    id: 'cellType',
    keys: ['0–9', '−', 'a word'],
    where: 'mixes',
    text: 'Type a level in dB, or lots, some, little, none, only; Enter goes down, Tab goes right',
    shownOnly: true,
  },
  {
    id: 'cellNudge',
    keys: ['Alt+Up', 'Alt+Down'],
    where: 'mixes',
    text: 'The chosen cells 1 dB louder or quieter',
    shownOnly: true,
  },
  {
    id: 'cellFill',
    keys: ['Ctrl+D', 'Ctrl+R'],
    where: 'mixes',
    text: 'Fill down or right from the first of the chosen cells, or from the one before',
    shownOnly: true,
  },
  {
    id: 'cellDetails',
    keys: ['Enter'],
    where: 'mixes',
    text: 'Details of the source and the mix; Escape goes back',
    shownOnly: true,
  },
  { id: 'cellCopy', keys: ['C'], where: 'mixes', text: 'Next copy for this cell', shownOnly: true },
  {
    id: 'cellPath',
    keys: ['P'],
    where: 'mixes',
    text: 'Path of the source; Shift+P of the mix',
    shownOnly: true,
  },
  {
    id: 'cellClear',
    keys: ['Delete'],
    where: 'mixes',
    text: 'Take the chosen cells out of the mix',
    shownOnly: true,
  },
  {
    id: 'cellBack',
    keys: ['Backspace'],
    where: 'mixes',
    text: 'Put the chosen cells back to the proposal',
    shownOnly: true,
  },
  {
    id: 'cellPaste',
    keys: ['Ctrl+C', 'Ctrl+X', 'Ctrl+V'],
    where: 'mixes',
    text: 'Copy or cut to a spreadsheet, paste from one',
    shownOnly: true,
  },
  {
    id: 'cellFilter',
    keys: ['/'],
    where: 'mixes',
    text: 'Filter the table; Escape shows all of it again',
    shownOnly: true,
  },
  {
    id: 'cellFollow',
    keys: ['W'],
    where: 'mixes',
    text: 'Only what the chosen mix hears; it follows who is chosen',
    shownOnly: true,
  },
  {
    id: 'cellHide',
    keys: ['H', 'Shift+H', 'U'],
    where: 'mixes',
    text: 'Hide the chosen sources, the chosen mixes; show all again',
    shownOnly: true,
  },
  { id: 'cellFindings', keys: ['F'], where: 'mixes', text: 'Findings of the act', shownOnly: true },
  {
    id: 'dayMove',
    keys: ['Arrows', 'Home', 'End'],
    where: 'day',
    text: 'Move in the patch; with Ctrl to the edge',
    shownOnly: true,
  },
  {
    id: 'dayLock',
    keys: ['L'],
    where: 'day',
    text: 'Lock the line to its socket, or open the lock',
    shownOnly: true,
  },
  { id: 'dayOpen', keys: ['Enter'], where: 'day', text: 'The source in the mixes', shownOnly: true },
  { id: 'dayPlan', keys: ['P'], where: 'day', text: 'Plan the day', shownOnly: true },
  { id: 'dayTake', keys: ['T'], where: 'day', text: 'Take the plan that was found', shownOnly: true },
  {
    id: 'dayLeave',
    keys: ['Escape'],
    where: 'day',
    text: 'Stop planning, or leave the plan that was found',
    shownOnly: true,
  },
  {
    id: 'dayOrder',
    keys: ['Alt+Up', 'Alt+Down'],
    where: 'day',
    text: 'Move the act in the running order',
    shownOnly: true,
  },
  { id: 'tick', keys: ['Space'], where: 'changeover', text: 'Tick the task', shownOnly: true },
  {
    id: 'tickMove',
    keys: ['Arrows'],
    where: 'changeover',
    text: 'Task before or after, list beside',
    shownOnly: true,
  },
  { id: 'clock', keys: ['B'], where: 'changeover', text: 'Start the clock', shownOnly: true },
  { id: 'byPlace', keys: ['V'], where: 'changeover', text: 'Tasks by person or by place', shownOnly: true },
  { id: 'answer', keys: ['1–9'], where: 'advance', text: 'Answer the current question', shownOnly: true },
  {
    id: 'remember word',
    keys: ['W'],
    where: 'advance',
    text: 'Remember the word of the current question: not, for this band, for all',
    shownOnly: true,
  },
  {
    id: 'answerMove',
    keys: ['Up', 'Down'],
    where: 'advance',
    text: 'Question before or after',
    shownOnly: true,
  },
  {
    id: 'tableEdit',
    keys: ['Enter', 'F2'],
    where: 'advance',
    text: 'Edit the cell; Escape leaves it as it was',
    shownOnly: true,
  },
  {
    id: 'showNext',
    keys: ['N'],
    where: 'show',
    text: 'Next act: the first press says what will happen, the second does it; Escape leaves it',
    shownOnly: true,
  },
  { id: 'showBegin', keys: ['B'], where: 'show', text: 'The set begins', shownOnly: true },
  { id: 'showCheck', keys: ['L'], where: 'show', text: 'Line check, and back', shownOnly: true },
  { id: 'showNote', keys: ['T'], where: 'show', text: 'Write a note', shownOnly: true },
  {
    id: 'showMove',
    keys: ['Arrows'],
    where: 'show',
    text: 'Performer before or after; Right goes into what they hear, Left back',
    shownOnly: true,
  },
  {
    id: 'showLevel',
    keys: ['+', '−'],
    where: 'show',
    text: 'Keep that the chosen source was made 1 dB louder or quieter',
    shownOnly: true,
  },
  { id: 'showType', keys: ['Enter'], where: 'show', text: 'Type the level of the source', shownOnly: true },
  { id: 'showPlanned', keys: ['Backspace'], where: 'show', text: 'Level back as planned', shownOnly: true },
  {
    id: 'checkResult',
    keys: ['1', '2', '3', '4', '5'],
    where: 'show',
    text: 'In the line check: ok, silent, noisy, swapped, later',
    shownOnly: true,
  },
  {
    id: 'checkMove',
    keys: ['Left', 'Right'],
    where: 'show',
    text: 'In the line check: line before or after',
    shownOnly: true,
  },
  {
    id: 'checkOrder',
    keys: ['O'],
    where: 'show',
    text: 'In the line check: by box and socket, or by channel',
    shownOnly: true,
  },
  {
    id: 'checkSwap',
    keys: ['S'],
    where: 'show',
    text: 'In the line check: swap the sockets of swapped lines in the plan',
    shownOnly: true,
  },
  { id: 'recallFind', keys: ['/'], where: 'recall', text: 'Search the archive', shownOnly: true },
  {
    id: 'recallOpen',
    keys: ['Up', 'Down', 'Enter'],
    where: 'recall',
    text: 'Choose what was found, open its act',
    shownOnly: true,
  },
  { id: 'recallDiffer', keys: ['D'], where: 'recall', text: 'Only what differs, or all', shownOnly: true },
  { id: 'recallBring', keys: ['B'], where: 'recall', text: 'Bring the act into a day', shownOnly: true },
  {
    id: 'paperSheet',
    keys: ['Up', 'Down'],
    where: 'paper',
    text: 'Sheet before or after, in the list',
    shownOnly: true,
  },
  { id: 'paperPrint', keys: ['P'], where: 'paper', text: 'Print', shownOnly: true },
  {
    id: 'paperSave',
    keys: ['S', 'X', 'C'],
    where: 'paper',
    text: 'Save as PDF, as XLSX, as CSV',
    shownOnly: true,
  },
  { id: 'paperStop', keys: ['Escape'], where: 'paper', text: 'Stop making the sheets', shownOnly: true },
  {
    id: 'rigEdit',
    keys: ['Enter', 'F2'],
    where: 'rig',
    text: 'Edit the cell; Escape leaves it as it was',
    shownOnly: true,
  },
] as const satisfies readonly Binding[];

export type BindingId = (typeof table)[number]['id'];
export const bindings: readonly Binding[] = [...table, ...shown];
export const handledBindings: readonly (Binding & { id: BindingId })[] = table;
