import type { ActSheet } from '../../core/show/act-sheet.ts';
import { factsOfKind, sourceKinds } from '../../core/show/source-kinds.ts';
import { amounts } from '../../core/show/words.ts';
import { rows, sheetOf, type TestRow } from '../helpers/sheet-of.ts';

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
export function largeAct(sourceCount: number, mixCount: number, seed = 1): ActSheet {
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
  return sheetOf({
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
  });
}
