import type { ActSheet } from '../../core/show/act-sheet.ts';
import type { Show } from '../../core/show/show.ts';
import { factsOfKind, sourceKinds } from '../../core/show/source-kinds.ts';
import { amounts } from '../../core/show/words.ts';
import { rows, sheetOf, showOf, type TestRow, type TestRows } from '../helpers/sheet-of.ts';

/** Numbers from 0 to below 1, the same on every run (mulberry32). */
export function seededNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Kinds that any mix may hold; a large act is not made of faults. */
const stageKinds = sourceKinds.filter((kind) => factsOfKind(kind).wedgeSafe && kind !== 'effect return');

/** Half of all cells of the matrix are asked for, as in a large band on in-ears. */
const shareOfCells = 0.5;

/** An invented act of a given size on a rig that is large enough for it. */
export const largeAct = (sourceCount: number, mixCount: number, seed = 1): ActSheet =>
  sheetOf(largeActRows(sourceCount, mixCount, seed));

/** A day of such acts, each its own, on one rig. */
export function largeDay(acts: number, sourceCount: number, mixCount: number): Show {
  const each = Array.from({ length: acts }, (_, at) => {
    const { performers, sources, mixes, listeners, wishes } = largeActRows(sourceCount, mixCount, at + 1);
    const own = (list: TestRow[] = []) => list.map((row) => ofAct(row, `act-${at}`));
    return {
      acts: [{ id: `act-${at}`, dayId: 'day', order: at, name: `Act ${at + 1}` }],
      performers: own(performers).map((row) => ({ ...row, actId: `act-${at}` })),
      sources: own(sources).map((row) => ({ ...row, actId: `act-${at}` })),
      mixes: own(mixes).map((row) => ({ ...row, actId: `act-${at}` })),
      listeners: own(listeners),
      wishes: own(wishes),
    };
  });
  const all = <K extends keyof (typeof each)[number]>(table: K): TestRow[] => each.flatMap((it) => it[table]);
  return showOf({
    ...largeActRows(sourceCount, mixCount, 1),
    acts: all('acts'),
    performers: all('performers'),
    sources: all('sources'),
    mixes: all('mixes'),
    listeners: all('listeners'),
    wishes: all('wishes'),
  });
}

/** The row with the ids of what belongs to an act made those of the given act. */
const ofAct = (row: TestRow, actId: string): TestRow =>
  Object.fromEntries(
    Object.entries(row).map(([field, value]) => [
      field,
      typeof value === 'string' && /^(performer|source|mix|listener|wish)-\d/.test(value)
        ? `${actId} ${value}`
        : value,
    ]),
  );

function largeActRows(sourceCount: number, mixCount: number, seed: number): TestRows {
  const next = seededNumbers(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T;
  const sources: TestRow[] = Array.from({ length: sourceCount }, (_, at) => ({
    id: `source-${at}`,
    name: `Source ${at + 1}`,
    kind: pick(stageKinds),
    pickUp: pick(['mic', 'di', 'line', null]),
    phantom: pick(['needed', 'not needed', 'not said']),
    performerId: `performer-${at % Math.ceil(mixCount / 2)}`,
  }));
  const mixes: TestRow[] = Array.from({ length: mixCount }, (_, at) => ({
    id: `mix-${at}`,
    name: `Mix ${at + 1}`,
    deviceKind: at % 2 === 0 ? 'in-ear' : 'wedge',
    format: at % 2 === 0 ? 'stereo' : 'mono',
  }));
  const wishes: TestRow[] = [];
  for (let mixAt = 0; mixAt < mixCount; mixAt++)
    for (let sourceAt = 0; sourceAt < sourceCount; sourceAt++)
      if (next() < shareOfCells)
        wishes.push({
          id: `wish-${mixAt}-${sourceAt}`,
          mixId: `mix-${mixAt}`,
          sourceId: `source-${sourceAt}`,
          amount: pick(amounts.filter((amount) => amount !== 'only' && amount !== 'none')),
        });
  return {
    rig: { channelCount: sourceCount * 2, gainOwner: 'front of house' },
    boxes: [{ id: 'box-a' }, { id: 'box-b' }],
    sockets: ['box-a', 'box-b'].flatMap((boxId) => rows(Math.ceil(sourceCount / 2), { id: boxId, boxId })),
    buses: rows(mixCount * 2, { id: 'bus' }),
    outputs: rows(mixCount * 2 + 4, { id: 'output' }),
    devices: [
      ...Array.from({ length: mixCount }, (_, at) => ({
        id: `device-${at}`,
        kind: at % 2 === 0 ? 'in-ear' : 'wedge',
        format: at % 2 === 0 ? 'stereo' : 'mono',
        sensitivityDbSpl: 98,
        powerW: at % 2 === 0 ? null : 200,
        listeningDistanceM: at % 2 === 0 ? null : 1.6,
        limiter: 'in the receiver',
      })),
      { id: 'cue-pack-device', kind: 'in-ear', format: 'stereo', sensitivityDbSpl: 98, forCue: true },
    ],
    cueOutputs: [
      {
        id: 'cue-pack',
        kind: 'in-ear',
        format: 'stereo',
        outputId: `output ${mixCount * 2 + 3}`,
        secondOutputId: `output ${mixCount * 2 + 4}`,
        deviceId: 'cue-pack-device',
      },
    ],
    performers: Array.from({ length: Math.ceil(mixCount / 2) }, (_, at) => ({ id: `performer-${at}` })),
    sources,
    mixes,
    listeners: mixes.map((mix, at) => ({
      id: `listener-${at}`,
      mixId: mix.id,
      performerId: `performer-${at % Math.ceil(mixCount / 2)}`,
    })),
    wishes,
  };
}
