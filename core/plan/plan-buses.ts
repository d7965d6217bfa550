import type { ActSheet } from '../show/act-sheet.ts';
import type { Bus, Id } from '../show/rig.ts';
import { indexSheet, type SheetIndex } from '../show/sheet-index.ts';
import type { Format } from '../show/words.ts';
import type { DecidedOf } from './decided.ts';
import type { DecidedBy } from './plan.ts';

export type BusesOfMix = { busIds: Id[]; by: DecidedBy };

/**
 * A bus for every mono mix of the house desk, two for every stereo one: an odd number and the next. Mixes go in
 * sheet order; only where that leaves a mix without a bus, stereo mixes go first if more are served then. What does
 * not fit, and what is made elsewhere, has no bus. In sheet order.
 */
export function planBuses(
  sheet: ActSheet,
  formats: readonly Format[],
  decided: DecidedOf<Id[]>,
): BusesOfMix[] {
  const places: number[] = [];
  sheet.mixes.forEach(({ mixedAt }, at) => {
    if (mixedAt === 'house desk') places.push(at);
  });
  const inOrder = assign(sheet, places, formats, decided);
  if (servedBy(inOrder) === places.length) return inOrder;
  const isStereo = (at: number) => formats[at] === 'stereo';
  const stereoFirst = assign(
    sheet,
    [...places.filter(isStereo), ...places.filter((at) => !isStereo(at))],
    formats,
    decided,
  );
  return servedBy(stereoFirst) > servedBy(inOrder) ? stereoFirst : inOrder;
}

function servedBy(assignment: readonly BusesOfMix[]): number {
  let served = 0;
  for (const { busIds } of assignment) if (busIds.length > 0) served++;
  return served;
}

const noBuses: BusesOfMix = { busIds: [], by: 'proposal' };

/** Buses for the mixes at these places, in that order. */
function assign(
  sheet: ActSheet,
  places: readonly number[],
  formats: readonly Format[],
  decided: DecidedOf<Id[]>,
): BusesOfMix[] {
  const index = indexSheet(sheet);
  const free = new FreeBuses(sheet);
  const result = sheet.mixes.map((mix, at): BusesOfMix => {
    const decision = mix.mixedAt === 'house desk' ? decided[at] : undefined;
    if (!decision) return noBuses;
    const busIds = withPartner(decision.value, formats[at] ?? 'mono', index, sheet.buses);
    for (const id of busIds) free.take(index.bus(id));
    return { busIds, by: decision.by };
  });
  for (const at of places)
    if (result[at] === noBuses)
      result[at] = { busIds: formats[at] === 'stereo' ? free.pair() : free.one(), by: 'proposal' };
  return result;
}

/** One decided bus of a stereo mix stands for its odd and even pair. */
function withPartner(busIds: readonly Id[], format: Format, index: SheetIndex, buses: readonly Bus[]): Id[] {
  const only = busIds.length === 1 && busIds[0] !== undefined ? index.bus(busIds[0]) : undefined;
  if (format === 'mono' || !only) return [...busIds];
  const left = only.number % 2 === 1 ? only.number : only.number - 1;
  const pair = [left, left + 1].flatMap((number) => buses.find((bus) => bus.number === number) ?? []);
  return pair.length === 2 ? pair.map((bus) => bus.id) : [...busIds];
}

/** The buses that are still free, by number: neither reserved nor the cue's. */
class FreeBuses {
  /** An empty place is taken, or no such bus. */
  readonly #byNumber: (Bus | undefined)[] = [];
  #lowestMaybeFree = 1;

  constructor(sheet: ActSheet) {
    const cueBusIds = new Set(sheet.cueOutputs.map((cue) => cue.busId));
    for (const bus of sheet.buses)
      if (bus.reservedFor === null && !cueBusIds.has(bus.id)) this.#byNumber[bus.number] = bus;
  }

  take(bus: Bus | undefined): void {
    if (bus) this.#byNumber[bus.number] = undefined;
  }

  /** The lowest; empty: none is left. */
  one(): Id[] {
    const count = this.#byNumber.length;
    while (this.#lowestMaybeFree < count && !this.#byNumber[this.#lowestMaybeFree]) this.#lowestMaybeFree++;
    return this.#give([this.#lowestMaybeFree]);
  }

  /** The lowest that are an odd number and the next; empty: none are left. */
  pair(): Id[] {
    for (let left = this.#lowestMaybeFree | 1; left < this.#byNumber.length; left += 2)
      if (this.#byNumber[left] && this.#byNumber[left + 1]) return this.#give([left, left + 1]);
    return [];
  }

  #give(numbers: readonly number[]): Id[] {
    const ids: Id[] = [];
    for (const number of numbers) {
      const bus = this.#byNumber[number];
      if (bus) ids.push(bus.id);
      this.#byNumber[number] = undefined;
    }
    return ids;
  }
}
