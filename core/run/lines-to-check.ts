import type { Plan } from '../plan/plan.ts';
import type { Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Socket } from '../show/rig.ts';
import { socketName } from '../show/socket-name.ts';
import type { Purpose } from '../show/words.ts';

/** One line to be listened to at the line check. */
export type CheckLine = {
  source: Source;
  /** Its place in the act's list from 1: the number that people on stage call it by. */
  line: number;
  socket: Socket | null;
  /** As it is written on the box: "A3"; empty where it is not patched. */
  socketName: string;
  phantomOn: boolean;
  /** Its channels, the lowest first. */
  channels: { purpose: Purpose; channel: number }[];
  /** Empty where nobody is named. */
  performer: string;
};

/** Box by box, socket by socket, as the patch person walks; or as the channels lie on the desk. */
export const checkOrders = ['by socket', 'by channel'] as const;
export type CheckOrder = (typeof checkOrders)[number];

/** Every line of an act that comes to the desk from the stage, in the wanted order; what has no place comes last. */
export function linesToCheck(sheet: ActSheet, plan: Plan, order: CheckOrder): CheckLine[] {
  const boxPlace = new Map(sheet.boxes.map((box, place) => [box.id, place]));
  const lines = sheet.sources
    .filter((source) => source.returnsMixId === null && source.returnsCueOutputId === null)
    .map((source) => lineOf(sheet, plan, source))
    .filter(({ socket, channels }) => socket !== null || channels.length > 0);
  const bySocket = ({ socket }: CheckLine): number =>
    socket ? (boxPlace.get(socket.boxId) ?? 0) * farSocket + socket.number : Number.MAX_SAFE_INTEGER;
  const byChannel = ({ channels }: CheckLine): number => channels[0]?.channel ?? Number.MAX_SAFE_INTEGER;
  const place = order === 'by socket' ? bySocket : byChannel;
  return lines.sort((one, other) => place(one) - place(other) || one.line - other.line);
}

/** More sockets than any box has, so that the boxes stay apart. */
const farSocket = 100_000;

function lineOf(sheet: ActSheet, plan: Plan, source: Source): CheckLine {
  const patch = plan.patches.find((it) => it.sourceId === source.id);
  const socket = sheet.sockets.find((it) => it.id === patch?.socketId) ?? null;
  return {
    source,
    line: sheet.sources.indexOf(source) + 1,
    socket,
    socketName: socketName(sheet, socket?.id ?? null) ?? '',
    phantomOn: patch?.phantomOn ?? false,
    channels: plan.copies
      .flatMap(({ sourceId, purpose, channel }) =>
        sourceId === source.id && channel !== null ? [{ purpose, channel }] : [],
      )
      .sort((one, other) => one.channel - other.channel),
    performer: sheet.performers.find((it) => it.id === source.performerId)?.name ?? '',
  };
}
