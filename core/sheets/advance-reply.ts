import { sheetOfAct } from './act-heading.ts';
import type { ActView, LineView, MixView } from './act-view.ts';
import { spanText } from './cell-text.ts';
import { micOfferTexts } from './mic-offers.ts';
import { numbersText } from './plot-clusters.ts';
import type { Part, Sheet } from './sheet.ts';
import { tableOf } from './table.ts';
import { deviceText, listenersText, pickUpText } from './words.ts';

/** The letter to the band: what the house understood and offers, what they bring, and what is still open. */
export function advanceReply(view: ActView): Sheet {
  const mics = micOfferTexts(view);
  const parts: Part[] = [
    { is: 'text', heading: null, paragraphs: replyGreeting(view) },
    { is: 'text', heading: 'What you bring', paragraphs: whatTheyBring(view) },
    ...(mics.length > 0 ? [{ is: 'text' as const, heading: micHeading, paragraphs: mics }] : []),
    mixTable(view),
    questionTable(view),
    {
      is: 'text',
      heading: null,
      paragraphs: [
        'Your input list, as we read it, is on the sheet “Input list for the band”. Please strike out what is wrong and send it back.',
      ],
    },
  ];
  return sheetOfAct('advance reply', 'Reply to the band', view, { parts });
}

export const micHeading = 'Microphones and DI boxes';

/** How the reply begins: whose rider, when they play, how many lines and mixes. */
export function replyGreeting({ sheet, lines, mixes }: ActView): string[] {
  const { act, rig, day } = sheet;
  const when = [day.name, day.date].filter((it) => it !== '').join(', ');
  const set = spanText(act.startMinute, act.endMinute);
  const check = spanText(act.soundCheckStartMinute, act.soundCheckEndMinute);
  const rider = sheet.riders.findLast((it) => !it.replaced);
  return [
    `Hello ${act.name},`,
    rider
      ? `thank you for your rider (“${rider.fileName}”). This is how we understood it for ${when}, on ${rig.name}.`
      : `this is what we have planned for you for ${when}, on ${rig.name}.`,
    [
      set === '' ? 'We have no time of your set yet.' : `Your set: ${set}.`,
      check === ''
        ? 'There is no sound check; every line is checked in the changeover.'
        : `Your sound check: ${check}.`,
    ].join(' '),
    `We planned ${lines.length} ${lines.length === 1 ? 'line' : 'lines'} and ${mixes.length} ${mixes.length === 1 ? 'mix' : 'mixes'} on the house desk${elsewhere(mixes)}.`,
  ];
}

function elsewhere(mixes: readonly MixView[]): string {
  const count = mixes.filter(({ mix }) => mix.mixedAt === 'elsewhere').length;
  return count === 0 ? '' : `, of which ${count} ${count === 1 ? 'is' : 'are'} mixed on your own desk`;
}

/** What the band brings by its rider, and what nobody was named for. */
export function whatTheyBring({ lines, mixes, sheet }: ActView): string[] {
  const own = lines.filter(({ source }) => source.broughtBy === 'band');
  const devices = mixes.filter(({ mix }) => mix.ownDevice === true);
  const nobody = lines.filter(({ source }) => source.pickUp !== null && source.broughtBy === null);
  const told = [
    own.length === 0 ? '' : `By your rider you bring: ${own.map(lineText).join('; ')}.`,
    devices.length === 0
      ? ''
      : `Your own listening devices: ${devices.map((it) => `${it.mix.name} (${deviceText(it)})`).join('; ')}.`,
    nobody.length === 0
      ? ''
      : `We take it that the house brings the pick-ups of lines ${numbersText(nobody.map(({ line }) => line))}, where your rider does not say.`,
    splitText(sheet.act.splitBy),
  ].filter((it) => it !== '');
  return told.length === 0 ? ['Nothing, as far as your rider says.'] : told;
}

function lineText(line: LineView): string {
  const what = pickUpText(line);
  return `line ${line.line} ${line.source.name}${what === '' ? '' : ` (${what})`}`;
}

function splitText(splitBy: 'band' | 'house' | null): string {
  if (splitBy === null) return '';
  return splitBy === 'band'
    ? 'You bring the splitter for your own desk.'
    : 'The house brings the splitter for your own desk.';
}

function mixTable({ mixes }: ActView): Part {
  return tableOf(
    [
      { title: 'Mix', kind: 'number', of: ({ number }) => number },
      { title: 'For', grow: 1, of: (it) => listenersText(it) || it.mix.name },
      { title: 'You hear it through', of: deviceText },
      {
        title: 'Brought by',
        of: ({ mix }) => (mix.ownDevice === null ? 'please say' : mix.ownDevice ? 'you' : 'us'),
      },
    ],
    mixes,
    { heading: 'What you hear', key: ({ mix }) => mix.id, empty: 'No mixes are planned yet.' },
  );
}

function questionTable({ questions }: ActView): Part {
  return tableOf(
    [
      { title: 'No.', kind: 'number', of: ({ at }) => at },
      { title: 'Please tell us', grow: 2, of: ({ question }) => question.ask },
      { title: 'We take it to be', grow: 1, of: ({ question }) => question.options[0]?.label ?? '' },
      { title: 'Your answer', kind: 'write', grow: 1, of: () => null },
    ],
    questions.map((question, at) => ({ question, at: at + 1 })),
    { heading: 'Open questions', key: ({ question }) => question.key, empty: 'We have no open question.' },
  );
}
