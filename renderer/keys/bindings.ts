import { type Moment, moments } from '../state/view-store.ts';
import type { words } from '../wording/words.ts';

/**
 * Every key of the program; what each does is said in `wording/english-keys.ts`. A key without Ctrl or Alt does
 * nothing while a text is being typed. Ctrl stands for Cmd too. Nothing that destroys is on a single key without undo.
 */
type Written = readonly [id: keyof typeof words.keyTexts, ...keys: string[]];

/** These count everywhere, and the frame runs them. */
const everywhere = [
  ['find', 'Ctrl+K'],
  ['keys', '?', 'F1'],
  ['undo', 'Ctrl+Z'],
  ['redo', 'Ctrl+Shift+Z', 'Ctrl+Y'],
  ['keep', 'Ctrl+S'],
  ['theme', 'F8'],
  ['region', 'F6'],
  ['regionBack', 'Shift+F6'],
  ['advance', 'Alt+1'],
  ['mixes', 'Alt+2'],
  ['stage', 'Alt+3'],
  ['day', 'Alt+4'],
  ['changeover', 'Alt+5'],
  ['show', 'Alt+6'],
  ['paper', 'Alt+7'],
  ['rig', 'Alt+8'],
  ['recall', 'Alt+9'],
  ['actBefore', 'Alt+PageUp'],
  ['actAfter', 'Alt+PageDown'],
] as const satisfies readonly Written[];

/** These count in one moment and are here for the card of keys: the widget that has the focus handles them. */
const ofMoments: Record<Moment, readonly Written[]> = {
  advance: [
    ['answer', '1–9'],
    ['remember word', 'W'],
    ['answerMove', 'Up', 'Down'],
    ['tableEdit', 'Enter', 'F2'],
  ],
  mixes: [
    ['cellMove', 'Arrows', 'Home', 'End'],
    ['cellEdit', 'F2'],
    ['cellAll', 'Ctrl+A'],
    ['cellType', '0–9', '−', 'a word'],
    ['cellNudge', 'Alt+Up', 'Alt+Down'],
    ['cellFill', 'Ctrl+D', 'Ctrl+R'],
    ['cellDetails', 'Enter'],
    ['cellCopy', 'C'],
    ['cellPath', 'P'],
    ['cellClear', 'Delete'],
    ['cellBack', 'Backspace'],
    ['cellPaste', 'Ctrl+C', 'Ctrl+X', 'Ctrl+V'],
    ['cellFilter', '/'],
    ['cellFollow', 'W'],
    ['cellHide', 'H', 'Shift+H', 'U'],
    ['cellFindings', 'F'],
  ],
  stage: [
    ['stageWalk', 'Arrows'],
    ['stageChoose', 'Space', 'Enter', 'Ctrl+A'],
    ['stageTurn', 'R', 'Shift+R'],
    ['stageMirror', 'M'],
    ['stageLeave', 'Escape', 'Delete'],
    ['stageView', 'V'],
    ['stageSnap', 'G'],
    ['stageZoom', '+', '−', '0'],
    ['stagePaper', 'P'],
  ],
  day: [
    ['dayMove', 'Arrows', 'Home', 'End'],
    ['dayLock', 'L'],
    ['dayOpen', 'Enter'],
    ['dayPlan', 'P'],
    ['dayTake', 'T'],
    ['dayLeave', 'Escape'],
    ['dayOrder', 'Alt+Up', 'Alt+Down'],
  ],
  changeover: [
    ['tick', 'Space'],
    ['tickMove', 'Arrows'],
    ['clock', 'B'],
    ['byPlace', 'V'],
  ],
  show: [
    ['showNext', 'N'],
    ['showBegin', 'B'],
    ['showCheck', 'L'],
    ['showNote', 'T'],
    ['showArchive', 'A'],
    ['showMove', 'Arrows'],
    ['showLevel', '+', '−'],
    ['showType', 'Enter'],
    ['showPlanned', 'Backspace'],
    ['checkResult', '1', '2', '3', '4', '5'],
    ['checkMove', 'Left', 'Right'],
    ['checkOrder', 'O'],
    ['checkSwap', 'S'],
  ],
  paper: [
    ['paperSheet', 'Up', 'Down'],
    ['paperPrint', 'P'],
    ['paperSave', 'S', 'X', 'C'],
    ['paperStop', 'Escape'],
  ],
  rig: [['rigEdit', 'Enter', 'F2']],
  recall: [
    ['recallFind', '/'],
    ['recallOpen', 'Up', 'Down', 'Enter'],
    ['recallDiffer', 'D'],
    ['recallBring', 'B'],
  ],
};

export type BindingId = (typeof everywhere)[number][0];
export type Binding<Id = Written[0]> = { id: Id; keys: readonly string[]; where: 'everywhere' | Moment };

export const handledBindings: readonly Binding<BindingId>[] = everywhere.map(([id, ...keys]) => ({
  id,
  keys,
  where: 'everywhere',
}));

export const bindings: readonly Binding[] = [
  ...handledBindings,
  ...moments.flatMap((where) => ofMoments[where].map(([id, ...keys]) => ({ id, keys, where }))),
];
