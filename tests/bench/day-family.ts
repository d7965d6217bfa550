import { type Seeded, seeded } from '../../core/plan/day/seeded-order.ts';
import { type Show, ShowDocument, showFromRows } from '../../core/show/show.ts';
import type { SourceKind } from '../../core/show/source-kinds.ts';

/**
 * Festival days drawn from a seed, as rows of a show. Invented: no real day was to be had. Shapes follow common
 * practice: a shared kit and backline that some acts use, boxes at the drums, left, right and in front, pairs for
 * overheads, keys and tracks, condensers on 48 V, ribbons that must not have it, risers patched ahead.
 */
export type FamilyShape = {
  acts: number;
  boxes: number;
  socketsPerBox: number;
  fewestLines: number;
  mostLines: number;
  /** How likely an act uses the shared kit and backline. */
  sharing: number;
  bankSize: number;
  crewSize?: number;
  /** Share of the other lines that are the act's own; the rest is house backline that comes again. 1 by default. */
  ownShare?: number;
};

export const twelveActs: FamilyShape = {
  acts: 12,
  boxes: 4,
  socketsPerBox: 24,
  fewestLines: 32,
  mostLines: 64,
  sharing: 0.7,
  bankSize: 8,
};
export const twentyActs: FamilyShape = { ...twelveActs, acts: 20, fewestLines: 40 };

type Role = {
  kind: SourceKind;
  x: number;
  y: number;
  pair?: boolean;
  phantom?: 'needed' | 'harmful';
  riser?: boolean;
};

const kit: Role[] = [
  { kind: 'kick in', x: 0, y: 5.5, phantom: 'needed', riser: true },
  { kind: 'kick out', x: 0, y: 5.3, riser: true },
  { kind: 'snare top', x: 0.3, y: 5.6, riser: true },
  { kind: 'snare bottom', x: 0.3, y: 5.7, riser: true },
  { kind: 'hi-hat', x: 0.8, y: 5.7, phantom: 'needed', riser: true },
  { kind: 'rack tom', x: 0, y: 5.8, riser: true },
  { kind: 'floor tom', x: -0.6, y: 5.8, riser: true },
  { kind: 'overhead', x: 0, y: 6, pair: true, phantom: 'needed', riser: true },
  { kind: 'ride', x: -0.7, y: 6, phantom: 'needed', riser: true },
];
const backline: Role[] = [
  { kind: 'bass di', x: 2, y: 4.5 },
  { kind: 'bass amp', x: 2.2, y: 4.6 },
  { kind: 'electric guitar', x: -3, y: 4.2 },
  { kind: 'electric guitar', x: 3.5, y: 4.2 },
];
const own: Role[] = [
  { kind: 'electric guitar', x: -3, y: 4, phantom: 'harmful' },
  { kind: 'electric guitar', x: 3, y: 4 },
  { kind: 'acoustic guitar', x: -2, y: 2 },
  { kind: 'keys', x: 4, y: 3.5, pair: true },
  { kind: 'synth', x: 4.4, y: 3.2 },
  { kind: 'playback', x: 5, y: 5, pair: true },
  { kind: 'click', x: 5, y: 5.1 },
  { kind: 'percussion', x: -4, y: 5, pair: true, phantom: 'needed', riser: true },
  { kind: 'congas', x: -4.2, y: 4.8, riser: true },
  { kind: 'trumpet', x: 4.5, y: 2.2 },
  { kind: 'trombone', x: 4.8, y: 2.2 },
  { kind: 'saxophone', x: 4.2, y: 2.4 },
  { kind: 'violin', x: -4.5, y: 2.5, phantom: 'needed' },
  { kind: 'cello', x: -4.8, y: 2.7, phantom: 'needed' },
  { kind: 'accordion', x: -3.5, y: 2 },
  { kind: 'lead vocal', x: 0, y: 1 },
  { kind: 'backing vocal', x: -2, y: 1.2 },
  { kind: 'backing vocal', x: 2, y: 1.2 },
  { kind: 'backing vocal', x: -3.5, y: 1.6 },
  { kind: 'backing vocal', x: 3.5, y: 1.6 },
  { kind: 'bass di', x: 2, y: 4.3 },
  { kind: 'sampler', x: 1.5, y: 5.2, pair: true },
];

const boxPlaces = [
  { name: 'A', xM: 1, yM: 6.5 },
  { name: 'B', xM: -5.5, yM: 3.5 },
  { name: 'C', xM: 5.5, yM: 3.5 },
  { name: 'D', xM: 0.5, yM: 0.8 },
];

export function familyDay(shape: FamilyShape, seed: number): Show {
  const next = seeded(seed * 7919 + 11);
  const rows: Record<string, unknown[]> = {
    rigs: [{ id: 'rig', name: 'House', channelCount: 128, stageWidthM: 14, stageDepthM: 8 }],
    boxes: boxPlaces.slice(0, shape.boxes).map((place, order) => ({
      ...place,
      id: `box ${place.name}`,
      rigId: 'rig',
      order,
      reachM: 9.5,
      phantomBankSize: shape.bankSize,
    })),
    sockets: boxPlaces.slice(0, shape.boxes).flatMap((place) =>
      Array.from({ length: shape.socketsPerBox }, (_, index) => ({
        id: `${place.name}${index + 1}`,
        boxId: `box ${place.name}`,
        number: index + 1,
      })),
    ),
    days: [{ id: 'day', rigId: 'rig', name: 'Saturday', crewSize: shape.crewSize ?? 4 }],
    devices: [
      ...Array.from({ length: 6 }, (_, index) => ({
        id: `wedge ${index}`,
        rigId: 'rig',
        order: index,
        name: `Wedge ${index + 1}`,
        kind: 'wedge',
        format: 'mono',
      })),
      ...Array.from({ length: 8 }, (_, index) => ({
        id: `pack ${index}`,
        rigId: 'rig',
        order: 10 + index,
        name: `Pack ${index + 1}`,
        kind: 'in-ear',
        format: 'stereo',
      })),
    ],
    buses: Array.from({ length: 24 }, (_, index) => ({
      id: `bus ${index + 1}`,
      rigId: 'rig',
      number: index + 1,
    })),
    outputs: Array.from({ length: 24 }, (_, index) => ({
      id: `output ${index + 1}`,
      rigId: 'rig',
      place: 'desk',
      number: index + 1,
      name: `Output ${index + 1}`,
    })),
    acts: [],
    performers: [],
    sources: [],
    mixes: [],
    listeners: [],
    decisions: [],
  };
  let clock = 12 * 60;
  for (let act = 0; act < shape.acts; act++) {
    const drawn = 30 + 5 * Math.floor(next() * 6);
    // A very long day has short sets, so that it ends before the clock of a show does.
    const length = shape.acts > 24 ? 20 : drawn;
    rows.acts?.push({
      id: `act ${act}`,
      dayId: 'day',
      order: act,
      name: `Act ${act + 1}`,
      startMinute: clock,
      endMinute: clock + length,
      prePatch: next() < 0.3,
    });
    clock += length + (shape.acts > 24 ? 10 : 20);
    addSources(rows, shape, act, next);
    addMixes(rows, act, next);
  }
  return showFromRows(ShowDocument.parse({ format: 'foldbook-show', version: 1, ...rows }));
}

function addSources(rows: Record<string, unknown[]>, shape: FamilyShape, act: number, next: Seeded): void {
  const wanted = shape.fewestLines + Math.floor(next() * (shape.mostLines - shape.fewestLines + 1));
  const shares = next() < shape.sharing;
  const list = [
    ...kit.map((role, place) => ({ role, shared: shares ? `house kit ${place}` : '' })),
    ...backline.map((role, place) => ({
      role,
      shared: shares && next() < 0.6 ? `house backline ${place}` : '',
    })),
  ];
  let count = 0;
  const houseTaken = new Set<number>();
  const sources = rows.sources ?? [];
  const add = (role: Role, shared: string, name: string) => {
    const place = { xM: spread(role.x, next, shared), yM: spread(role.y, next, shared) };
    const sides = role.pair ? ['L', 'R'] : [''];
    sides.forEach((side, index) => {
      const other = role.pair ? { pairSourceId: `act ${act} ${name}${sides[1 - index]}` } : {};
      sources.push({
        id: `act ${act} ${name}${side}`,
        actId: `act ${act}`,
        order: sources.length,
        name: `${name}${side && ` ${side}`}`,
        kind: role.kind,
        phantom: role.phantom ?? 'not said',
        riser: role.riser ? 'drum riser' : '',
        stand: role.kind.endsWith('di') || role.kind === 'playback' ? '' : 'boom',
        sharedLine: shared,
        ...place,
        ...other,
      });
    });
    count += sides.length;
  };
  for (const { role, shared } of list) add(role, shared, `${role.kind} ${count}`);
  while (count < wanted) {
    const place = Math.floor(next() * own.length);
    const role = own[place];
    const comesAgain = shape.ownShare !== undefined && next() >= shape.ownShare && !houseTaken.has(place);
    if (comesAgain) houseTaken.add(place);
    if (role && count + (role.pair ? 2 : 1) <= wanted)
      add(role, comesAgain ? `house line ${place}` : '', `${role.kind} ${count}`);
    else if (role && count + 1 === wanted) add({ ...role, pair: false }, '', `${role.kind} ${count}`);
  }
  // Now and then the engineer has locked a line of this act to a socket of its own habit.
  if (next() < 0.25)
    rows.decisions?.push({
      id: `lock ${act}`,
      actId: `act ${act}`,
      about: 'socket',
      sourceId: sources
        .map((it) => it as { id: string; actId: string })
        .filter((it) => it.actId === `act ${act}`)[1]?.id,
      socketId: `A${3 + (act % 8)}`,
    });
}

const roles = ['lead vocal', 'drums', 'bass', 'guitar', 'keys', 'backing vocal', 'brass', 'percussion'];

function addMixes(rows: Record<string, unknown[]>, act: number, next: Seeded): void {
  const count = 4 + Math.floor(next() * 4);
  for (let index = 0; index < count; index++) {
    const id = `act ${act} mix ${index}`;
    const place = { xM: -4 + index * 1.2, yM: 1 + (index % 3) };
    rows.performers?.push({
      id: `${id} player`,
      actId: `act ${act}`,
      order: index,
      name: `Player ${index + 1}`,
      role: roles[index],
      ...place,
    });
    rows.mixes?.push({
      id,
      actId: `act ${act}`,
      order: index,
      name: `Mix ${index + 1}`,
      deviceKind: next() < 0.6 ? 'in-ear' : 'wedge',
      ...place,
    });
    rows.listeners?.push({ id: `${id} listener`, mixId: id, performerId: `${id} player` });
  }
}

/** A shared line stands where it stood; everything else is within a metre of its usual place. */
function spread(value: number, next: Seeded, shared: string): number {
  const away = next() * 2 - 1;
  return shared === '' ? Math.round((value + away) * 10) / 10 : value;
}
