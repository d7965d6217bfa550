import type { DeviceKind, Format } from '../../show/words.ts';
import { withDigits } from '../language/count-words.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { fold, tidy, tokenize } from '../language/text.ts';
import { mixWords, wishWords } from '../language/vocabulary.ts';
import { type FoundMix, foundMix } from '../page/draft.ts';
import type { Walk } from '../page/walk-state.ts';
import type { Work, WorkInput } from '../page/work.ts';
import { performersOf } from '../performers/performers.ts';
import type { ReadMix, ReadWish } from '../reading.ts';
import { leadingLabel, readMixPieces, withBoxes } from './mix-pieces.ts';

/** A mix with the words of its wishes, still to be read. */
export type WorkMix = {
  read: ReadMix;
  wishTexts: string[];
  exclusionTexts: string[];
  /** Cells of tables: an input or the words of a source, and the amount as written. */
  cells: { input: WorkInput | null; heading: string; text: string; numbers?: number[] }[];
  /** While its wishes are read: those of the piece before, where it said no amount. */
  lastWishes: ReadWish[];
  /** Those of all pieces since one said an amount. */
  unsaidWishes: ReadWish[];
  /** The words of the source that was wished last, without whose it is: "that of Ana" is another one's. */
  lastSource: string | null;
  numbered: boolean;
};

/** Makes the mixes of everything that was found: tables, lists, headings of a matrix, sentences. */
export function buildMixes(work: Work): WorkMix[] {
  const mixes: WorkMix[] = [];
  for (const found of work.found.mixes) {
    if (isForAll(work, found)) {
      work.found.devices.push({ at: found.at, text: found.deviceText, except: [] });
      continue;
    }
    const mix = mixFor(work, mixes, found);
    for (const line of [found.at, ...(found.extra ?? [])]) addLine(mix.read, line);
    if (isSameDevice(found.deviceText, work)) copyDevice(mix.read, mixes[mixes.indexOf(mix) - 1]?.read);
    addDevice(mix.read, found.deviceText, work);
    mix.read.place ||= found.place;
    mix.read.notes = [mix.read.notes, ...found.notes].filter((text) => text !== '').join('; ');
    mix.wishTexts.push(...found.wishTexts);
    mix.exclusionTexts.push(...found.exclusionTexts);
    mix.cells.push(...found.matrix.map((cell) => ({ input: null, ...cell })));
  }
  addMatrix(work, mixes);
  addGeneralDevices(work, mixes);
  return mixes;
}

function addLine(mix: ReadMix, line: ReadMix['lines'][number]): void {
  if (!mix.lines.some((it) => it.sheet === line.sheet && it.row === line.row)) mix.lines.push(line);
}

/** The mix that a found one adds to (same number, or same listener), or a new one. */
function mixFor(work: Work, mixes: WorkMix[], found: FoundMix): WorkMix {
  const listenerText = isEverybody(work, found) ? '' : found.listenerText;
  const listeners =
    listenerText === '' ? [] : performersOf(work, listenerText, found.at).map((performer) => performer.name);
  const numbered = found.number !== null;
  const known = mixes.find((mix) => {
    const shares = listeners.some((name) => mix.read.listeners.includes(name));
    if (numbered && mix.numbered)
      return (
        mix.read.number === found.number &&
        (shares || listeners.length === 0 || mix.read.listeners.length === 0) &&
        !sameRowAgain(mix, found)
      );
    return shares && !(numbered && mix.numbered);
  });
  if (known) {
    if (known.read.listeners.length === 0) known.read.listeners = listeners;
    if (!known.numbered && found.number !== null) {
      known.numbered = true;
      known.read.number = found.number;
      known.read.label = found.label;
    }
    return known;
  }
  const number = found.number ?? Math.max(0, ...mixes.map((mix) => mix.read.number)) + 1;
  const mix: WorkMix = {
    read: {
      key: `mix ${found.at.sheet}:${found.at.row}${found.part > 0 ? `.${found.part}` : ''}${found.loose ? `/${tokenize(listenerText)[0]?.text ?? ''}` : ''}`,
      lines: [],
      number,
      label: found.label || listenerText || `Mix ${number}`,
      listeners,
      deviceKind: null,
      format: null,
      deviceCount: 1,
      ownDevice: null,
      mixedAt: 'house desk',
      place: '',
      wishes: [],
      notes: '',
    },
    wishTexts: [],
    exclusionTexts: [],
    cells: [],
    lastWishes: [],
    unsaidWishes: [],
    lastSource: null,
    numbered,
  };
  while (mixes.some((other) => other.read.key === mix.read.key)) mix.read.key += "'";
  mixes.push(mix);
  return mix;
}

/** Two rows of one table with the same number are two mixes, however odd. */
const sameRowAgain = (mix: WorkMix, found: FoundMix) =>
  mix.read.lines.every((line) => line.sheet === found.at.sheet && Math.abs(line.row - found.at.row) < 1) &&
  found.part > 0;

/** "All: in-ears, stereo": a device for everybody and no mix. */
const isForAll = (work: Work, found: FoundMix) =>
  found.deviceText !== '' &&
  found.number === null &&
  found.wishTexts.length + found.exclusionTexts.length + found.matrix.length === 0 &&
  isEverybody(work, found);

/** In a table of mixes "band" is who listens, as the choir and the conductor are. */
const isWholeBand =
  /^(?:(?:the|die|le|la|il|de|a|o) )?(?:band|gruppe|groupe|grupo|gruppo|banda|groep|orchest(?:er|ra|re)|orkest|orquest(?:a|ra)|kapelle)$/i;

function isEverybody(work: Work, { listenerText: text, loose }: FoundMix): boolean {
  if (!loose && isWholeBand.test(text)) return false;
  const sense = lookUp(wishWords, text, work.tongue.spoken)?.[0];
  return sense?.subject === 'group' && (sense.meaning === 'everything' || sense.meaning === 'rest');
}

type ReadDevice = {
  kind: DeviceKind | null;
  format: Format | null;
  count: number;
  own: boolean | null;
  elsewhere: boolean;
};

type Told = { subject: string; meaning: string };

/** What the words of a clause tell of a device. */
function sensesIn(clause: string, { tongue }: Pick<Work, 'tongue'>): Told[] {
  const tokens = tokenize(clause);
  const refused = findHits(wishWords, tokens, tongue.spoken, tongue.names).filter(
    (hit) => hit.certainty === 1 && hit.senses.some((sense) => sense.meaning === 'none'),
  );
  return findHits(mixWords, tokens, tongue.spoken, tongue.names).flatMap((hit): Told[] => {
    const [sense] = hit.senses;
    // A word that is only nearly one for whose the device is may as well be another.
    if (!sense || (sense.subject === 'owner' && hit.certainty < 1)) return [];
    // "No in-ears, one house wedge"
    return sense.subject === 'device' && refused.some(({ to }) => to === hit.from) ? [] : [sense];
  });
}

/** What the words on a device say. */
function readDevice(written: string, work: Pick<Work, 'tongue'>): ReadDevice {
  const text = withBoxes(withDigits(written, work.tongue));
  const device: ReadDevice = { kind: null, format: null, count: 1, own: null, elsewhere: false };
  const clauses = text.split(/[,;()]|\.\s/).map((clause) => sensesIn(clause, work));
  for (const { subject, meaning } of clauses.flat()) {
    if (subject === 'device') device.kind ??= meaning as DeviceKind;
    if (subject === 'format') device.format ??= meaning as Format;
    if (subject === 'elsewhere') device.elsewhere = true;
  }
  // "Our own engineer, monitors from your side": whose it is stands beside the device, if it does anywhere.
  const isDevice = (clause: Told[]) =>
    clause.some(({ subject }) => subject === 'device' || subject === 'elsewhere');
  const owners = [...clauses.filter(isDevice), ...clauses]
    .flat()
    .filter(({ subject }) => subject === 'owner' || subject === 'elsewhere');
  if (owners[0]) device.own = owners[0].subject === 'elsewhere' || owners[0].meaning === 'band';
  const count = /(?:^|[^\d])([2-8])\s*(?:x|×|\*)|\bx\s*([2-8])\b|(?:^|\s|,)([2-8])\s+(?=\p{L})/iu.exec(text);
  const counted = Number(count?.[1] ?? count?.[2] ?? count?.[3] ?? 0);
  if (counted > 1) device.count = counted;
  else if (
    /\bpair|\bpaar\b|\bpaire\b|\bcouple\b|\bpar\b|\bcoppia\b/i.test(fold(text)) &&
    device.kind !== 'in-ear'
  )
    device.count = 2;
  return device;
}

/** "Same system", or a ditto in the column of the devices: what the listener before has. */
const isSameDevice = (text: string, work: Work) =>
  /^(?:["″〃]|'')$|^(?:ditto|dito|do|idem|same|gleich|pareil|igual|uguale|stesso|zelfde|hetzelfde|mesmo)$/.test(
    fold(text),
  ) ||
  findHits(mixWords, tokenize(text), work.tongue.spoken).some((hit) => hit.senses[0]?.subject === 'same');

function copyDevice(mix: ReadMix, before: ReadMix | undefined): void {
  if (!before) return;
  const { deviceKind, format, ownDevice, deviceCount, mixedAt } = before;
  Object.assign(mix, { deviceKind, format, ownDevice, deviceCount, mixedAt });
}

function addDevice(mix: ReadMix, text: string, work: Work): void {
  if (text === '') return;
  const device = readDevice(text, work);
  mix.deviceKind ??= device.kind;
  mix.format ??= device.format;
  mix.ownDevice ??= device.own;
  if (device.count > 1) mix.deviceCount = device.count;
  if (device.elsewhere) mix.mixedAt = 'elsewhere';
}

/** Columns headed by a mix beside a list of inputs. */
function addMatrix(work: Work, mixes: WorkMix[]): void {
  const byHeading = new Map<string, WorkMix>();
  // Mixes are made in the order of their columns, not in the order in which the first inputs name them.
  const headings = work.inputs.flatMap((input) => input.found.matrix.map((cell) => ({ ...cell, input })));
  for (const { heading, input } of headings.sort((a, b) => a.column - b.column)) {
    if (!byHeading.has(heading)) byHeading.set(heading, mixOfHeading(work, mixes, heading, input));
  }
  for (const input of work.inputs) {
    for (const { heading, text } of input.found.matrix) {
      const mix = byHeading.get(heading);
      if (!mix) continue;
      mix.cells.push({ input, heading: input.read.name, text });
      addLine(mix.read, input.found.at);
    }
  }
}

function mixOfHeading(work: Work, mixes: WorkMix[], heading: string, input: WorkInput): WorkMix {
  const walk = { tongue: work.tongue } as Walk;
  const label = leadingLabel(heading, walk);
  const pieces = readMixPieces(label?.rest ?? heading, walk);
  const number = /^\d{1,2}$/.test(heading) ? Number(heading) : (label?.numbers[0] ?? null);
  const found = foundMix(input.found.at, {
    number,
    label: label?.label ?? (number === null ? tidy(heading) : `Mix ${number}`),
    listenerText: /^\d+$/.test(heading) ? '' : pieces.listenerText,
    deviceText: [
      label && /iem|ear|wedge/i.test(label.label) ? label.label.replace(/\d+/g, '') : '',
      pieces.deviceText,
    ]
      .join(' ')
      .trim(),
    place: pieces.place,
  });
  const mix = mixFor(work, mixes, found);
  if (mix.read.lines.length === 0) mix.read.key = `mix ${input.found.at.sheet}:${tidy(heading).slice(0, 60)}`;
  addDevice(mix.read, found.deviceText, work);
  return mix;
}

/** "All on own stereo in-ears" holds for every mix that says nothing else, a title for those below it. */
function addGeneralDevices(work: Work, mixes: WorkMix[]): void {
  const titles = work.found.devices.filter((it) => it.isTitle);
  for (const told of work.found.devices) {
    const device = readDevice(told.text, work);
    const next = titles.find(({ at }) => at.sheet === told.at.sheet && at.row > told.at.row);
    const isBelow = ({ read: { lines } }: WorkMix) =>
      lines.some(
        ({ sheet, row }) => sheet === told.at.sheet && row >= told.at.row && (!next || row < next.at.row),
      );
    const others = new Set(
      told.except.flatMap((who) => performersOf(work, who, told.at).map(({ name }) => name)),
    );
    for (const mix of mixes) {
      const { read } = mix;
      if (read.listeners.length > 0 && read.listeners.every((name) => others.has(name))) continue;
      if (told.isTitle && titles.length > 1 && !isBelow(mix)) continue;
      if (read.deviceKind !== null && device.kind !== null && read.deviceKind !== device.kind) continue;
      if (told.isOfKind && read.deviceKind !== device.kind) continue;
      read.deviceKind ??= device.kind;
      read.format ??= device.format;
      read.ownDevice ??= device.own;
      if (device.elsewhere) read.mixedAt = 'elsewhere';
    }
  }
}
