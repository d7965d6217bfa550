import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Device, Id } from '../show/rig.ts';
import type { DeviceKind, Format } from '../show/words.ts';
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
  const stock = Map.groupBy(sheet.devices.filter(isForPerformers), (device) => device.kind);
  const taken = new Set<Id>();
  const result = new Map<Id, DevicesOfMix>();
  for (const mix of sheet.mixes) {
    const decision = decided.get(mix.id);
    if (!decision) continue;
    for (const id of decision.value) taken.add(id);
    result.set(mix.id, { deviceIds: decision.value, by: decision.by });
  }
  for (const mix of sheet.mixes) {
    if (result.has(mix.id)) continue;
    const deviceIds = usesHouseDevice(mix)
      ? takeDevices(stock, taken, mix, formats.get(mix.id) ?? 'mono')
      : [];
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

function takeDevices(
  stock: ReadonlyMap<DeviceKind, readonly Device[]>,
  taken: Set<Id>,
  mix: Mix,
  format: Format,
): Id[] {
  const free = (mix.deviceKind === null ? [] : (stock.get(mix.deviceKind) ?? [])).filter(
    ({ id }) => !taken.has(id),
  );
  const deviceIds = [
    ...free.filter((device) => device.format === format),
    ...free.filter((device) => device.format !== format),
  ]
    .slice(0, mix.deviceCount)
    .map((device) => device.id);
  for (const id of deviceIds) taken.add(id);
  return deviceIds;
}
