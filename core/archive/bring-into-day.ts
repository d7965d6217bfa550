import { ranLevelsOf } from '../run/ran-levels.ts';
import { type Decision, type Mix, Wish } from '../show/act.ts';
import type { BringBack } from '../show/bring-back.ts';
import { type ActDocument, changeOfImport } from '../show/exchange.ts';
import { feedKey } from '../show/feed-key.ts';
import type { Id, Rig } from '../show/rig.ts';
import { type Show, type ShowDocument, showFromRows } from '../show/show.ts';
import { socketOnBox } from '../show/socket-name.ts';
import { withoutRun } from './archived-act.ts';

/** Something an archived act was planned on that the rig of the day has not; it is planned anew. */
export type RigLoss = {
  what: 'socket' | 'bus' | 'output' | 'device' | 'cue output' | 'channel';
  /** As it was written on the old rig: "A3", "Out 4", "63". */
  name: string;
  /** The source or the mix it was for. */
  of: string;
};

export type BroughtIn = BringBack & { losses: RigLoss[] };

/**
 * The change that copies an archived act into a day, as a new act after the others with new ids; nothing there is
 * touched. What happened on the old day stays in the archive; of an act as it ran its levels come along, as confirmed
 * wishes. Null where there is no such day, or the document is not one act.
 */
export function bringIntoDay(
  show: Show,
  archived: ShowDocument,
  dayId: Id,
  newId: () => Id,
): BroughtIn | null {
  const rig = show.rigs.get(show.days.get(dayId)?.rigId ?? '');
  const [act] = archived.acts;
  if (!rig || !act || archived.acts.length > 1) return null;
  const times = {
    startMinute: null,
    endMinute: null,
    soundCheckStartMinute: null,
    soundCheckEndMinute: null,
  };
  const heard = withLevelsAsWishes(archived, newId);
  const { document, losses } = onRig(heard, show, rig);
  const plain: ActDocument = {
    ...withoutRun(document),
    format: 'foldbook-act',
    ...{ rigs: [], boxes: [], sockets: [], buses: [], outputs: [], devices: [], cueOutputs: [], days: [] },
    acts: [{ ...act, ...times, state: 'advancing' }],
  };
  const brought = changeOfImport(show, plain, { how: 'beside', dayId }, newId);
  return brought && { ...brought, losses };
}

/** What a level was moved to during the show, as the last wish on its source; the decisions it moved away from go. */
function withLevelsAsWishes(archived: ShowDocument, newId: () => Id): ShowDocument {
  const ran = ranLevelsOf(showFromRows(archived), archived.acts[0]?.id ?? '');
  const last = Math.max(0, ...archived.wishes.map((it) => it.order));
  const wishes = [...ran.values()].map(({ mixId, sourceId, levelDb }, place) =>
    Wish.parse({
      id: newId(),
      mixId,
      sourceId,
      order: Math.min(last + 1 + place, 100_000),
      ...(levelDb === null ? { amount: 'none' } : { levelDb }),
      confirmed: true,
    }),
  );
  return {
    ...archived,
    wishes: [...archived.wishes, ...wishes],
    decisions: archived.decisions.filter((it) => it.about !== 'level' || !ran.has(feedKey(it))),
  };
}

/** The document without what the rig has not, and that by name. */
function onRig(archived: ShowDocument, show: Show, rig: Rig): { document: ShowDocument; losses: RigLoss[] } {
  const old = showFromRows(archived);
  const losses: RigLoss[] = [];
  const decisions = archived.decisions.filter((decision) => {
    const lost = lostBy(decision, old, show, rig);
    if (lost) losses.push(lost);
    return lost === null;
  });
  const copies = archived.copies.map((copy) => {
    if (copy.channel === null || copy.channel <= rig.channelCount) return copy;
    const of = old.sources.get(copy.sourceId)?.name ?? '';
    losses.push({ what: 'channel', name: `${copy.channel}`, of });
    return { ...copy, channel: null };
  });
  const isSocketHere = (id: Id | null) => id !== null && isOnRig(show, rig, 'sockets', id);
  const document = {
    ...archived,
    decisions,
    copies,
    alternates: archived.alternates.map((it) => ({
      ...it,
      socketId: isSocketHere(it.socketId) ? it.socketId : null,
    })),
    sources: archived.sources.map((it) => ({
      ...it,
      returnsCueOutputId:
        it.returnsCueOutputId !== null && isOnRig(show, rig, 'cueOutputs', it.returnsCueOutputId)
          ? it.returnsCueOutputId
          : null,
    })),
  };
  return { document, losses };
}

type OnRig = 'sockets' | 'buses' | 'outputs' | 'devices' | 'cueOutputs';

function isOnRig(show: Show, rig: Rig, table: OnRig, id: Id): boolean {
  if (table === 'sockets') return show.boxes.get(show.sockets.get(id)?.boxId ?? '')?.rigId === rig.id;
  return show[table].get(id)?.rigId === rig.id;
}

/** What a decision names that the rig has not; null where it names nothing of the kind. */
function lostBy(decision: Decision, old: Show, show: Show, rig: Rig): RigLoss | null {
  const loss = (table: OnRig, id: Id, what: RigLoss['what'], name: string | undefined, of: string) =>
    isOnRig(show, rig, table, id) ? null : { what, name: name ?? '?', of };
  const mixOf = (id: Id) => nameOfMix(old.mixes.get(id));
  switch (decision.about) {
    case 'socket': {
      const socket = old.sockets.get(decision.socketId);
      const name = socket && socketOnBox(old.boxes.get(socket.boxId), socket);
      const of = old.sources.get(decision.sourceId)?.name ?? '';
      return loss('sockets', decision.socketId, 'socket', name, of);
    }
    case 'bus':
      return loss('buses', decision.busId, 'bus', numberOf(old, decision.busId), mixOf(decision.mixId));
    case 'output': {
      const name = old.outputs.get(decision.outputId)?.name;
      return loss('outputs', decision.outputId, 'output', name, mixOf(decision.mixId));
    }
    case 'device': {
      const name = old.devices.get(decision.deviceId)?.name;
      return loss('devices', decision.deviceId, 'device', name, mixOf(decision.mixId));
    }
    case 'cue': {
      const name = old.cueOutputs.get(decision.cueOutputId)?.name;
      return loss('cueOutputs', decision.cueOutputId, 'cue output', name, mixOf(decision.mixId));
    }
    default:
      return null;
  }
}

const numberOf = (old: Show, busId: Id) => {
  const number = old.buses.get(busId)?.number;
  return number === undefined ? undefined : `${number}`;
};

const nameOfMix = (mix: Mix | undefined) => mix?.name ?? '';
