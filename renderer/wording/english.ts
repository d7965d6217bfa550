import type { ActState, DeviceKind, Purpose, Severity } from '../../core/show/words.ts';
import { count } from './count.ts';
import { englishAdvance } from './english-advance.ts';
import { englishChangeover } from './english-changeover.ts';
import { englishDay } from './english-day.ts';
import { englishKeep } from './english-keep.ts';
import { englishKeys } from './english-keys.ts';
import { englishMixes, englishPath, englishRestore } from './english-mixes.ts';
import { englishMoments } from './english-moments.ts';
import { englishPaper } from './english-paper.ts';
import { englishRecall } from './english-recall.ts';
import { englishRig } from './english-rig.ts';
import { englishShow } from './english-show.ts';
import { englishStage } from './english-stage.ts';

/** Every text of the interface. Texts of findings, questions and reasons come from core. */
export const english = {
  program: 'Foldbook',

  connection: {
    lost: 'The program does not answer.',
    lostTodo: 'What you typed is kept in this window and sent again as soon as it answers.',
    wrongValue: (detail: string) => `This value cannot be kept (${detail}).`,
    wrongAnswer: (detail: string) =>
      `The program answered something this page does not understand (${detail}).`,
    wrongTodo: 'Nothing else was changed. Try another value.',
    opening: 'Opening the show …',
    noToken: 'This page was opened without its key.',
    noTokenTodo:
      'Open the whole address that the program printed when it started, with everything after the #.',
    failed: 'The show could not be opened.',
    tryAgain: 'Try again',
  },

  saving: {
    saved: 'Saved',
    saving: 'Saving …',
    'not saved': 'Not saved yet: kept here and sent again',
    notKept: (label: string) => `“${label}” was not kept.`,
    dismiss: 'Close this message',
    undo: (what: string | null) => (what === null ? 'Nothing to undo' : `Undo: ${what}`),
    redo: (what: string | null) => (what === null ? 'Nothing to redo' : `Redo: ${what}`),
    undoShort: 'Undo',
    redoShort: 'Redo',
  },

  moments: englishMoments,

  frame: {
    runningOrder: 'Running order',
    moments: 'Moments of the day',
    find: 'Find anything',
    keys: 'Keys',
    toDay: 'Day theme',
    toNight: 'Night theme',
    noAct: 'No act yet',
    newAct: 'New act',
    untimed: 'no time',
    questions: (n: number) => count(n, 'open question'),
    findings: (n: number) => count(n, 'finding'),
    calm: 'nothing open',
    listening: 'Listening line',
    status: 'State of the show',
  },

  actState: {
    advancing: 'advancing',
    ready: 'ready',
    next: 'next',
    'on stage': 'on stage',
    done: 'done',
  } satisfies Record<ActState, string>,

  deviceKind: {
    wedge: 'wedge',
    'side fill': 'side fill',
    'drum fill': 'drum fill',
    'front fill': 'front fill',
    'in-ear': 'in-ears',
  } satisfies Record<DeviceKind, string>,
  deviceUnknown: 'device not said',

  purpose: {
    foh: { letter: 'F', name: 'front of house', short: 'FOH' },
    monitors: { letter: 'M', name: 'monitors', short: 'monitors' },
    wedges: { letter: 'W', name: 'wedges', short: 'wedges' },
    'in-ears': { letter: 'E', name: 'in-ears', short: 'in-ears' },
    parallel: { letter: 'P', name: 'parallel', short: 'parallel' },
  } satisfies Record<Purpose, { letter: string; name: string; short: string }>,

  severity: {
    'must fix': 'must fix',
    'look again': 'look again',
    'know this': 'know this',
  } satisfies Record<Severity, string>,

  listening: {
    nobody: 'Choose a mix or a performer to see where you hear it.',
    noCue: 'no cue output',
    to: (who: string) => `Listening to ${who}`,
    mix: (number: number) => `mix ${number}`,
    on: (cue: string) => `on ${cue}`,
    match: (offset: string) => `${offset} to match`,
    matchUnknown: 'level match unknown',
    delay: (ms: string) => `${ms} ms delay`,
    elsewhere: 'mixed on the band’s own desk',
  },

  guide: {
    title: 'Begin here',
    rig: 'The house rig',
    rigTodo: 'Say what the house has: desk, stage boxes, buses, outputs, wedges and packs.',
    rigDone: 'The house rig is there. It can be changed at any time.',
    rider: 'The first rider',
    riderTodo: 'Bring in the rider of the first act, as the band sent it. It becomes an act with a plan.',
    toRig: 'Set up the rig',
    toRider: 'Bring in a rider',
  },

  restore: englishRestore,

  common: {
    close: 'Close',
    nothing: '–',
    yes: 'yes',
    no: 'no',
    decided: 'decided',
    proposed: 'proposed',
    isProposed: (what: string) => `${what} (proposed)`,
    putBack: 'Put back',
    left: 'left',
    right: 'right',
    channel: (n: number) => `ch ${n}`,
    add: 'Add',
    remove: 'Remove',
    removeRow: (name: string) => `Remove ${name}`,
    removeKey: 'Ctrl+Delete',
    moreRows: (n: number) => `Show more rows (${n} left)`,
    set: (what: string) => `Set ${what}`,
    addOf: (what: string) => `Add ${what}`,
  },

  mixes: englishMixes,

  path: englishPath,

  advance: englishAdvance,

  field: {
    noNumber: (text: string) => `“${text}” is no number. Type digits, for example 12 or 2.5.`,
    missing: 'This cannot be empty.',
    tooSmall: (text: string, least: string) => `${text} is too small: the least is ${least}.`,
    notAbove: (text: string, floor: string) => `${text} is too small: it must be above ${floor}.`,
    tooLarge: (text: string, most: string) => `${text} is too large: the most is ${most}.`,
    tooLong: (most: string) => `This is too long: at most ${most} letters.`,
    notWhole: (text: string) => `${text} is not a whole number.`,
    notOneOf: (text: string, list: string) => `“${text}” is not known here. Type one of: ${list}.`,
    refused: (text: string) => `“${text}” cannot stand here.`,
    empty: 'nothing',
    changed: (head: string, name: string) => `${head} of ${name}`,
    taken: (number: string, what: string) =>
      `${number} is there already. Give this ${what} a number of its own.`,
  },

  day: englishDay,
  changeover: englishChangeover,

  show: englishShow,
  recall: englishRecall,

  stage: englishStage,

  paper: englishPaper,
  keep: englishKeep,

  rig: englishRig,

  find: {
    label: 'Find an act, performer, source, socket, channel, mix or action',
    placeholder: 'Name, socket (A3), channel (12), action …',
    nothing: 'Nothing of that name. Try fewer letters.',
    results: 'Found',
    kinds: {
      act: 'act',
      performer: 'performer',
      source: 'source',
      socket: 'socket',
      channel: 'channel',
      mix: 'mix',
      action: 'action',
      past: 'past',
    },
  },

  keyTexts: englishKeys,

  keyCard: { title: 'Keys', everywhere: 'Everywhere', also: 'Cmd works in place of Ctrl.' },
};
