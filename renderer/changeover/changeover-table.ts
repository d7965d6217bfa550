import type { Id } from '../../core/show/rig.ts';
import { socketName } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';

/** What is done at one socket between two acts. */
export type SocketTask = {
  socket: string;
  /** What is pulled, or null where the socket was free. */
  pull: string | null;
  /** What is plugged, or null where it stays free. */
  plug: string | null;
  phantom: 'goes off' | 'comes on' | 'stays on' | 'stays off';
};

export type BoxTasks = { name: string; tasks: SocketTask[]; stays: number };

type Plugged = { name: string; phantomOn: boolean };

/** What differs between the sockets of two acts, box by box. Before the first act every socket is free. */
export function changeoverByBox(from: ActOnScreen | null, to: ActOnScreen): BoxTasks[] {
  const before = from ? pluggedBySocket(from) : new Map<Id, Plugged>();
  const after = pluggedBySocket(to);
  return to.sheet.boxes.map((box) => {
    const sockets = to.sheet.sockets.filter((socket) => socket.boxId === box.id);
    const used = sockets.filter(({ id }) => before.has(id) || after.has(id));
    const changed = used.filter(({ id }) => before.get(id)?.name !== after.get(id)?.name);
    const tasks = changed.map(({ id }): SocketTask => {
      const [old, next] = [before.get(id), after.get(id)];
      return {
        socket: socketName(to.sheet, id) ?? '',
        pull: old?.name ?? null,
        plug: next?.name ?? null,
        phantom: phantomStep(old?.phantomOn ?? false, next?.phantomOn ?? false),
      };
    });
    return { name: box.name, tasks, stays: used.length - changed.length };
  });
}

function phantomStep(was: boolean, becomes: boolean): SocketTask['phantom'] {
  if (was) return becomes ? 'stays on' : 'goes off';
  return becomes ? 'comes on' : 'stays off';
}

function pluggedBySocket({ sheet, derived }: ActOnScreen): Map<Id, Plugged> {
  const names = new Map(sheet.sources.map((source) => [source.id, source.name]));
  return new Map(
    derived.plan.patches.flatMap(({ sourceId, socketId, phantomOn }) => {
      const name = names.get(sourceId);
      return socketId === null || name === undefined ? [] : [[socketId, { name, phantomOn }] as const];
    }),
  );
}
