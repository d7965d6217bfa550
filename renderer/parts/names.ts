import type { PlannedMix } from '../../core/plan/plan.ts';
import type { Mix, Performer } from '../../core/show/act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import type { Id } from '../../core/show/rig.ts';
import { words } from '../wording/words.ts';

/** The number of a mix on its act's list, from 1. */
export function mixNumber(sheet: ActSheet, mixId: Id): number {
  return sheet.mixes.findIndex((mix) => mix.id === mixId) + 1;
}

export function listenersOf(sheet: ActSheet, mixId: Id): Performer[] {
  const ids = new Set(sheet.listeners.filter((it) => it.mixId === mixId).map((it) => it.performerId));
  return sheet.performers.filter((performer) => ids.has(performer.id));
}

/** Who listens to a mix, or its own name where nobody is named. */
export function whoHears(sheet: ActSheet, mix: Mix): string {
  const names = listenersOf(sheet, mix.id).map((performer) => performer.name);
  return names.length > 0 ? names.join(', ') : mix.name;
}

export function deviceText(mix: Mix): string {
  if (mix.deviceKind === null) return words.deviceUnknown;
  return `${deviceKindText(mix)}${mix.format === 'stereo' ? ' stereo' : ''}`;
}

/** Without its format, where two buses beside it say that it is stereo. */
export function deviceKindText({ deviceKind, deviceCount }: Mix): string {
  if (deviceKind === null) return words.deviceUnknown;
  return `${deviceCount > 1 ? `${deviceCount} × ` : ''}${words.deviceKind[deviceKind]}`;
}

/** Buses of a mix: "7" or "7/8"; null without one. */
export function busText(sheet: ActSheet, planned: PlannedMix | undefined): string | null {
  return joined(planned?.busIds.map((id) => sheet.buses.find((bus) => bus.id === id)?.number));
}

/** Outputs of a mix by their names: "Out 3", "Out 3/4" or "Out 3/Desk 1"; null without one. */
export function outputText(sheet: ActSheet, planned: PlannedMix | undefined): string | null {
  const names = planned?.outputIds.map((id) => sheet.outputs.find((output) => output.id === id)?.name);
  return joined(names?.map((name, place) => (place === 0 ? name : withoutStartOf(names[0], name))));
}

/** What a name says more than another whose words it begins with: the 4 of "Out 4" behind "Out 3". */
function withoutStartOf(first: string | undefined, name: string | undefined): string | undefined {
  const start = name?.slice(0, name.lastIndexOf(' ') + 1) ?? '';
  return start !== '' && first?.startsWith(start) ? name?.slice(start.length) : name;
}

export function deviceNames(sheet: ActSheet, planned: PlannedMix | undefined): string | null {
  return joined(planned?.deviceIds.map((id) => sheet.devices.find((device) => device.id === id)?.name));
}

function joined(parts: readonly (string | number | undefined)[] | undefined): string | null {
  const known = parts?.filter((part) => part !== undefined) ?? [];
  return known.length > 0 ? known.join('/') : null;
}
