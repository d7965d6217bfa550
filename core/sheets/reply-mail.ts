import type { ActView, MixView } from './act-view.ts';
import { micHeading, replyGreeting, whatTheyBring } from './advance-reply.ts';
import { micOfferTexts } from './mic-offers.ts';
import { deviceText, listenersText } from './words.ts';

export type Mail = { subject: string; body: string };

/**
 * The reply to the band as a text to send: the same as the sheet "Reply to the band", and beside every mix what the
 * house offers against what was asked. Lines end with a line feed; paragraphs are parted by an empty line.
 */
export function replyMail(view: ActView): Mail {
  const { act, day } = view.sheet;
  const when = [day.name, day.date].filter((it) => it !== '').join(', ');
  const mics = micOfferTexts(view);
  const sections = [
    ...replyGreeting(view).map((it) => [it]),
    view.mixes.length === 0
      ? ['No mixes are planned yet.']
      : [countText(view.mixes), ...view.mixes.map((mix) => `${mix.number}. ${mixText(mix)}`)],
    ['What you bring', ...whatTheyBring(view)],
    ...(mics.length > 0 ? [[micHeading, ...mics]] : []),
    questionLines(view),
  ];
  return {
    subject: `Your monitors: ${act.name}, ${when}`,
    body: sections.map((lines) => lines.join('\n')).join('\n\n'),
  };
}

const isHeardInEar = ({ mix }: MixView) => mix.deviceKind === 'in-ear';

/** How many mixes and packs were asked for, and how many the house gives. */
function countText(mixes: readonly MixView[]): string {
  const onHouseDesk = mixes.filter(({ mix }) => mix.mixedAt === 'house desk');
  const given = onHouseDesk.filter(({ buses }) => buses !== '');
  const packs = mixes.filter(isHeardInEar);
  const packsOf = (own: boolean) =>
    packs
      .filter(({ mix }) => (mix.ownDevice === true) === own)
      .reduce((sum, { mix }) => sum + mix.deviceCount, 0);
  const asked = `You asked for ${mixes.length === 1 ? 'one mix' : `${mixes.length} mixes`}, and we give you ${given.length} on the house desk.`;
  if (packs.length === 0) return asked;
  const house = packs
    .filter(({ mix }) => mix.ownDevice !== true)
    .reduce((sum, { devices }) => sum + devices.length, 0);
  return `${asked} In-ear packs: ${packsOf(false)} asked of us, ${house} of ours are put aside for you, ${packsOf(true)} of your own.`;
}

/** One mix: for whom, what was asked, and what is offered where that is something else or nothing. */
function mixText(view: MixView): string {
  return `${listenersText(view) || view.mix.name}: ${deviceText(view)}. ${offerText(view)}`;
}

function offerText({ mix, planned, devices, buses }: MixView): string {
  if (mix.mixedAt === 'elsewhere') return 'It is mixed on your own desk.';
  if (mix.deviceKind === null) return 'Please tell us what you hear it through.';
  if (buses === '') return 'We have no mix left for it on our desk yet.';
  const format =
    mix.format === 'stereo' && planned?.format === 'mono' ? ' You asked for stereo, we can offer mono.' : '';
  if (mix.ownDevice === true) return `You bring the device.${format}`;
  if (devices.length === 0) return `We have nothing free for it yet.${format}`;
  const others = devices.filter(({ kind }) => kind !== mix.deviceKind);
  const instead =
    others.length === 0
      ? ''
      : ` In place of what you asked for we offer: ${others.map(({ kind }) => kind).join(', ')}.`;
  const short =
    devices.length < mix.deviceCount
      ? ` You asked for ${mix.deviceCount}, we can offer ${devices.length}.`
      : '';
  return `From us: ${devices.map(({ name }) => name).join(', ')}.${instead}${short}${format}`;
}

function questionLines({ questions }: ActView): string[] {
  if (questions.length === 0) return ['We have no open question.'];
  return [
    'Please tell us',
    ...questions.map(({ ask, options }, at) => {
      const guess = options[0]?.label ?? '';
      return `${at + 1}. ${ask}${guess === '' ? '' : ` (we take it to be: ${guess})`}`;
    }),
  ];
}
