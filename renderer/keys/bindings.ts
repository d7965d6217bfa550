import type { Moment } from '../state/view-store.ts';
import type { words } from '../wording/words.ts';

/**
 * Every key of the program; what each does is said in `wording/english-keys.ts`. `where` says when it counts:
 * everywhere, or in one moment. A key without Ctrl or Alt does nothing while a text is being typed. Ctrl stands for
 * Cmd too. Nothing that destroys is on a single key without undo.
 */
export type Binding = {
  id: keyof typeof words.keyTexts;
  keys: readonly string[];
  where: 'everywhere' | Moment;
  /** Shown on the card only: the widget that has the focus handles it. */
  shownOnly?: true;
};

const table = [
  { id: 'find', keys: ['Ctrl+K'], where: 'everywhere' },
  { id: 'keys', keys: ['?', 'F1'], where: 'everywhere' },
  { id: 'undo', keys: ['Ctrl+Z'], where: 'everywhere' },
  { id: 'redo', keys: ['Ctrl+Shift+Z', 'Ctrl+Y'], where: 'everywhere' },
  { id: 'keep', keys: ['Ctrl+S'], where: 'everywhere' },
  { id: 'theme', keys: ['F8'], where: 'everywhere' },
  { id: 'region', keys: ['F6'], where: 'everywhere' },
  { id: 'regionBack', keys: ['Shift+F6'], where: 'everywhere' },
  { id: 'advance', keys: ['Alt+1'], where: 'everywhere' },
  { id: 'mixes', keys: ['Alt+2'], where: 'everywhere' },
  { id: 'stage', keys: ['Alt+3'], where: 'everywhere' },
  { id: 'day', keys: ['Alt+4'], where: 'everywhere' },
  { id: 'changeover', keys: ['Alt+5'], where: 'everywhere' },
  { id: 'show', keys: ['Alt+6'], where: 'everywhere' },
  { id: 'paper', keys: ['Alt+7'], where: 'everywhere' },
  { id: 'rig', keys: ['Alt+8'], where: 'everywhere' },
  { id: 'recall', keys: ['Alt+9'], where: 'everywhere' },
  { id: 'actBefore', keys: ['Alt+PageUp'], where: 'everywhere' },
  { id: 'actAfter', keys: ['Alt+PageDown'], where: 'everywhere' },
] as const satisfies readonly Binding[];

const shown = [
  {
    id: 'cellMove',
    keys: ['Arrows', 'Home', 'End'],
    where: 'mixes',
    shownOnly: true,
  },
  { id: 'cellEdit', keys: ['F2'], where: 'mixes', shownOnly: true },
  { id: 'cellAll', keys: ['Ctrl+A'], where: 'mixes', shownOnly: true },
  {
    id: 'cellType',
    keys: ['0–9', '−', 'a word'],
    where: 'mixes',
    shownOnly: true,
  },
  {
    id: 'cellNudge',
    keys: ['Alt+Up', 'Alt+Down'],
    where: 'mixes',
    shownOnly: true,
  },
  {
    id: 'cellFill',
    keys: ['Ctrl+D', 'Ctrl+R'],
    where: 'mixes',
    shownOnly: true,
  },
  {
    id: 'cellDetails',
    keys: ['Enter'],
    where: 'mixes',
    shownOnly: true,
  },
  { id: 'cellCopy', keys: ['C'], where: 'mixes', shownOnly: true },
  {
    id: 'cellPath',
    keys: ['P'],
    where: 'mixes',
    shownOnly: true,
  },
  {
    id: 'cellClear',
    keys: ['Delete'],
    where: 'mixes',
    shownOnly: true,
  },
  {
    id: 'cellBack',
    keys: ['Backspace'],
    where: 'mixes',
    shownOnly: true,
  },
  {
    id: 'cellPaste',
    keys: ['Ctrl+C', 'Ctrl+X', 'Ctrl+V'],
    where: 'mixes',
    shownOnly: true,
  },
  {
    id: 'cellFilter',
    keys: ['/'],
    where: 'mixes',
    shownOnly: true,
  },
  {
    id: 'cellFollow',
    keys: ['W'],
    where: 'mixes',
    shownOnly: true,
  },
  {
    id: 'cellHide',
    keys: ['H', 'Shift+H', 'U'],
    where: 'mixes',
    shownOnly: true,
  },
  { id: 'cellFindings', keys: ['F'], where: 'mixes', shownOnly: true },
  {
    id: 'stageWalk',
    keys: ['Arrows'],
    where: 'stage',
    shownOnly: true,
  },
  {
    id: 'stageChoose',
    keys: ['Space', 'Enter', 'Ctrl+A'],
    where: 'stage',
    shownOnly: true,
  },
  {
    id: 'stageTurn',
    keys: ['R', 'Shift+R'],
    where: 'stage',
    shownOnly: true,
  },
  { id: 'stageMirror', keys: ['M'], where: 'stage', shownOnly: true },
  {
    id: 'stageLeave',
    keys: ['Escape', 'Delete'],
    where: 'stage',
    shownOnly: true,
  },
  { id: 'stageView', keys: ['V'], where: 'stage', shownOnly: true },
  { id: 'stageSnap', keys: ['G'], where: 'stage', shownOnly: true },
  {
    id: 'stageZoom',
    keys: ['+', '−', '0'],
    where: 'stage',
    shownOnly: true,
  },
  { id: 'stagePaper', keys: ['P'], where: 'stage', shownOnly: true },
  {
    id: 'dayMove',
    keys: ['Arrows', 'Home', 'End'],
    where: 'day',
    shownOnly: true,
  },
  {
    id: 'dayLock',
    keys: ['L'],
    where: 'day',
    shownOnly: true,
  },
  { id: 'dayOpen', keys: ['Enter'], where: 'day', shownOnly: true },
  { id: 'dayPlan', keys: ['P'], where: 'day', shownOnly: true },
  { id: 'dayTake', keys: ['T'], where: 'day', shownOnly: true },
  {
    id: 'dayLeave',
    keys: ['Escape'],
    where: 'day',
    shownOnly: true,
  },
  {
    id: 'dayOrder',
    keys: ['Alt+Up', 'Alt+Down'],
    where: 'day',
    shownOnly: true,
  },
  { id: 'tick', keys: ['Space'], where: 'changeover', shownOnly: true },
  {
    id: 'tickMove',
    keys: ['Arrows'],
    where: 'changeover',
    shownOnly: true,
  },
  { id: 'clock', keys: ['B'], where: 'changeover', shownOnly: true },
  { id: 'byPlace', keys: ['V'], where: 'changeover', shownOnly: true },
  { id: 'answer', keys: ['1–9'], where: 'advance', shownOnly: true },
  {
    id: 'remember word',
    keys: ['W'],
    where: 'advance',
    shownOnly: true,
  },
  {
    id: 'answerMove',
    keys: ['Up', 'Down'],
    where: 'advance',
    shownOnly: true,
  },
  {
    id: 'tableEdit',
    keys: ['Enter', 'F2'],
    where: 'advance',
    shownOnly: true,
  },
  {
    id: 'showNext',
    keys: ['N'],
    where: 'show',
    shownOnly: true,
  },
  { id: 'showBegin', keys: ['B'], where: 'show', shownOnly: true },
  { id: 'showCheck', keys: ['L'], where: 'show', shownOnly: true },
  { id: 'showNote', keys: ['T'], where: 'show', shownOnly: true },
  {
    id: 'showArchive',
    keys: ['A'],
    where: 'show',
    shownOnly: true,
  },
  {
    id: 'showMove',
    keys: ['Arrows'],
    where: 'show',
    shownOnly: true,
  },
  {
    id: 'showLevel',
    keys: ['+', '−'],
    where: 'show',
    shownOnly: true,
  },
  { id: 'showType', keys: ['Enter'], where: 'show', shownOnly: true },
  { id: 'showPlanned', keys: ['Backspace'], where: 'show', shownOnly: true },
  {
    id: 'checkResult',
    keys: ['1', '2', '3', '4', '5'],
    where: 'show',
    shownOnly: true,
  },
  {
    id: 'checkMove',
    keys: ['Left', 'Right'],
    where: 'show',
    shownOnly: true,
  },
  {
    id: 'checkOrder',
    keys: ['O'],
    where: 'show',
    shownOnly: true,
  },
  {
    id: 'checkSwap',
    keys: ['S'],
    where: 'show',
    shownOnly: true,
  },
  { id: 'recallFind', keys: ['/'], where: 'recall', shownOnly: true },
  {
    id: 'recallOpen',
    keys: ['Up', 'Down', 'Enter'],
    where: 'recall',
    shownOnly: true,
  },
  { id: 'recallDiffer', keys: ['D'], where: 'recall', shownOnly: true },
  { id: 'recallBring', keys: ['B'], where: 'recall', shownOnly: true },
  {
    id: 'paperSheet',
    keys: ['Up', 'Down'],
    where: 'paper',
    shownOnly: true,
  },
  { id: 'paperPrint', keys: ['P'], where: 'paper', shownOnly: true },
  {
    id: 'paperSave',
    keys: ['S', 'X', 'C'],
    where: 'paper',
    shownOnly: true,
  },
  { id: 'paperStop', keys: ['Escape'], where: 'paper', shownOnly: true },
  {
    id: 'rigEdit',
    keys: ['Enter', 'F2'],
    where: 'rig',
    shownOnly: true,
  },
] as const satisfies readonly Binding[];

export type BindingId = (typeof table)[number]['id'];
export const bindings: readonly Binding[] = [...table, ...shown];
export const handledBindings: readonly (Binding & { id: BindingId })[] = table;
