import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { addToList } from '../show/add-to-list.ts';
import type { Device, Id } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import type { DeviceKind, Format } from '../show/words.ts';
import type { DecidedOf } from './decided.ts';
import type { DecidedBy } from './plan.ts';

export type DevicesOfMix = {
  deviceIds: Id[];
  /** Those of them that are in the rig. */
  devices: Device[];
  by: DecidedBy;
};

/**
 * The devices of every mix, in sheet order. A mix that listens through the house's gets those of the right kind from
 * stock, those of the right format first, in the rig's order, never one that is reserved or the engineer's. Where
 * stock is short, a mix has fewer devices than it asks for.
 */
export function planDevices(
  sheet: ActSheet,
  formats: readonly Format[],
  decided: DecidedOf<Id[]>,
): DevicesOfMix[] {
  const index = indexSheet(sheet);
  const taken = new Set<Id>();
  for (const decision of decided) for (const id of decision?.value ?? []) taken.add(id);
  const stocks = new Map<DeviceKind, Device[]>();
  for (const device of sheet.devices)
    if (isForPerformers(device) && !(taken.size > 0 && taken.has(device.id)))
      addToList(stocks, device.kind, device);
  return sheet.mixes.map((mix, at): DevicesOfMix => {
    const decision = decided[at];
    if (decision) {
      const { value, by } = decision;
      return { deviceIds: value, devices: value.flatMap((id) => index.device(id) ?? []), by };
    }
    const stock = mix.deviceKind === null || !usesHouseDevice(mix) ? undefined : stocks.get(mix.deviceKind);
    if (!stock) return noDevices;
    const devices = takeDevices(stock, mix.deviceCount, formats[at] ?? 'mono');
    return { deviceIds: devices.map(({ id }) => id), devices, by: 'proposal' };
  });
}

const noDevices: DevicesOfMix = { deviceIds: [], devices: [], by: 'proposal' };

/** Whether a mix is to be heard through devices of the house. */
export function usesHouseDevice(mix: Mix): boolean {
  return mix.deviceKind !== null && mix.ownDevice !== true;
}

/** Whether a device may be handed to a performer at all. */
function isForPerformers(device: Device): boolean {
  return !device.forCue && device.reservedFor === null;
}

/** Takes up to `count` devices out of a stock, those of the right format first. */
function takeDevices(stock: Device[], count: number, format: Format): Device[] {
  const devices: Device[] = [];
  for (let pass = 0; pass < 2; pass++)
    for (let at = 0; at < stock.length && devices.length < count; ) {
      const device = stock[at];
      if (device && (device.format === format) === (pass === 0)) {
        devices.push(device);
        stock.splice(at, 1);
      } else at++;
    }
  return devices;
}
