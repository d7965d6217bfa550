import type { Decision, Mix } from '../../show/act.ts';
import type { ActSheet } from '../../show/act-sheet.ts';
import type { Bus, Id, Output } from '../../show/rig.ts';
import { distanceM, placeOf } from '../../show/stage-place.ts';
import { indexDecisions } from '../decided.ts';
import { mixFormats } from '../mix-format.ts';
import { planDevices } from '../plan-devices.ts';
import { cueOutputIds, leavesRig } from '../plan-outputs.ts';
import { patchCosts } from './costs.ts';
import { type Item, type Layer, linkKeys, type Slot, type SlotGroup } from './problem.ts';
import { roleCounter } from './roles.ts';

/** Mixes of the house desk to buses: the same performer role wants the same bus in every act; a move costs 1. */
export function buildBusLayer(sheets: readonly ActSheet[]): Layer {
  const first = sheets[0];
  const cueBuses = new Set(first?.cueOutputs.map((cue) => cue.busId));
  const forMixes = (first?.buses ?? []).filter((bus) => !cueBuses.has(bus.id));
  const buses = forMixes.filter((bus) => bus.reservedFor === null);
  const slotOf = (bus: Bus, index: number): Slot => ({
    group: 0,
    id: bus.id,
    number: bus.number,
    name: `bus ${bus.number}`,
    bank: index,
    pairedWith: bus.number % 2 === 1 && buses[index + 1]?.number === bus.number + 1 ? index + 1 : -1,
  });
  const slots = buses.map(slotOf);
  const heldBack = forMixes.flatMap((bus) =>
    bus.reservedFor === null
      ? []
      : [{ slot: { ...slotOf(bus, -1), pairedWith: -1 }, reservedFor: bus.reservedFor }],
  );
  const items = mixItems(sheets, slots, 'bus', (mix) => mix.mixedAt === 'house desk');
  for (const item of items) item.hotCost = [item.previous < 0 ? 0 : item.width];
  const groups = [{ name: 'desk', slots: slots.map((_, index) => index) }];
  return { ...layerOf('buses', sheets, groups, slots, items), heldBack };
}

/**
 * Mixes that leave the rig to outputs: the same role wants the same output, and every mix wants one near where it
 * is heard. A move costs as much as re-plugging a line; distance decides between outputs that are else alike.
 */
export function buildOutputLayer(sheets: readonly ActSheet[]): Layer {
  const first = sheets[0];
  const cues = first ? cueOutputIds(first) : new Set<Id>();
  const forMixes = (first?.outputs ?? [])
    .filter((output) => !cues.has(output.id) && output.place !== 'record')
    .sort((a, b) => placeName(a).localeCompare(placeName(b)) || a.number - b.number);
  const outputs = forMixes.filter((output) => output.reservedFor === null);
  const names = [...new Set(forMixes.map(placeName))];
  const slotOf = (output: Output, bank: number): Slot => ({
    group: names.indexOf(placeName(output)),
    id: output.id,
    number: output.number,
    name: output.name,
    bank,
    pairedWith: -1,
  });
  const slots = outputs.map((output, index): Slot => {
    const next = outputs[index + 1];
    const isPair = next && placeName(next) === placeName(output) && next.number === output.number + 1;
    return { ...slotOf(output, index), pairedWith: output.number % 2 === 1 && isPair ? index + 1 : -1 };
  });
  const heldBack = forMixes.flatMap((output) =>
    output.reservedFor === null ? [] : [{ slot: slotOf(output, -1), reservedFor: output.reservedFor }],
  );
  const groups = names.map((name, group) => ({
    name,
    slots: slots.flatMap((slot, index) => (slot.group === group ? [index] : [])),
  }));
  const items = mixItems(sheets, slots, 'output', leavesRig, groups);
  const mixes = new Map(sheets.flatMap((sheet) => sheet.mixes.map((mix) => [mix.id, mix] as const)));
  for (const item of items) {
    const mix = mixes.get(item.ids[0] ?? '');
    item.hotCost = groups.map((group) => {
      const move = item.previous < 0 ? 0 : patchCosts.plug;
      return item.width * (move + metresToGroup(mix, group, outputs));
    });
  }
  return { ...layerOf('outputs', sheets, groups, slots, items), heldBack };
}

/** Outputs of one box, or of one kind of place, are one group. */
function placeName(output: Output): string {
  return output.boxId === null ? output.place : `${output.place} ${output.boxId}`;
}

function metresToGroup(mix: Mix | undefined, group: SlotGroup, outputs: readonly Output[]): number {
  const from = mix ? placeOf(mix) : null;
  const places = group.slots.flatMap((slot) => {
    const output = outputs[slot];
    return (output && placeOf(output)) ?? [];
  });
  if (!from || places.length === 0) return 0;
  return Math.round(places.reduce((sum, place) => sum + distanceM(from, place), 0) / places.length);
}

function layerOf(
  of: 'buses' | 'outputs',
  sheets: readonly ActSheet[],
  groups: SlotGroup[],
  slots: Slot[],
  items: Item[],
): Layer {
  const acts = sheets.map((sheet) => ({
    actId: sheet.act.id,
    name: sheet.act.name,
    spareCount: 0,
    spareGroups: [],
  }));
  for (const item of items) item.coldCost = item.hotCost;
  return { of, acts, groups, slots, items, canPrepare: false };
}

function mixItems(
  sheets: readonly ActSheet[],
  slots: readonly Slot[],
  about: 'bus' | 'output',
  isWanted: (mix: Mix) => boolean,
  groups: readonly SlotGroup[] = [{ name: '', slots: [] }],
): Item[] {
  const items = sheets.flatMap((sheet, act) => {
    const formats = mixFormats(sheet);
    const nextRole = roleCounter();
    const wired = about === 'output' ? wiredOutputs(sheet) : new Map<Id, Id>();
    const wanted = sheet.mixes.flatMap((mix, at) => (isWanted(mix) ? [{ mix, format: formats[at] }] : []));
    return wanted.map(({ mix, format }, place): Item => {
      const width = format === 'stereo' ? 2 : 1;
      const decided = decidedSlots(sheet.decisions, mix, about, slots, width);
      const toDevice = slots.findIndex((slot) => slot.id === wired.get(mix.id));
      return {
        act,
        name: mix.name,
        ids: [mix.id],
        detail: '',
        width,
        phantom: 'any',
        key: nextRole(`${roleOf(sheet, mix)} ${width}`),
        previous: -1,
        next: -1,
        locked: decided.locked ?? (toDevice >= 0 && fits(slots, toDevice, width) ? toDevice : null),
        earlier: decided.earlier,
        mustPrepare: false,
        reach: groups.map((_, group) => group),
        hotCost: [],
        coldCost: [],
        rank: place,
      };
    });
  });
  return linkKeys(items);
}

function fits(slots: readonly Slot[], slot: number, width: number): boolean {
  return width === 1 || (slots[slot]?.pairedWith ?? -1) >= 0;
}

/** Who hears it, in words that mean the same in the next act: the role, else where and through what. */
function roleOf(sheet: ActSheet, mix: Mix): string {
  const listener = sheet.listeners.find((it) => it.mixId === mix.id);
  const performer = sheet.performers.find((it) => it.id === listener?.performerId);
  const role = performer?.role || mix.place || performer?.place || mix.name;
  return `${role.trim().toLowerCase()} ${mix.deviceKind ?? ''}`;
}

function decidedSlots(
  decisions: readonly Decision[],
  mix: Mix,
  about: 'bus' | 'output',
  slots: readonly Slot[],
  width: number,
): { locked: number | null; earlier: number | null } {
  const rows = decisions.filter((it) => it.about === about && 'mixId' in it && it.mixId === mix.id);
  const found = rows.flatMap((row) => {
    const id = row.about === 'bus' ? row.busId : row.about === 'output' ? row.outputId : '';
    const slot = slots.findIndex((it) => it.id === id);
    return slot < 0 ? [] : [{ slot, isLocked: row.locked }];
  });
  const slot = found.length === 0 ? -1 : Math.min(...found.map((it) => it.slot));
  if (slot < 0 || !fits(slots, slot, width)) return { locked: null, earlier: null };
  return { locked: found.some((it) => it.isLocked) ? slot : null, earlier: slot };
}

/** Mixes whose device is wired to an output keep to it; of two mixes on one output only the first does. */
function wiredOutputs(sheet: ActSheet): Map<Id, Id> {
  const devices = planDevices(sheet, mixFormats(sheet), indexDecisions(sheet).devicesOfMix);
  const byId = new Map(sheet.devices.map((device) => [device.id, device]));
  const wired = new Map<Id, Id>();
  const taken = new Set<Id>();
  for (const [at, mix] of sheet.mixes.entries()) {
    const outputId = byId.get(devices[at]?.deviceIds[0] ?? '')?.outputId;
    if (!outputId || taken.has(outputId)) continue;
    taken.add(outputId);
    wired.set(mix.id, outputId);
  }
  return wired;
}
