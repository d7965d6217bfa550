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
  const taken = new Set<Id>();
  const result = new Map<Id, DevicesOfMix>();
  for (const mix of sheet.mixes) {
    const decision = decided.get(mix.id);
    if (!decision) continue;
    for (const id of decision.value) taken.add(id);
    result.set(mix.id, { deviceIds: decision.value, by: decision.by });
  }
  const free = Map.groupBy(
    sheet.devices.filter((device) => isForPerformers(device) && !taken.has(device.id)),
    (device) => device.kind,
  );
  for (const mix of sheet.mixes) {
    if (result.has(mix.id)) continue;
    const stock = mix.deviceKind === null || !usesHouseDevice(mix) ? undefined : free.get(mix.deviceKind);
    const deviceIds = stock ? takeDevices(stock, mix.deviceCount, formats.get(mix.id) ?? 'mono') : [];
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

/** Takes up to `count` devices out of a stock, those of the right format first. */
function takeDevices(stock: Device[], count: number, format: Format): Id[] {
  const deviceIds: Id[] = [];
  for (const right of [true, false])
    for (let at = 0; at < stock.length && deviceIds.length < count; ) {
      const device = stock[at];
      if (device && (device.format === format) === right) {
        deviceIds.push(device.id);
        stock.splice(at, 1);
      } else at++;
    }
  return deviceIds;
}
