import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type NeutralReading, neutralReading } from '../../../core/rider/neutral.ts';
import { readRider } from '../../../core/rider/read-rider.ts';

/** Ways in which bands word wishes and mixes, see `tests/wordings/README.md`. Common practice throughout. */
const languages = ['en', 'de', 'fr', 'es', 'it', 'nl', 'pt'] as const;
const folder = new URL('../../wordings/', import.meta.url);
const fileOf = (name: string) => readFileSync(new URL(name, folder), 'utf8');

const every = Array.from({ length: 20 }, (_, at) => at + 1);
const drums = every.slice(0, 7);
const groups: Readonly<Record<string, readonly number[]>> = {
  ALL: every,
  DR: drums,
  K: [1],
  S: [2],
  OH: [6, 7],
  B: [8],
  G: [9, 10],
  EG: [9],
  AG: [10],
  KE: [11, 12],
  T: [13, 14],
  C: [15],
  LV: [16],
  BV: [17, 18],
  V: [16, 17, 18],
  TP: [19],
  VN: [20],
};

type Mix = NeutralReading['mixes'][number];
type Wanted = Map<number, readonly string[]>;

function read(text: string): { mixes: Mix[]; isAsked: boolean } {
  const rows = text.split('\n').map((line) => [line]);
  const reading = readRider({ name: 'wishes.txt', form: 'text', sheets: [{ name: 'Rider', rows }] });
  const isAsked = reading.lines.filter((line) => line.text !== '').at(-1)?.outcome === 'question';
  return { mixes: neutralReading(reading).mixes, isAsked };
}

/** Amount by channel; what is said of all holds where nothing else is said. */
function heard(mix: Mix | undefined): Map<number, string> {
  const amounts = new Map<number, string>();
  const wishes = [...(mix?.wishes ?? [])].sort(
    (a, b) => Number(b.channels === 'all') - Number(a.channels === 'all'),
  );
  for (const { channels, amount } of wishes)
    for (const channel of channels === 'all' ? every : channels) amounts.set(channel, String(amount));
  return amounts;
}

/** What is read otherwise than it was meant. A source that is not to be heard may as well be left out. */
function differences(wanted: Wanted, got: ReadonlyMap<number, string>): string[] {
  const isAll = got.size > 15;
  return every.flatMap((channel) => {
    const want = wanted.get(channel);
    const amount = got.get(channel);
    if (amount === undefined ? !want || (want.includes('none') && !isAll) : want?.includes(amount)) return [];
    // Nobody who wants all of it wants the click unasked; both readings are right.
    if (isAll && channel === 15 && !want) return [];
    return [`${channel} wanted ${want?.join(' or ') ?? 'not'}, read ${amount ?? 'nothing'}`];
  });
}

function wantedOf(told: string): { wanted: Wanted; mayAsk: boolean } {
  const wanted: Wanted = new Map();
  const pieces = told.split(';').map((piece) => piece.trim());
  for (const piece of pieces.filter((it) => it !== '?')) {
    const [names = '', amounts = ''] = piece.split(' ');
    for (const name of names.split(','))
      for (const channel of groups[name] ?? [Number(name)]) wanted.set(channel, amounts.split('|'));
  }
  return { wanted, mayAsk: pieces.includes('?') };
}

describe('wishes as bands word them', () => {
  test.each(languages)('in %s', (language) => {
    const [list = '', wishes = ''] = fileOf(`${language}-wishes.txt`).split('\n===\n');
    const wrong = wishes
      .split('\n')
      .filter(Boolean)
      .flatMap((line) => {
        const [wish = '', told = ''] = line.split(' => ');
        const { wanted, mayAsk } = wantedOf(told);
        const { mixes, isAsked } = read(`${list}\n${wish}`);
        const differs = differences(wanted, heard(mixes.at(-1)));
        return differs.length === 0 || (mayAsk && isAsked) ? [] : [`${wish}: ${differs.join(', ')}`];
      });
    expect(wrong).toEqual([]);
  });
});

const plain = (text: string | null) => (text ?? '').toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
const titles = {
  en: 'Monitors',
  de: 'Monitore',
  fr: 'Retours',
  es: 'Monitores',
  it: 'Monitor',
  nl: 'Monitoren',
  pt: 'Monitores',
} as const;

describe('who listens through what, as bands tell it', () => {
  test.each(languages)('in %s', (language) => {
    const [list = ''] = fileOf(`${language}-wishes.txt`).split('\n\n');
    const wrong = fileOf(`${language}-mixes.txt`)
      .split('\n====\n')
      .flatMap((block) => {
        const [body = '', told = ''] = block.split('\n--\n');
        const text = body.startsWith('!') ? body.slice(1) : `${titles[language]}\n${body}`;
        const found = [...read(`${list}\n\n${text}`).mixes];
        const differs = told.split(/\n(?=mix )/).flatMap((mix) => mixDiffers(mix.trim(), found));
        const surplus = found.map((mix) => `${mix.label} is no mix`);
        return [...differs, ...surplus].map((it) => `${body.split('\n')[0]}: ${it}`);
      });
    expect(wrong).toEqual([]);
  });
});

/** Compares a mix with what was told of it, and takes it out of those that were found. */
function mixDiffers(told: string, found: Mix[]): string[] {
  const [head = '', ...wishes] = told.split('\n');
  const [, names = '', device = ''] = /^mix (.+?) =\s*(.*)$/.exec(head) ?? [];
  const called = names.split('|').map(plain);
  const at = found.findIndex(
    (mix) => called.includes(plain(mix.listener)) || called.includes(plain(mix.label)),
  );
  const mix = at < 0 ? undefined : found.splice(at, 1)[0];
  if (!mix) return [`no mix for ${names}`];
  const own = mix.own === null ? null : mix.own ? 'own' : 'house';
  const read = [mix.kind, mix.format, own].filter((word) => word !== null).join(' ');
  const wanted: Wanted = new Map();
  for (const wish of wishes) {
    const [, channels = '', amounts = ''] = /^\s*(all|[\d ]+?) (\S+)$/.exec(wish) ?? [];
    for (const channel of channels === 'all' ? every : channels.split(' ').map(Number))
      wanted.set(channel, amounts.split('|'));
  }
  return [...(read === device ? [] : [`on "${device}", read "${read}"`]), ...differences(wanted, heard(mix))];
}
