import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Id, Output } from '../show/rig.ts';
import { indexSheet, type SheetIndex } from '../show/sheet-index.ts';
import { distanceM, placeOf, type StagePlace } from '../show/stage-place.ts';
import type { Format } from '../show/words.ts';
import type { Decided, DecidedOf } from './decided.ts';
import type { DecidedBy } from './plan.ts';
import type { DevicesOfMix } from './plan-devices.ts';

export type OutputsOfMix = { outputIds: Id[]; by: DecidedBy; why: string };

/**
 * The outputs of every mix, in sheet order: one for a mix that leaves the rig, two if it is stereo. First the decided
 * ones; then those that the mix's devices are wired to, so that a device keeps its output from act to act; then the
 * nearest to where the mix is heard, or the lowest in order where no place is known. Never a reserved output, one of
 * the cue's or a record feed, and a network output only when those of the desk and the boxes are used up.
 */
export function planOutputs(
  sheet: ActSheet,
  formats: readonly Format[],
  devices: readonly DevicesOfMix[],
  decided: DecidedOf<Id[]>,
): OutputsOfMix[] {
  const free = new FreeOutputs(sheet);
  const widthOf = (at: number) => (formats[at] === 'stereo' ? 2 : 1);
  const given = sheet.mixes.map((mix, at) => settledOutputs(sheet, mix, widthOf(at), decided[at]));
  for (const outputs of given) if (outputs) free.take(outputs.outputIds);

  sheet.mixes.forEach((_, at) => {
    const wired = given[at] ? noOutputs : wiredOutputs(devices[at]);
    if (wired.length < widthOf(at) || !free.takeIfFree(wired)) return;
    given[at] = { outputIds: wired, by: 'proposal', why: 'Its device is wired to this output.' };
  });

  const nearest = new NearestOutputs(sheet, free);
  return sheet.mixes.map((mix, at) => {
    const settled = given[at];
    if (settled) return settled;
    const place = placeOf(mix);
    const outputIds = nearest.take(place, widthOf(at));
    const why = place ? 'The free output nearest to where it is heard.' : 'The lowest free output in order.';
    return { outputIds, by: 'proposal', why: outputIds.length > 0 ? why : 'No output is left for it.' };
  });
}

/** What leaves no choice: a decision, or a mix that never comes through the house. null: to be planned. */
function settledOutputs(
  sheet: ActSheet,
  mix: Mix,
  width: number,
  decision: Decided<Id[]> | undefined,
): OutputsOfMix | null {
  if (decision)
    return {
      outputIds: withNext(decision.value, width, sheet.outputs),
      by: decision.by,
      why:
        decision.by === 'engineer'
          ? 'The engineer decided this output.'
          : 'A proposed output that was taken.',
    };
  if (leavesRig(mix)) return null;
  return { outputIds: [], by: 'proposal', why: 'It does not leave through the house.' };
}

/** A mix made on the band's own desk for the band's own device never comes through the house's outputs. */
export function leavesRig(mix: Mix): boolean {
  return mix.mixedAt === 'house desk' || mix.ownDevice !== true;
}

/** Outputs that carry the cue; no mix may leave there. */
export function cueOutputIds(sheet: ActSheet): Set<Id> {
  return new Set(
    sheet.cueOutputs.flatMap((cue) => [cue.outputId, cue.secondOutputId]).filter((id) => id !== null),
  );
}

/** What a proposal may use, what is made for mixes first. A record feed is never proposed. */
const placeRank = { 'stage box': 0, desk: 0, network: 1, record: null } as const;

const noOutputs: Id[] = [];

/** All outputs that a mix's devices are wired to: two wedges on one mono mix may hang on two. */
function wiredOutputs(ofMix: DevicesOfMix | undefined): Id[] {
  let wired = noOutputs;
  for (const { outputId, secondOutputId } of ofMix?.devices ?? []) {
    if (outputId === null && secondOutputId === null) continue;
    if (wired === noOutputs) wired = [];
    for (const id of [outputId, secondOutputId]) if (id !== null && !wired.includes(id)) wired.push(id);
  }
  return wired;
}

/** One decided output of a stereo mix stands for itself and the next number of the same place and box. */
function withNext(outputIds: readonly Id[], width: number, outputs: readonly Output[]): Id[] {
  const first = outputs.find((output) => output.id === outputIds[0]);
  if (width === 1 || outputIds.length > 1 || !first) return [...outputIds];
  const next = outputs.find((output) => isNextOf(first, output));
  return next ? [first.id, next.id] : [first.id];
}

function isNextOf(first: Output | undefined, output: Output | undefined): boolean {
  if (!first || !output) return false;
  const sameBox = output.place === first.place && output.boxId === first.boxId;
  return sameBox && output.number === first.number + 1;
}

/** More boxes than a rig has, and more outputs than a box. */
const mostBoxes = 100_000;
const mostNumbers = 2048;

/** The outputs that a proposal may use and that are still free, by places in the sheet. */
class FreeOutputs {
  readonly #sheet: ActSheet;
  readonly #index: SheetIndex;
  /** 1 for each output that is free. */
  readonly #isFree: Uint8Array;

  constructor(sheet: ActSheet) {
    this.#sheet = sheet;
    this.#index = indexSheet(sheet);
    this.#isFree = new Uint8Array(sheet.outputs.length);
    let at = 0;
    for (const { reservedFor, place } of sheet.outputs)
      this.#isFree[at++] = reservedFor === null && placeRank[place] !== null ? 1 : 0;
    for (const { outputId, secondOutputId } of sheet.cueOutputs) this.take([outputId, secondOutputId]);
  }

  isFree(at: number): boolean {
    return this.#isFree[at] === 1;
  }

  take(ids: readonly (Id | null)[]): void {
    for (const id of ids) if (id !== null) this.#isFree[this.#index.outputAt.get(id) ?? -1] = 0;
  }

  /** Takes all of these if all are free. */
  takeIfFree(ids: readonly Id[]): boolean {
    if (!ids.every((id) => this.isFree(this.#index.outputAt.get(id) ?? -1))) return false;
    this.take(ids);
    return true;
  }

  give(places: readonly number[]): Id[] {
    const ids: Id[] = [];
    for (const at of places) {
      this.#isFree[at] = 0;
      ids.push(this.#sheet.outputs[at]?.id ?? '');
    }
    return ids;
  }

  /** What is free now: what is made for mixes first, then by box and number. */
  inOrder(): number[] {
    const { outputs, boxes } = this.#sheet;
    const rank = new Float64Array(outputs.length);
    const order: number[] = [];
    let isSorted = true;
    let before = -1;
    for (let at = 0; at < outputs.length; at++) {
      const output = outputs[at];
      if (!output || !this.isFree(at)) continue;
      const boxAt = output.boxId === null ? undefined : this.#index.boxAt.get(output.boxId);
      const here = (rankOf(output) * mostBoxes + (boxAt ?? boxes.length)) * mostNumbers + output.number;
      isSorted &&= here >= before;
      before = here;
      rank[at] = here;
      order.push(at);
    }
    // A sheet has its outputs in the order of their numbers, which often is this order.
    return isSorted ? order : order.sort((a, b) => (rank[a] ?? 0) - (rank[b] ?? 0));
  }
}

/** Gives out what is free, the nearest to a place on the stage first. */
class NearestOutputs {
  readonly #sheet: ActSheet;
  readonly #index: SheetIndex;
  readonly #free: FreeOutputs;
  readonly #inOrder: readonly number[];
  /** Those before this one in that order are taken. */
  #firstFree = 0;
  /** For each output the one beside it on the same box, on its right, or -1. */
  readonly #rightOf: Int32Array;

  constructor(sheet: ActSheet, free: FreeOutputs) {
    this.#sheet = sheet;
    this.#index = indexSheet(sheet);
    this.#free = free;
    this.#inOrder = free.inOrder();
    this.#rightOf = new Int32Array(sheet.outputs.length).fill(-1);
    const { outputs } = sheet;
    for (let it = 0; it < this.#inOrder.length; it++) {
      const left = this.#inOrder[it] ?? -1;
      const next = this.#inOrder[it + 1] ?? -1;
      // Outputs of one box lie beside each other in this order, except where the desk and a network share a rank.
      this.#rightOf[left] = isNextOf(outputs[left], outputs[next])
        ? next
        : (this.#inOrder.find((at) => isNextOf(outputs[left], outputs[at])) ?? -1);
    }
  }

  /** Takes one or two, the nearest first; neighbours where a stereo mix can have them; empty: none left. */
  take(place: StagePlace | null, width: number): Id[] {
    const order = place ? this.#nearestFirst(place) : this.#inOrder;
    while (!this.#free.isFree(this.#inOrder[this.#firstFree] ?? -1) && this.#firstFree < this.#inOrder.length)
      this.#firstFree++;
    let first = -1;
    let second = -1;
    for (let it = place ? 0 : this.#firstFree; it < order.length; it++) {
      const at = order[it] ?? -1;
      if (!this.#free.isFree(at)) continue;
      if (width === 1) return this.#free.give([at]);
      const right = this.#rightOf[at] ?? -1;
      if (this.#free.isFree(right)) return this.#free.give([at, right]);
      if (first < 0) first = at;
      else if (second < 0) second = at;
    }
    // Two that are not neighbours still carry a stereo mix; one alone does not.
    return second < 0 ? [] : this.#free.give([first, second]);
  }

  #nearestFirst(from: StagePlace): number[] {
    const { outputs, boxes } = this.#sheet;
    const apartM = Float64Array.from(outputs, (output) => {
      const box = output.boxId === null ? undefined : boxes[this.#index.boxAt.get(output.boxId) ?? -1];
      const place = placeOf(output) ?? (box ? placeOf(box) : null);
      return place ? distanceM(from, place) : Number.MAX_VALUE;
    });
    const rankAt = (at: number) => {
      const output = outputs[at];
      return output ? rankOf(output) : 0;
    };
    return this.#inOrder.toSorted((a, b) => rankAt(a) - rankAt(b) || (apartM[a] ?? 0) - (apartM[b] ?? 0));
  }
}

function rankOf(output: Output): number {
  return placeRank[output.place] ?? 0;
}
