import type { ActSheet } from '../../core/show/act-sheet.ts';
import { type Change, type Put, put } from '../../core/show/change.ts';
import type { Id } from '../../core/show/rig.ts';
import type { StagePlace } from '../../core/show/stage-place.ts';
import { words } from '../wording/words.ts';
import { toCentimetre } from './snap.ts';
import { hasAim, isPlaced, type PlacedThing, type StageThing } from './stage-objects.ts';

/** Every arrangement of things on the stage as one change, and so as one step of undo. */

/** As far from the stage as a place is kept (`metres` in core/show/rig.ts). */
const farthestM = 500;

/** The chosen things shifted; what only stands where its performer does goes with them. */
export function moved(sheet: ActSheet, things: readonly StageThing[], by: StagePlace): Change {
  const label = words.stage.did.move(called(things));
  return rearranged(sheet, things, label, (thing) => ({
    at: { xM: thing.at.xM + by.xM, yM: thing.at.yM + by.yM },
  }));
}

/** The things on the other side of the stage's centre line, and what points left pointing right. */
export function mirrored(sheet: ActSheet, things: readonly StageThing[]): Change {
  const label = words.stage.did.mirror(called(things));
  return rearranged(sheet, things, label, ({ at, aimDeg }) => ({
    at: { xM: -at.xM, yM: at.yM },
    ...(aimDeg === null ? {} : { aimDeg: -aimDeg + 0 }),
  }));
}

/** What points somewhere turned clockwise, seen from above; where nobody said an aim it counts as upstage. */
export function turned(sheet: ActSheet, things: readonly StageThing[], byDeg: number): Change {
  const aimed = things.filter(hasAim);
  const label = words.stage.did.turn(called(aimed));
  return rearranged(sheet, aimed, label, ({ aimDeg }) => ({ aimDeg: withinHalfTurn((aimDeg ?? 0) + byDeg) }));
}

export function aimed(sheet: ActSheet, thing: StageThing, aimDeg: number): Change {
  const label = words.stage.did.turn(thing.name);
  return changeOf(label, [rowWith(sheet, thing, { aimDeg: withinHalfTurn(aimDeg) })]);
}

export function placedAt(sheet: ActSheet, thing: StageThing, at: StagePlace): Change {
  return changeOf(words.stage.did.place(thing.name), [rowWith(sheet, thing, { at })]);
}

/** The things without a place again. What they are stays. */
export function takenOff(sheet: ActSheet, things: readonly StageThing[]): Change {
  const label = words.stage.did.takeOff(called(things));
  return changeOf(
    label,
    things.filter((it) => it.ownPlace).map((it) => rowWith(sheet, it, { at: null })),
  );
}

type Patch = { at?: StagePlace | null; aimDeg?: number };

function rearranged(
  sheet: ActSheet,
  things: readonly StageThing[],
  label: string,
  patchOf: (thing: PlacedThing) => Patch,
): Change {
  const performers = new Set(things.filter((it) => it.kind === 'performer').map((it) => it.id));
  const followsOne = (thing: StageThing) => !thing.ownPlace && performers.has(thing.performerId ?? '');
  const puts = things.filter(isPlaced).map((thing) => {
    const { at, aimDeg } = patchOf(thing);
    return rowWith(sheet, thing, {
      ...(at === undefined || followsOne(thing) ? {} : { at }),
      ...(aimDeg === undefined ? {} : { aimDeg }),
    });
  });
  return changeOf(label, puts);
}

/** The row of a thing with another place or aim; null where nothing would be another. */
function rowWith(sheet: ActSheet, { kind, id }: StageThing, { at, aimDeg }: Patch): Put | null {
  if (at === undefined && aimDeg === undefined) return null;
  const place = at === undefined ? {} : { xM: keptM(at?.xM), yM: keptM(at?.yM) };
  const turn = aimDeg === undefined ? {} : { aimDeg };
  switch (kind) {
    case 'performer':
      return withRow(sheet.performers, id, (row) => put('performers', { ...row, ...place }));
    case 'source':
      return withRow(sheet.sources, id, (row) => put('sources', { ...row, ...place, ...turn }));
    case 'wedge':
      return withRow(sheet.mixes, id, (row) => put('mixes', { ...row, ...place, ...turn }));
    case 'box':
      return withRow(sheet.boxes, id, (row) => put('boxes', { ...row, ...place }));
    case 'cue': {
      const cue = at === undefined ? {} : { cueXM: keptM(at?.xM), cueYM: keptM(at?.yM) };
      return put('rigs', { ...sheet.rig, ...cue });
    }
  }
}

function withRow<T extends { id: Id }>(rows: readonly T[], id: Id, make: (row: T) => Put): Put | null {
  const row = rows.find((it) => it.id === id);
  return row ? make(row) : null;
}

function changeOf(label: string, puts: readonly (Put | null)[]): Change {
  return { label, put: puts.filter((it) => it !== null), remove: [] };
}

const keptM = (m: number | undefined) =>
  m === undefined ? null : toCentimetre(Math.max(-farthestM, Math.min(farthestM, m)));

/** Degrees from above -180 to 180, to a tenth. */
export function withinHalfTurn(degrees: number): number {
  const rest = Math.round((((degrees % 360) + 540) % 360) * 10) / 10 - 180;
  return rest === -180 ? 180 : rest + 0;
}

function called(things: readonly StageThing[]): string {
  const [first, ...others] = things;
  return others.length === 0 ? (first?.name ?? '') : words.stage.things(things.length);
}
