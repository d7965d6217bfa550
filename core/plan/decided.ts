import type { ActSheet } from '../show/act-sheet.ts';
import { remembered } from '../show/remember.ts';
import type { Id } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import type { DecidedBy } from './plan.ts';

/** A decided value, and whose it is: a locked decision is the engineer's, an unlocked one a proposal taken. */
export type Decided<T> = { value: T; by: DecidedBy };

/** What was decided, by places in the sheet; undefined: nothing. */
export type DecidedOf<T> = readonly (Decided<T> | undefined)[];

/** The decisions of an act by what they are about. Of two about the same, the later row holds. */
export type DecisionIndex = {
  socketOfSource: DecidedOf<Id>;
  phantomOfSource: DecidedOf<boolean>;
  /** Several rows for one mix name several buses, outputs or devices, in the order of the rows. */
  busesOfMix: DecidedOf<Id[]>;
  outputsOfMix: DecidedOf<Id[]>;
  devicesOfMix: DecidedOf<Id[]>;
  cueOfMix: DecidedOf<Id>;
};

/** Sorts the sheet's decisions by what they are about. Those on single feeds are read where feeds are made. */
export const indexDecisions = remembered((sheet: ActSheet): DecisionIndex => {
  const { sourceAt, mixAt } = indexSheet(sheet);
  const perSource = <T>(): (Decided<T> | undefined)[] => new Array(sheet.sources.length).fill(undefined);
  const perMix = <T>(): (Decided<T> | undefined)[] => new Array(sheet.mixes.length).fill(undefined);
  const index = {
    socketOfSource: perSource<Id>(),
    phantomOfSource: perSource<boolean>(),
    busesOfMix: perMix<Id[]>(),
    outputsOfMix: perMix<Id[]>(),
    devicesOfMix: perMix<Id[]>(),
    cueOfMix: perMix<Id>(),
  };
  for (const decision of sheet.decisions) {
    const by: DecidedBy = decision.locked ? 'engineer' : 'proposal';
    const at = 'mixId' in decision ? mixAt.get(decision.mixId) : sourceAt.get(decision.sourceId);
    // What is about something that is not there decides nothing, and is a finding.
    if (at === undefined) continue;
    if (decision.about === 'socket') index.socketOfSource[at] = { value: decision.socketId, by };
    else if (decision.about === 'phantom') index.phantomOfSource[at] = { value: decision.on, by };
    else if (decision.about === 'bus') add(index.busesOfMix, at, decision.busId, by);
    else if (decision.about === 'output') add(index.outputsOfMix, at, decision.outputId, by);
    else if (decision.about === 'device') add(index.devicesOfMix, at, decision.deviceId, by);
    else if (decision.about === 'cue') index.cueOfMix[at] = { value: decision.cueOutputId, by };
  }
  return index;
});

function add(lists: (Decided<Id[]> | undefined)[], at: number, id: Id, by: DecidedBy): void {
  const found = lists[at];
  if (!found) lists[at] = { value: [id], by };
  else if (!found.value.includes(id)) {
    found.value.push(id);
    if (by === 'engineer') found.by = by;
  }
}
