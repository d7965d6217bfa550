import type { Box, Socket } from '../show/rig.ts';
import { longNotes, sheetOfAct } from './act-heading.ts';
import { type ActView, type LineView, socketName } from './act-view.ts';
import { cautions } from './cautions.ts';
import { channelField, lineFields, lineKey, tickField } from './line-fields.ts';
import type { Sheet } from './sheet.ts';
import { type Field, tableOf } from './table.ts';
import { channelsText, copyKey, phantomText, pickUpText, placeText, remarks } from './words.ts';

/** A socket and what is plugged there; more than one line is a finding, and both are told. */
type SocketView = { box: Box; socket: Socket; lines: LineView[] };

const ofLines = (say: (line: LineView) => string) => (view: SocketView) =>
  view.lines
    .map(say)
    .filter((it) => it !== '')
    .join(' / ');

const boxFields: Field<SocketView>[] = [
  { title: 'Socket', of: ({ box, socket }) => socketName(box, socket) },
  { title: 'Line', align: 'right', of: ofLines(({ line }) => String(line)) },
  { title: 'Source', grow: 2, of: (view) => ofLines(({ source }) => source.name)(view) || unused(view) },
  { title: 'Mic, DI', grow: 1, of: ofLines(pickUpText) },
  { title: '48 V', of: ofLines(phantomText) },
  { title: 'Stand', of: ofLines(({ source }) => source.stand) },
  { title: 'Place', grow: 1, of: ofLines(placeText) },
  { title: 'Channels', of: ofLines(channelsText) },
  { title: 'Notes', grow: 1, of: ofLines(remarks) },
  tickField('Plugged'),
];

function unused({ socket }: SocketView): string {
  return socket.reservedFor === null ? 'free' : `reserved: ${socket.reservedFor}`;
}

/** What is plugged where, box by box, with the sockets that stay free. */
export function patchByBox(view: ActView): Sheet {
  const { boxes, sockets } = view.sheet;
  const linesAt = Map.groupBy(view.lines, ({ socket }) => socket?.id ?? '');
  const tables = boxes.map((box) =>
    tableOf(
      boxFields,
      sockets
        .filter((it) => it.boxId === box.id)
        .map((socket) => ({ box, socket, lines: linesAt.get(socket.id) ?? [] })),
      {
        heading: `Box ${box.name}`,
        key: ({ socket }) => socket.id,
        look: ({ lines }) => (lines.length === 0 ? 'quiet' : 'plain'),
        empty: 'This box has no sockets.',
      },
    ),
  );
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
  channelField('In-ears', 'in-ears'),
  channelField('Parallel', 'parallel'),
  lineFields.pickUp,
  lineFields.phantom,
  lineFields.performer,
  { title: 'Why this socket', grow: 2, of: ({ patch }) => patch?.why ?? '' },
];

/** What is plugged where, in the order of the act's own list. */
export function patchByAct(view: ActView): Sheet {
  return sheetOfAct('patch by act', 'Patch by act', view, {
    cautions: [cautions.patching],
    parts: [tableOf(actFields, view.lines, { key: lineKey, empty: 'This act has no input yet.' })],
  });
}
