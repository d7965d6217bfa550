import { deflateRawSync } from 'node:zlib';
import { documentFromShow } from '../../core/show/show.ts';
import type { StoredAct } from '../../electron/database/archive.ts';
import { showOf } from '../helpers/sheet-of.ts';
import { seededNumbers } from './large-act.ts';

const first = 'ka lo mi ra tu ve no si'.split(' ');
const second = 'ban del fen gor hul jam kes lin mor nat'.split(' ');
const third = 'a as el en i in o on ur y'.split(' ');
const parts = ['Kick in', 'Snare top', 'Guitar', 'Bass DI', 'Keys left', 'Lead vocal', 'Tom', 'Hi-hat'];

const [performers, sources] = [8, 31];
/** The act itself, who plays in it and what is miked. */
export const namesInAct = 1 + performers + sources;

/** Invented acts of the past, every name of its own letters, the same on each run. */
export function pastActs(count: number): StoredAct[] {
  const next = seededNumbers(4);
  const pick = (list: readonly string[]) => list[Math.floor(next() * list.length)] ?? '';
  const name = () => {
    const word = `${pick(first)}${pick(second)}${pick(third)}`;
    return `${word[0]?.toUpperCase()}${word.slice(1)}`;
  };
  return Array.from({ length: count }, (_, at) => {
    const actName = `${name()} ${name()}`;
    const document = documentFromShow(
      showOf({
        act: { id: `past-${at}`, name: actName },
        performers: Array.from({ length: performers }, (_, n) => ({
          id: `p${n}`,
          actId: `past-${at}`,
          name: name(),
        })),
        sources: Array.from({ length: sources }, (_, n) => ({
          id: `s${n}`,
          actId: `past-${at}`,
          kind: 'other',
          name: `${pick(parts)} ${name()}`,
        })),
      }),
    );
    const packed = deflateRawSync(JSON.stringify(document));
    const when = new Date(Date.UTC(2020, 0, 1) + at * 6 * 3_600_000).toISOString();
    return {
      actId: `past-${at}`,
      actName,
      dayName: 'Saturday',
      date: when.slice(0, 10),
      rigName: 'House',
      device: 'bench',
      plannedAt: when,
      ranAt: when,
      planned: packed,
      ran: packed,
    };
  });
}
