import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Device, Id } from '../show/rig.ts';
import type { Format } from '../show/words.ts';
import type { Decided } from './decided.ts';
import type { DecidedBy } from './plan.ts';

export type DevicesOfMix = { deviceIds: Id[]; by: DecidedBy };

/**
 * The devices of every mix that listens through the house's: of the right kind from stock, those of the right
 * format first, in the rig's order, never one that is reserved or the engineer's. Where stock is short, a mix has
 * fewer devices than it asks for.
 */
export function planDevices(
  sheet: ActSheet,
  formats: ReadonlyMap<Id, Format>,
  decided: ReadonlyMap<Id, Decided<Id[]>>,
): Map<Id, DevicesOfMix> {
  const free = new Map(sheet.devices.filter(isForPerformers).map((device) => [device.id, device]));
  const result = new Map<Id, DevicesOfMix>();
  for (const mix of sheet.mixes) {
    const decision = decided.get(mix.id);
    if (!decision) continue;
    for (const id of decision.value) free.delete(id);
    result.set(mix.id, { deviceIds: decision.value, by: decision.by });
  }
  for (const mix of sheet.mixes) {
    if (result.has(mix.id)) continue;
    const deviceIds = usesHouseDevice(mix) ? takeDevices(free, mix, formats.get(mix.id) ?? 'mono') : [];
    result.set(mix.id, { deviceIds, by: 'proposal' });
  }
  return result;
}

/** Whether a mix is to be heard through devices of the house. */
export function usesHouseDevice(mix: Mix): boolean {
  return mix.deviceKind !== null && mix.ownDevice !== true;
}

/** Whether a device may be handed to a performer at all. */
function isForPerformers(device: Device): boolean {
  return !device.forCue && device.reservedFor === null;
}

function takeDevices(free: Map<Id, Device>, mix: Mix, format: Format): Id[] {
  const ofKind = [...free.values()].filter((device) => device.kind === mix.deviceKind);
  const inOrder = [
    ...ofKind.filter((device) => device.format === format),
    ...ofKind.filter((device) => device.format !== format),
  ].slice(0, mix.deviceCount);
  for (const device of inOrder) free.delete(device.id);
  return inOrder.map((device) => device.id);
}
