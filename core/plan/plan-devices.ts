import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Device, Id } from '../show/rig.ts';
import type { Format } from '../show/words.ts';
import type { Decided } from './decided.ts';
import type { DecidedBy } from './plan.ts';

export type DevicesOfMix = { deviceIds: Id[]; by: DecidedBy };

/**
 * The devices of every mix, in sheet order. A mix that listens through the house's gets those of the right kind from
 * stock, those of the right format first, in the rig's order, never one that is reserved or the engineer's. Where
 * stock is short, a mix has fewer devices than it asks for.
 */
export function planDevices(
  sheet: ActSheet,
  formats: readonly Format[],
  decided: ReadonlyMap<Id, Decided<Id[]>>,
): DevicesOfMix[] {
  const taken = new Set<Id>();
  for (const mix of sheet.mixes) for (const id of decided.get(mix.id)?.value ?? []) taken.add(id);
  const free = Map.groupBy(
    sheet.devices.filter((device) => isForPerformers(device) && !taken.has(device.id)),
    (device) => device.kind,
  );
  return sheet.mixes.map((mix, at): DevicesOfMix => {
    const decision = decided.get(mix.id);
    if (decision) return { deviceIds: decision.value, by: decision.by };
    const stock = mix.deviceKind === null || !usesHouseDevice(mix) ? undefined : free.get(mix.deviceKind);
    const deviceIds = stock ? takeDevices(stock, mix.deviceCount, formats[at] ?? 'mono') : [];
    return { deviceIds, by: 'proposal' };
  });
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
