import type { Mix } from '../show/act.ts';
import type { Id } from '../show/rig.ts';
import { placeOf, type StagePlace } from '../show/stage-place.ts';
import type { ActPatch } from './act-patch.ts';
import type { TaskSubject } from './task.ts';

/** A device of the house in the hands of a mix. */
export type DevicePlace = {
  name: string;
  isPack: boolean;
  mix: Mix;
  place: StagePlace | null;
  about: TaskSubject;
  /** The task that has to bring it back first. */
  waitsFor?: number;
};

/** The house's devices that an act uses, and where. */
export function devicePlaces(side: ActPatch): Map<Id, DevicePlace> {
  const devices = new Map(side.sheet.devices.map((device) => [device.id, device]));
  return new Map(
    side.plan.mixes.flatMap(({ mixId, deviceIds }) => {
      const mix = side.sheet.mixes.find((it) => it.id === mixId);
      if (!mix) return [];
      return deviceIds.flatMap((id) => {
        const device = devices.get(id);
        if (!device) return [];
        const place = placeOf(mix);
        const about = { mixId, deviceId: id, place, placeName: mix.place || mix.name };
        return [[id, { name: device.name, isPack: device.kind === 'in-ear', mix, place, about }] as const];
      });
    }),
  );
}
