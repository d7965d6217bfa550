import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Device, Id, Output } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import { distanceM, placeOf, type StagePlace } from '../show/stage-place.ts';
import type { Format } from '../show/words.ts';
import type { Decided } from './decided.ts';
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
  decided: ReadonlyMap<Id, Decided<Id[]>>,
): OutputsOfMix[] {
  const open = openOutputs(sheet);
  const { deviceById } = indexSheet(sheet);
  const widthOf = (at: number) => (formats[at] === 'stereo' ? 2 : 1);
  const given = sheet.mixes.map((mix, at) => settledOutputs(sheet, mix, widthOf(at), decided.get(mix.id)));
  for (const outputs of given) for (const id of outputs?.outputIds ?? []) open.delete(id);

  sheet.mixes.forEach((_, at) => {
    const wired = given[at] ? [] : wiredOutputs(devices[at], deviceById);
    if (wired.length < widthOf(at) || !wired.every((id) => open.has(id))) return;
    for (const id of wired) open.delete(id);
    given[at] = { outputIds: wired, by: 'proposal', why: 'Its device is wired to this output.' };
  });

  const nearest = new NearestOutputs(sheet, open);
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

function openOutputs(sheet: ActSheet): Map<Id, Output> {
  const cues = cueOutputIds(sheet);
  const open = new Map<Id, Output>();
  for (const output of sheet.outputs)
    if (output.reservedFor === null && placeRank[output.place] !== null && !cues.has(output.id))
      open.set(output.id, output);
  return open;
}

/** All outputs that a mix's devices are wired to: two wedges on one mono mix may hang on two. */
function wiredOutputs(devices: DevicesOfMix | undefined, byId: ReadonlyMap<Id, Device>): Id[] {
  const wired: Id[] = [];
  for (const deviceId of devices?.deviceIds ?? []) {
    const device = byId.get(deviceId);
    for (const id of device ? [device.outputId, device.secondOutputId] : [])
      if (id !== null && !wired.includes(id)) wired.push(id);
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

function isNextOf(first: Output, output: Output): boolean {
  const sameBox = output.place === first.place && output.boxId === first.boxId;
  return sameBox && output.number === first.number + 1;
}

/** A free output, and where it stands. */
type FreeOutput = {
  output: Output;
  place: StagePlace | null;
  /** What it is sorted by before its number: what is made for mixes first, then the order of the boxes. */
  order: number;
  /** The one beside it on the same box, on its right. */
  right: FreeOutput | null;
  taken: boolean;
};

/** More boxes than a rig has. */
const mostBoxes = 100_000;

/** The outputs that are still free, to be searched from a place on the stage. */
class NearestOutputs {
  /** What is still free. */
  readonly #inOrder: FreeOutput[] = [];

  constructor(sheet: ActSheet, open: ReadonlyMap<Id, Output>) {
    const placeOfBox = new Map<Id | null, number>(sheet.boxes.map((box, place) => [box.id, place]));
    for (const output of open.values()) {
      const boxAt = placeOfBox.get(output.boxId) ?? sheet.boxes.length;
      const box = sheet.boxes[boxAt];
      const place = placeOf(output) ?? (box ? placeOf(box) : null);
      this.#inOrder.push({
        output,
        place,
        order: rankOf(output) * mostBoxes + boxAt,
        right: null,
        taken: false,
      });
    }
    this.#inOrder.sort((a, b) => a.order - b.order || a.output.number - b.output.number);
    // Outputs of one box lie beside each other in this order, except where the desk and a network share a rank.
    this.#inOrder.forEach((free, at) => {
      const isRight = (it: FreeOutput | undefined) => it !== undefined && isNextOf(free.output, it.output);
      const next = this.#inOrder[at + 1];
      free.right = (isRight(next) ? next : this.#inOrder.find(isRight)) ?? null;
    });
  }

  /** Takes one or two free outputs, the nearest first; neighbours where a stereo mix can have them; empty: none left. */
  take(place: StagePlace | null, width: number): Id[] {
    const free = place ? this.#nearestFirst(place) : this.#inOrder;
    const [first, second] = free;
    if (!first) return [];
    if (width === 1) return this.#give(first);
    for (const left of free) {
      if (left.right && !left.right.taken) return this.#give(left, left.right);
    }
    // Two that are not neighbours still carry a stereo mix; one alone does not.
    return second ? this.#give(first, second) : [];
  }

  #give(...taken: FreeOutput[]): Id[] {
    for (const it of taken) {
      it.taken = true;
      this.#inOrder.splice(this.#inOrder.indexOf(it), 1);
    }
    return taken.map(({ output }) => output.id);
  }

  #nearestFirst(from: StagePlace): FreeOutput[] {
    const apartM = new Map(
      this.#inOrder.map((it) => [it, it.place ? distanceM(from, it.place) : Number.MAX_VALUE]),
    );
    return this.#inOrder.toSorted(
      (a, b) => rankOf(a.output) - rankOf(b.output) || (apartM.get(a) ?? 0) - (apartM.get(b) ?? 0),
    );
  }
}

function rankOf(output: Output): number {
  return placeRank[output.place] ?? 0;
}
