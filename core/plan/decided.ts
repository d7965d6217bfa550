import type { ActSheet } from '../show/act-sheet.ts';
import { remembered } from '../show/remember.ts';
import type { Id } from '../show/rig.ts';
import type { DecidedBy } from './plan.ts';

/** A decided value, and whose it is: a locked decision is the engineer's, an unlocked one a proposal taken. */
export type Decided<T> = { value: T; by: DecidedBy };

/** The decisions of an act by what they are about. Of two about the same, the later row holds. */
export type DecisionIndex = {
  socketOfSource: ReadonlyMap<Id, Decided<Id>>;
  phantomOfSource: ReadonlyMap<Id, Decided<boolean>>;
  /** Several rows for one mix name several buses, outputs or devices, in the order of the rows. */
  busesOfMix: ReadonlyMap<Id, Decided<Id[]>>;
  outputsOfMix: ReadonlyMap<Id, Decided<Id[]>>;
  devicesOfMix: ReadonlyMap<Id, Decided<Id[]>>;
  cueOfMix: ReadonlyMap<Id, Decided<Id>>;
};

/** Sorts the sheet's decisions by what they are about. Those on single feeds are read where feeds are made. */
export const indexDecisions = remembered((sheet: ActSheet): DecisionIndex => {
  const socketOfSource = new Map<Id, Decided<Id>>();
  const phantomOfSource = new Map<Id, Decided<boolean>>();
  const busesOfMix = new Map<Id, Decided<Id[]>>();
  const outputsOfMix = new Map<Id, Decided<Id[]>>();
  const devicesOfMix = new Map<Id, Decided<Id[]>>();
  const cueOfMix = new Map<Id, Decided<Id>>();
  for (const decision of sheet.decisions) {
    const by: DecidedBy = decision.locked ? 'engineer' : 'proposal';
    if (decision.about === 'socket') socketOfSource.set(decision.sourceId, { value: decision.socketId, by });
    else if (decision.about === 'phantom') phantomOfSource.set(decision.sourceId, { value: decision.on, by });
    else if (decision.about === 'bus') add(busesOfMix, decision.mixId, decision.busId, by);
    else if (decision.about === 'output') add(outputsOfMix, decision.mixId, decision.outputId, by);
    else if (decision.about === 'device') add(devicesOfMix, decision.mixId, decision.deviceId, by);
    else if (decision.about === 'cue') cueOfMix.set(decision.mixId, { value: decision.cueOutputId, by });
  }
  return { socketOfSource, phantomOfSource, busesOfMix, outputsOfMix, devicesOfMix, cueOfMix };
});

function add(map: Map<Id, Decided<Id[]>>, key: Id, id: Id, by: DecidedBy): void {
  const found = map.get(key);
  if (!found) map.set(key, { value: [id], by });
  else if (!found.value.includes(id)) {
    found.value.push(id);
    if (by === 'engineer') found.by = by;
  }
}
