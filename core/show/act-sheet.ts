import type { Act, Alternate, Copy, Day, Decision, Listener, Mix, Performer, Source, Wish } from './act.ts';
import type { RiderRecord } from './rider-record.ts';
import type { Box, Bus, CueOutput, Device, Id, Output, Rig, Socket, StockItem } from './rig.ts';
import type { Show } from './show.ts';

/** Everything that one act's plan follows from: the act's own rows and the rig it plays on, each in its order. */
export type ActSheet = {
  rig: Rig;
  boxes: Box[];
  sockets: Socket[];
  buses: Bus[];
  outputs: Output[];
  devices: Device[];
  cueOutputs: CueOutput[];
  /** What the house has a number of. */
  stockItems: StockItem[];
  day: Day;
  act: Act;
  performers: Performer[];
  sources: Source[];
  mixes: Mix[];
  listeners: Listener[];
  wishes: Wish[];
  copies: Copy[];
  alternates: Alternate[];
  decisions: Decision[];
  /** The riders that the act came from, the oldest first. */
  riders: RiderRecord[];
};

const byOrder = (a: { order: number }, b: { order: number }) => a.order - b.order;
const byNumber = (a: { number: number }, b: { number: number }) => a.number - b.number;

/** Gathers the sheet of an act, or null where the act (or its day or rig) is not in the show. */
export function actSheet(show: Show, actId: Id): ActSheet | null {
  const act = show.acts.get(actId);
  const day = act && show.days.get(act.dayId);
  const rig = day && show.rigs.get(day.rigId);
  if (!act || !day || !rig) return null;

  const ofRig = <T extends { rigId: Id }>(rows: ReadonlyMap<Id, T>) =>
    [...rows.values()].filter((row) => row.rigId === rig.id);
  const ofAct = <T extends { actId: Id }>(rows: ReadonlyMap<Id, T>) =>
    [...rows.values()].filter((row) => row.actId === actId);

  const boxes = ofRig(show.boxes).sort(byOrder);
  const boxPlace = new Map(boxes.map((box, place) => [box.id, place]));
  const mixes = ofAct(show.mixes).sort(byOrder);
  const mixIds = new Set(mixes.map((mix) => mix.id));
  const sources = ofAct(show.sources).sort(byOrder);
  const sourceIds = new Set(sources.map((source) => source.id));

  return {
    rig,
    boxes,
    sockets: [...show.sockets.values()]
      .filter((socket) => boxPlace.has(socket.boxId))
      .sort((a, b) => (boxPlace.get(a.boxId) ?? 0) - (boxPlace.get(b.boxId) ?? 0) || byNumber(a, b)),
    buses: ofRig(show.buses).sort(byNumber),
    outputs: ofRig(show.outputs).sort(byNumber),
    devices: ofRig(show.devices).sort(byOrder),
    cueOutputs: ofRig(show.cueOutputs),
    stockItems: ofRig(show.stockItems).sort(byOrder),
    day,
    act,
    performers: ofAct(show.performers).sort(byOrder),
    sources,
    mixes,
    listeners: [...show.listeners.values()].filter((row) => mixIds.has(row.mixId)),
    wishes: [...show.wishes.values()].filter((row) => mixIds.has(row.mixId)).sort(byOrder),
    copies: [...show.copies.values()].filter((row) => sourceIds.has(row.sourceId)),
    alternates: [...show.alternates.values()].filter((row) => sourceIds.has(row.sourceId)).sort(byOrder),
    decisions: ofAct(show.decisions),
    riders: ofAct(show.riders).sort(byOrder),
  };
}

/** The acts of a day in running order. */
export function actsOfDay(show: Show, dayId: Id): Act[] {
  return [...show.acts.values()].filter((act) => act.dayId === dayId).sort(byOrder);
}
