import { type ActSheet, actSheet, actsOfDay } from '../show/act-sheet.ts';
import type { Device, Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';
import { indexDecisions } from './decided.ts';
import { mixFormats } from './mix-format.ts';
import type { Plan, PlannedMix, PlannedPatch } from './plan.ts';
import { planBuses } from './plan-buses.ts';
import { planCopies } from './plan-copies.ts';
import { planDevices } from './plan-devices.ts';
import { planOutputs } from './plan-outputs.ts';
import { planPhantom } from './plan-phantom.ts';
import { planSockets } from './plan-sockets.ts';

/**
 * A whole plan for one act by a simple rule: whatever was decided stays, and the rest is filled in order. What
 * does not fit is null or an empty list, never left out; `deriveAct` turns it into findings.
 */
export function planAct(sheet: ActSheet): Plan {
  return planWithDevices(sheet).plan;
}

/** The plan of an act, and for each mix the rows of its devices, as far as they are in the rig. */
export function planWithDevices(sheet: ActSheet): { plan: Plan; devices: Device[][] } {
  const decided = indexDecisions(sheet);
  const { copies, passedOver } = planCopies(sheet);
  const sockets = planSockets(sheet, decided.socketOfSource);
  const phantom = planPhantom(sheet, sockets, decided.phantomOfSource);
  const formats = mixFormats(sheet);
  const buses = planBuses(sheet, formats, decided.busesOfMix);
  const devices = planDevices(sheet, formats, decided.devicesOfMix);
  const outputs = planOutputs(sheet, formats, devices, decided.outputsOfMix);

  const patches = sheet.sources.map((source, at): PlannedPatch => {
    const socket = sockets[at];
    const power = phantom[at];
    return {
      sourceId: source.id,
      socketId: socket?.socketId ?? null,
      by: socket?.by ?? 'proposal',
      phantomOn: power?.on ?? false,
      phantomBy: power?.by ?? 'proposal',
      why: socket?.why ?? '',
    };
  });
  const mixes = sheet.mixes.map((mix, at): PlannedMix => {
    const ofBus = buses[at];
    const ofOutput = outputs[at];
    const ofDevice = devices[at];
    return {
      mixId: mix.id,
      format: formats[at] ?? 'mono',
      busIds: ofBus?.busIds ?? [],
      busBy: ofBus?.by ?? 'proposal',
      outputIds: ofOutput?.outputIds ?? [],
      outputBy: ofOutput?.by ?? 'proposal',
      deviceIds: ofDevice?.deviceIds ?? [],
      deviceBy: ofDevice?.by ?? 'proposal',
      why: ofOutput?.why ?? '',
    };
  });
  return { plan: { copies, patches, mixes, passedOver }, devices: devices.map((ofMix) => ofMix.devices) };
}

export type ActWithPlan = { sheet: ActSheet; plan: Plan };

/** The acts of a day in running order, each with the plan that it has by itself. */
export function actsWithPlans(show: Show, dayId: Id): ActWithPlan[] {
  return actsOfDay(show, dayId).flatMap((act) => {
    const sheet = actSheet(show, act.id);
    return sheet ? [{ sheet, plan: planAct(sheet) }] : [];
  });
}
