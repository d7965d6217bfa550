import type { Purpose } from '../show/words.ts';
import type { LineView, MixView } from './act-view.ts';
import { shortLevel } from './cell-text.ts';

/** How the sheets say what the rows of a show hold. One place, so that every sheet says it alike. */

/** A letter for each copy, the same on every sheet; told in words in the key below a table. */
export const letterOfPurpose: Record<Purpose, string> = {
  foh: 'F',
  monitors: 'M',
  wedges: 'W',
  'in-ears': 'E',
  parallel: 'P',
};

export const nameOfPurpose: Record<Purpose, string> = {
  foh: 'FOH',
  monitors: 'Monitors',
  wedges: 'Wedges',
  'in-ears': 'Ears',
  parallel: 'Parallel',
};

export const copyKey =
  'Copies: F the FOH channel, M the copy for monitors, W for wedges, E for in-ears, P parallel (FOH only).';

const pickUpWords = { mic: 'Mic', di: 'DI', line: 'Line', wireless: 'Wireless' } as const;

/** The microphone, DI or line by its model where one is named, and what may stand in for it. */
export function pickUpText(line: LineView): string {
  const asked = pickUpAsked(line);
  const instead = line.source.pickUpInstead
    .split(';')
    .map((it) => it.trim())
    .filter((it) => it !== '');
  if (instead.length === 0) return asked;
  return [asked, ...instead].filter((it) => it !== '').join(' / ');
}

function pickUpAsked({ source }: LineView): string {
  const kind = source.pickUp === null ? '' : pickUpWords[source.pickUp];
  if (source.pickUpModel === '') return kind;
  const said = source.pickUpModel.toLowerCase().includes(kind.toLowerCase());
  return kind === '' || said ? source.pickUpModel : `${kind}: ${source.pickUpModel}`;
}

/** With a space that no line breaks at. */
export const phantomWord = '48\u00a0V';

/** The state of the 48 V switch, and what speaks against it. In words: a mark alone is read wrongly. */
export function phantomText({ patch, source }: LineView): string {
  if (source.phantom === 'harmful') return patch?.phantomOn ? `${phantomWord} ON, HARMFUL` : 'never';
  if (patch?.phantomOn) return phantomWord;
  return source.phantom === 'needed' ? 'needed, is off' : '';
}

/** Every channel of a source with the letter of its copy: "F 1, M 49". */
export function channelsText({ channels }: LineView): string {
  return (Object.entries(channels) as [Purpose, number][])
    .map(([purpose, channel]) => `${letterOfPurpose[purpose]} ${channel}`)
    .join(', ');
}

/** Where it stands; a riser rolls with all that stands on it. */
export function placeText({ source }: LineView): string {
  const riser = source.riser === '' ? '' : `riser ${source.riser}`;
  return [source.place, riser].filter((it) => it !== '').join(', ');
}

const longestRemark = 160;

/** Everything else that people on stage must know of a line. A long note is shortened and says so. */
export function remarks({ source }: LineView): string {
  const shared = source.sharedLine === '' ? '' : `shared line ${source.sharedLine}`;
  const said = [source.optional ? 'optional' : '', shared, source.notes.trim()];
  return shortened(said.filter((it) => it !== '').join('; '));
}

function shortened(text: string): string {
  const single = text.replace(/\s+/g, ' ');
  if (single.length <= longestRemark) return single;
  const cut = single.slice(0, longestRemark).replace(/\s+\S*$/, '');
  return `${cut} … (shortened, in full below)`;
}

/** Whether `shortened` took something away, so that the sheet must say it in full. */
export function isLong(text: string): boolean {
  return text.replace(/\s+/g, ' ').length > longestRemark;
}

export function broughtByText({ source }: LineView): string {
  return source.broughtBy ?? '';
}

/** "2 x wedge", "in-ear, stereo": what a mix is heard through. */
export function deviceText({ mix, planned }: MixView): string {
  if (mix.deviceKind === null) return 'not said';
  const count = mix.deviceCount > 1 ? `${mix.deviceCount} x ` : '';
  const format = planned?.format === 'stereo' ? ', stereo' : '';
  return `${count}${mix.deviceKind}${format}`;
}

export function listenersText({ listeners }: MixView): string {
  return listeners.join(', ');
}

/** A level in the cell of a matrix, the letter of the copy first: "M −6". */
export function feedText(purpose: Purpose, levelDb: number): string {
  return `${letterOfPurpose[purpose]} ${shortLevel(levelDb)}`;
}
