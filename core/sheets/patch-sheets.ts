import type { Box, Socket } from '../show/rig.ts';
import { socketOnBox } from '../show/socket-name.ts';
import { longNotes, sheetOfAct } from './act-heading.ts';
import type { ActView, LineView } from './act-view.ts';
import { cautions } from './cautions.ts';
import { channelField, lineFields, lineKey, tickField } from './line-fields.ts';
import type { Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';
import { channelsText, copyKey, phantomText, phantomWord, pickUpText, placeText, remarks } from './words.ts';

/** A socket and what is plugged there; more than one line is a finding, and both are told. */
type SocketView = { box: Box; socket: Socket; lines: LineView[] };

const ofLines = (say: (line: LineView) => string) => (view: SocketView) =>
  view.lines
    .map(say)
    .filter((it) => it !== '')
    .join(' / ');

const boxFields: Field<SocketView>[] = [
  { title: 'Socket', of: ({ box, socket }) => socketOnBox(box, socket) },
  { title: 'Line', align: 'right', of: ofLines(({ line }) => String(line)) },
  { title: 'Source', grow: 2, of: (view) => ofLines(({ source }) => source.name)(view) || unused(view) },
  { title: 'Mic, DI', grow: 1, of: ofLines(pickUpText) },
  { title: phantomWord, of: ofLines(phantomText) },
  { title: 'Stand', of: ofLines(({ source }) => source.stand) },
  { title: 'Place', grow: 1, of: ofLines(placeText) },
  { title: 'Channels', of: ofLines(channelsText) },
  { title: 'Notes', grow: 1, of: ofLines(remarks) },
  tickField('Plugged'),
];

function freeText(all: readonly SocketView[]): string {
  const [first, last] = [all[0], all.at(-1)];
  if (!first || !last) return 'This box has no sockets.';
  return `Nothing is plugged here: ${socketOnBox(first.box, first.socket)} to ${socketOnBox(last.box, last.socket)} are free.`;
}

function unused({ socket }: SocketView): string {
  return socket.reservedFor === null ? 'free' : `reserved: ${socket.reservedFor}`;
}

/** What is plugged where, box by box, with the sockets that stay free. */
export function patchByBox(view: ActView): Sheet {
  const { boxes, sockets } = view.sheet;
  const linesAt = Map.groupBy(view.lines, ({ socket }) => socket?.id ?? '');
  const tables = boxes.map((box) => {
    const all = sockets
      .filter((it) => it.boxId === box.id)
      .map((socket) => ({ box, socket, lines: linesAt.get(socket.id) ?? [] }));
    const isUsed = all.some(({ socket, lines }) => lines.length > 0 || socket.reservedFor !== null);
    return tableOf(boxFields, isUsed ? all : [], {
      heading: `Box ${box.name}`,
      key: ({ socket }) => socket.id,
      look: ({ lines }) => (lines.length === 0 ? 'quiet' : 'plain'),
      empty: freeText(all),
    });
  });
  const unpatched = view.lines.filter(({ socket }) => socket === null);
  const left = tableOf(
    [lineFields.line, lineFields.source, lineFields.place, lineFields.remarks],
    unpatched,
    {
      heading: 'Not patched',
      key: lineKey,
      empty: 'Every line has a socket.',
    },
  );
  return sheetOfAct('patch by box', 'Patch by stage box', view, {
    cautions: [cautions.patching],
    parts: [...tables, left, { is: 'text', heading: null, paragraphs: [copyKey] }, ...longNotes(view)],
  });
}

const actFields: Field<LineView>[] = [
  lineFields.line,
  lineFields.source,
  lineFields.socket,
  channelField('FOH', 'foh'),
  channelField('Monitors', 'monitors'),
  channelField('Wedges', 'wedges'),
  channelField('Ears', 'in-ears'),
  channelField('Parallel', 'parallel'),
  lineFields.pickUp,
  lineFields.phantom,
  lineFields.performer,
  { title: 'Socket chosen by', of: ({ patch }) => (patch?.by === 'engineer' ? 'the engineer' : '') },
];

/** What is plugged where, in the order of the act's own list. */
export function patchByAct(view: ActView): Sheet {
  return sheetOfAct('patch by act', 'Patch by act', view, {
    cautions: [cautions.patching],
    parts: [tableOf(actFields, view.lines, { key: lineKey, empty: 'This act has no input yet.' })],
  });
}
