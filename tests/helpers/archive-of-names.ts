import { deflateRawSync } from 'node:zlib';
import { Act, Performer, Source } from '../../core/show/act.ts';
import { documentFromShow, showFromRows } from '../../core/show/show.ts';
import type { StoredAct } from '../../electron/database/archive.ts';
import { smallShow } from './small-show.ts';

/** Invented halves of names, so that beginnings of words are shared by many and by few. */
const first = ['Amber', 'Birch', 'Cobalt', 'Drift', 'Ember', 'Fallow', 'Gale', 'Harrow', 'Iron', 'Juniper'];
const second = ['Lanterns', 'Meadow', 'Nightjars', 'Orchard', 'Pilots', 'Quarry', 'Ravens', 'Sawmill'];
const people = [
  'Ada',
  'Bram',
  'Corin',
  'Dela',
  'Edda',
  'Finn',
  'Gus',
  'Hanne',
  'Ilse',
  'Jory',
  'Kai',
  'Lene',
];
const lines = [
  'Kick in',
  'Snare top',
  'Hat',
  'Tom',
  'Bass DI',
  'Guitar',
  'Keys L',
  'Keys R',
  'Vocal',
  'Talk',
];

const pick = (list: readonly string[], at: number) => list[at % list.length] ?? '';

/** As many archived acts as hold at least so many names, each act with its own; for `adoptArchived`. */
export function archiveOfNames(nameCount: number, perAct = 50): StoredAct[] {
  const base = documentFromShow(smallShow());
  const acts: StoredAct[] = [];
  for (let at = 0; at * perAct < nameCount; at++) {
    const actId = `past-${at}`;
    const actName = `${pick(first, at)} ${pick(second, Math.floor(at / first.length))} ${at}`;
    const performers = Array.from({ length: 9 }, (_, n) =>
      Performer.parse({
        id: `${actId}-p${n}`,
        actId,
        order: n,
        name: `${pick(people, at + n)} ${pick(second, n * 3 + at)}`,
      }),
    );
    const sources = Array.from({ length: perAct - 10 }, (_, n) =>
      Source.parse({ id: `${actId}-s${n}`, actId, order: n, name: `${pick(lines, n)} ${n + 1}` }),
    );
    const rows = { rigs: base.rigs, days: base.days, performers, sources };
    const act = Act.parse({ id: actId, dayId: base.days[0]?.id, order: 0, name: actName });
    const document = deflateRawSync(JSON.stringify(documentFromShow(showFromRows({ ...rows, acts: [act] }))));
    const ranAt = new Date(Date.UTC(2020, 0, 1) + at * 3_600_000).toISOString();
    acts.push({
      actId,
      actName,
      dayName: base.days[0]?.name ?? '',
      date: ranAt.slice(0, 10),
      rigName: base.rigs[0]?.name ?? '',
      device: 'test',
      plannedAt: ranAt,
      planned: document,
      ranAt,
      ran: document,
    });
  }
  return acts;
}
