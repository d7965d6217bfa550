import { count } from './count.ts';

/** Back-ups, kept states and files. A "copy" alone is a channel of a source in this program: here it is a back-up. */
export const englishKeep = {
  open: 'Back-ups and files',
  openTitle: 'Back-ups, kept states, files to send and bring in (Ctrl+S)',
  title: 'Back-ups, kept states and files',
  savedAlready: 'Every edit is in the file of the show as soon as the line below says “Saved”.',
  parts: { copies: 'Back-ups', states: 'Kept states', files: 'Files' },
  working: 'Working …',
  when: (day: string, time: string) => `${day}, ${time}`,
  justNow: 'just made',
  age: (age: string) => `${age} old`,
  clockAhead: 'made later than it is here: the clocks differ',
  rows: (n: number) => count(n, 'row'),
  more: (n: number) => `and ${n} more`,
  list: (names: readonly string[]) => (names.length === 0 ? 'none' : names.join(', ')),

  copies: {
    intro:
      'Made every five minutes in which something changed, before each step that replaces much, and by hand.',
    make: 'Make a back-up now',
    none: 'There is no back-up yet.',
    list: 'Back-ups, the newest first',
    reason: {
      'by itself': 'by itself',
      'by hand': 'by hand',
      'before a step': 'before a step',
      'before an upgrade': 'before an upgrade',
    },
    place: {
      'beside the show': 'beside the show',
      'second folder': 'second folder',
      rescued: 'rescued from a full disk',
    },
    of: (machine: string) => `of the machine “${machine}”`,
    kilobytes: (n: number) => `${n} kB`,
    second: 'Second folder',
    noSecond: 'None: if this machine is lost, the back-ups are lost with it. Put in a stick and choose it.',
    isSecond: (folder: string) => `Back-ups also go to “${folder}”.`,
    isNamed: 'It was named when the program was started, so it cannot be changed here.',
    noDrive:
      'No stick, disk or share is in. Put one in and look again. Any other folder is named when the program is started (FOLDBOOK_COPIES) or by: npm run copies -- second FOLDER.',
    chooseDialog: 'Choose a folder …',
    chooseDrive: (name: string, where: string) => `Use ${name} (${where})`,
    noSecondAnyMore: 'Stop using it',
    lookAgain: 'Look again',
    takeOver: (machine: string, age: string) =>
      `The newest back-up is of the machine “${machine}”, ${age}. To go on here in its place, look at it and restore it; what was done there since is not in it.`,
    takeOverLook: 'Look at it',
    choose: 'Choose a back-up to see what it holds.',
    previewTitle: (when: string) => `Back-up of ${when}`,
    days: 'Days',
    acts: 'Acts',
    holds: 'Holds',
    counts: (sources: number, mixes: number) =>
      `${count(sources, 'source')}, ${count(mixes, 'mix', 'mixes')}`,
    same: 'The show is the same now.',
    wouldChange: (n: number) => `Restoring it would change ${count(n, 'row')} of the show:`,
    restore: 'Restore this back-up …',
    sure: (n: number, when: string) =>
      `The show becomes what it was on ${when}: ${n === 1 ? '1 row changes' : `${n} rows change`}. The show as it is now is backed up first, and one undo takes the step back.`,
    yes: 'Yes, restore',
    no: 'No, leave the show as it is',
    done: 'Restored. One undo takes it back.',
    made: 'The back-up is made.',
  },

  difference: {
    would: { added: 'comes', removed: 'goes', changed: 'changes' },
    did: { added: 'new', removed: 'gone', changed: 'changed' },
    value: (field: string, value: string) => `${field}: ${value}`,
    field: (field: string, before: string, after: string) => `${field}: ${before} → ${after}`,
  },

  states: {
    of: 'Of',
    act: (name: string) => `the act ${name}`,
    day: (name: string) => `the day ${name}`,
    nothing: 'There is no act and no day yet.',
    name: 'Name of the state',
    nameHint: 'After the sound check',
    keep: 'Keep how it is now',
    kept: (name: string) => `Kept as “${name}”.`,
    none: 'No state is kept yet. Keep one before you try something, and after it went well.',
    list: 'Kept states, the newest first',
    on: (machine: string) => `on ${machine}`,
    choose: 'Choose a state to see what differs.',
    compareTitle: (name: string) => `What changed since “${name}”`,
    compareWith: 'Compared with',
    now: 'how it is now',
    same: 'Nothing differs.',
    differs: (n: number) => (n === 1 ? '1 row differs:' : `${n} rows differ:`),
    written: 'Who wrote it, and when',
    writtenUnknown: 'Who wrote it is not known in this file.',
    did: { done: '', undone: '(undone)', 'done again': '(done again)' },
    bringBack: (name: string) => `Bring back “${name}” …`,
    sure: (name: string, what: string, n: number) =>
      `${what} becomes what it was in “${name}”: ${n === 1 ? '1 row changes' : `${n} rows change`}. The show is backed up first, and one undo takes the step back.`,
    yes: 'Yes, bring it back',
    no: 'No, leave it',
    done: (name: string, leftOut: number) =>
      `“${name}” is back. One undo takes it away again.${leftOutSentence(leftOut)}`,
  },

  files: {
    save: 'Save as a file',
    saveShow: 'Save the whole show as a file',
    saveAct: 'Save this act as a file',
    which: 'Act',
    saveNote:
      'The act goes with its sources, mixes and wishes, for a colleague at another desk; sockets and outputs of this house stay here.',
    saved: (name: string) => `Given to be saved: ${name}`,
    bring: 'Bring in a file',
    choose: 'Choose a file of a show or an act (JSON)',
    drop: 'Or drop it here. Nothing comes in before you have seen what it would do.',
    tooLarge: (name: string) =>
      `${name} is larger than any show. Choose a file that this program saved as a show or an act.`,
    cannotRead: (name: string) => `${name} could not be read. Is its stick still in?`,
    lookTitle: (name: string) => `What ${name} would do`,
    holdsShow: 'It holds a whole show.',
    holdsAct: 'It holds one act.',
    alreadyThere: (names: string) =>
      `Already in this show: ${names}. Beside them it would be there a second time; nothing is overwritten.`,
    onDay: 'It plays on',
    noDay: 'There is no day for it. Add a day first.',
    beside: 'Bring it in beside what is here',
    besideWould: (rows: number, leftOut: number) =>
      `${rows === 1 ? '1 row comes' : `${rows} rows come`} in and nothing that is here changes.${leftOutSentence(leftOut)}`,
    replace: 'Put it in the place of the show …',
    replaceWould: (n: number) => `Putting it in the place of the show would change ${count(n, 'row')}:`,
    replaceSame: 'The show holds the same already.',
    sure: (name: string, n: number) =>
      `The show becomes what ${name} holds: ${n === 1 ? '1 row changes' : `${n} rows change`}. The show is backed up first, and one undo takes the step back.`,
    yes: 'Yes, replace the show',
    no: 'No, leave the show as it is',
    other: 'Another file',
    done: (name: string, leftOut: number) =>
      `${name} is in the show. One undo takes it out again.${leftOutSentence(leftOut)}`,
  },

  unsaved: {
    short: 'Not in its file',
    save: 'Save the show elsewhere',
    saved: 'Given to be saved. Look that the file is there.',
  },

  forward: {
    title: 'Here is Foldbook',
    said: 'The program was started once more: this is its window. One show needs one window.',
  },
};

function leftOutSentence(leftOut: number): string {
  if (leftOut === 0) return '';
  return ` ${count(leftOut, 'row')} ${leftOut === 1 ? 'belongs' : 'belong'} to what this show has not, such as a socket of another house, and ${leftOut === 1 ? 'is' : 'are'} left out.`;
}
