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
 * Outputs for every mix that leaves the rig, two for a stereo one: the decided ones; then those that the mix's
 * devices are wired to, so that a device keeps its output from act to act; then the nearest to where the mix is
 * heard, or the lowest in order where no place is known. Never a reserved output, never one of the cue's, and
 * a network output only when those of the desk and the boxes are used up, and never a record feed.
 */
export function planOutputs(
  sheet: ActSheet,
  formats: ReadonlyMap<Id, Format>,
  devices: ReadonlyMap<Id, DevicesOfMix>,
  decided: ReadonlyMap<Id, Decided<Id[]>>,
): Map<Id, OutputsOfMix> {
  const open = openOutputs(sheet);
  const { deviceById } = indexSheet(sheet);
  const result = new Map<Id, OutputsOfMix>();
  const give = (mix: Mix, outputs: OutputsOfMix) => {
    for (const id of outputs.outputIds) open.delete(id);
    result.set(mix.id, outputs);
  };
  const widthOf = (mix: Mix) => (formats.get(mix.id) === 'stereo' ? 2 : 1);

  for (const mix of sheet.mixes) {
    const settled = settledOutputs(sheet, mix, widthOf(mix), decided.get(mix.id));
    if (settled) give(mix, settled);
  }
  for (const mix of sheet.mixes) {
    if (result.has(mix.id)) continue;
    const wired = wiredOutputs(devices.get(mix.id), deviceById);
    if (wired.length >= widthOf(mix) && wired.every((id) => open.has(id)))
      give(mix, { outputIds: wired, by: 'proposal', why: 'Its device is wired to this output.' });
  }
  const nearest = new NearestOutputs(sheet, open);
  for (const mix of sheet.mixes) {
    if (result.has(mix.id)) continue;
    const place = placeOf(mix);
    const outputIds = nearest.to(place, widthOf(mix));
    const why = place ? 'The free output nearest to where it is heard.' : 'The lowest free output in order.';
    give(mix, { outputIds, by: 'proposal', why: outputIds.length > 0 ? why : 'No output is left for it.' });
  }
  return result;
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
  return new Map(
    sheet.outputs
      .filter(
        (output) => output.reservedFor === null && !cues.has(output.id) && placeRank[output.place] !== null,
      )
      .map((output) => [output.id, output]),
  );
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

/** The outputs that are still free, to be searched from a place on the stage. */
class NearestOutputs {
  readonly #open: ReadonlyMap<Id, Output>;
  /** What is still free. */
  readonly #inOrder: Output[];
  readonly #placeOfOutput = new Map<Id, StagePlace>();
  /** For each output the one beside it on the same box, on its right. */
  readonly #right = new Map<Id, Output>();

  constructor(sheet: ActSheet, open: ReadonlyMap<Id, Output>) {
    this.#open = open;
    const outputs = [...open.values()];
    const { boxById } = indexSheet(sheet);
    for (const output of outputs) {
      const box = output.boxId === null ? undefined : boxById.get(output.boxId);
      const place = placeOf(output) ?? (box ? placeOf(box) : null);
      if (place) this.#placeOfOutput.set(output.id, place);
    }
    const boxPlace = new Map(sheet.boxes.map((box, place) => [box.id, place]));
    const placeOfBox = ({ boxId }: Output) =>
      (boxId === null ? undefined : boxPlace.get(boxId)) ?? sheet.boxes.length;
    this.#inOrder = outputs.sort(
      (a, b) => rankOf(a) - rankOf(b) || placeOfBox(a) - placeOfBox(b) || a.number - b.number,
    );
    // Outputs of one box lie beside each other in this order, except where the desk and a network share a rank.
    for (const [at, output] of this.#inOrder.entries()) {
      const next = this.#inOrder[at + 1];
      const right = next && isNextOf(output, next) ? next : outputs.find((it) => isNextOf(output, it));
      if (right) this.#right.set(output.id, right);
    }
  }

  /** Takes one or two free outputs, the nearest first; neighbours where a stereo mix can have them; empty: none left. */
  to(place: StagePlace | null, width: number): Id[] {
    const free = this.#nearestFirst(place);
    const [first, second] = free;
    if (!first) return [];
    if (width === 1) return this.#give(first);
    for (const left of free) {
      const right = this.#right.get(left.id);
      if (right && this.#open.has(right.id)) return this.#give(left, right);
    }
    // Two that are not neighbours still carry a stereo mix; one alone does not.
    return second ? this.#give(first, second) : [];
  }

  #give(...outputs: Output[]): Id[] {
    for (const output of outputs) this.#inOrder.splice(this.#inOrder.indexOf(output), 1);
    return outputs.map((output) => output.id);
  }

  #nearestFirst(place: StagePlace | null): Output[] {
    if (!place) return this.#inOrder;
    const apartM = new Map(
      this.#inOrder.map((output) => {
        const there = this.#placeOfOutput.get(output.id);
        return [output.id, there ? distanceM(place, there) : Number.MAX_VALUE];
      }),
    );
    return this.#inOrder.toSorted(
      (a, b) => rankOf(a) - rankOf(b) || (apartM.get(a.id) ?? 0) - (apartM.get(b.id) ?? 0),
    );
  }
}

function rankOf(output: Output): number {
  return placeRank[output.place] ?? 0;
}
