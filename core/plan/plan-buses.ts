import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Bus, Id } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import type { Format } from '../show/words.ts';
import type { Decided } from './decided.ts';
import type { DecidedBy } from './plan.ts';

export type BusesOfMix = { busIds: Id[]; by: DecidedBy };

/**
 * A bus for every mono mix of the house desk, two for every stereo one: an odd number and the next. Mixes go in
 * sheet order; only where that leaves a stereo mix without its two, stereo mixes go first. What does not fit has
 * no bus.
 */
export function planBuses(
  sheet: ActSheet,
  formats: ReadonlyMap<Id, Format>,
  decided: ReadonlyMap<Id, Decided<Id[]>>,
): Map<Id, BusesOfMix> {
  const mixes = sheet.mixes.filter((mix) => mix.mixedAt === 'house desk');
  const inOrder = assign(sheet, mixes, formats, decided);
  if (mixes.every((mix) => inOrder.get(mix.id)?.busIds.length)) return inOrder;
  const isStereo = (mix: Mix) => formats.get(mix.id) === 'stereo';
  const stereoFirst = assign(
    sheet,
    [...mixes.filter(isStereo), ...mixes.filter((mix) => !isStereo(mix))],
    formats,
    decided,
  );
  return servedBy(stereoFirst) > servedBy(inOrder) ? stereoFirst : inOrder;
}

function servedBy(assignment: ReadonlyMap<Id, BusesOfMix>): number {
  let served = 0;
  for (const { busIds } of assignment.values()) if (busIds.length > 0) served++;
  return served;
}

function assign(
  sheet: ActSheet,
  mixes: readonly Mix[],
  formats: ReadonlyMap<Id, Format>,
  decided: ReadonlyMap<Id, Decided<Id[]>>,
): Map<Id, BusesOfMix> {
  const cueBusIds = new Set(sheet.cueOutputs.map((cue) => cue.busId));
  const free = new Map<number, Bus>();
  for (const bus of sheet.buses)
    if (bus.reservedFor === null && !cueBusIds.has(bus.id)) free.set(bus.number, bus);
  const byId = indexSheet(sheet).busById;
  const result = new Map<Id, BusesOfMix>();
  for (const mix of mixes) {
    const decision = decided.get(mix.id);
    if (!decision) continue;
    const busIds = withPartner(decision.value, formats.get(mix.id) ?? 'mono', byId, sheet.buses);
    for (const id of busIds) free.delete(byId.get(id)?.number ?? 0);
    result.set(mix.id, { busIds, by: decision.by });
  }
  for (const mix of mixes) {
    if (result.has(mix.id)) continue;
    const busIds = formats.get(mix.id) === 'stereo' ? takePair(free) : takeOne(free);
    result.set(mix.id, { busIds, by: 'proposal' });
  }
  return result;
}

/** One decided bus of a stereo mix stands for its odd and even pair. */
function withPartner(
  busIds: readonly Id[],
  format: Format,
  byId: ReadonlyMap<Id, Bus>,
  buses: readonly Bus[],
): Id[] {
  const only = busIds.length === 1 && busIds[0] !== undefined ? byId.get(busIds[0]) : undefined;
  if (format === 'mono' || !only) return [...busIds];
  const left = only.number % 2 === 1 ? only.number : only.number - 1;
  const pair = [left, left + 1].flatMap((number) => buses.find((bus) => bus.number === number) ?? []);
  return pair.length === 2 ? pair.map((bus) => bus.id) : [...busIds];
}

function takeOne(free: Map<number, Bus>): Id[] {
  const first = free.values().next().value;
  if (!first) return [];
  free.delete(first.number);
  return [first.id];
}

function takePair(free: Map<number, Bus>): Id[] {
  for (const [number, left] of free) {
    const right = number % 2 === 1 ? free.get(number + 1) : undefined;
    if (!right) continue;
    free.delete(number);
    free.delete(number + 1);
    return [left.id, right.id];
  }
  return [];
}
