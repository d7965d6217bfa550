import { type Show, ShowDocument, showFromRows } from '../../core/show/show.ts';

type Row = Record<string, unknown>;

/** What a test wants to be different from the plain day, as rows by table. */
export type FestivalRows = { [table: string]: Row[] };

/**
 * A day of two acts on two boxes of four sockets: Paper Herons with kick, bass and a singer, Tin Choir with the
 * same kick (the house kit stays), keys in a pair and a singer. Tables given replace the plain ones.
 */
export function festivalDay(tables: FestivalRows = {}): Show {
  const plain: FestivalRows = {
    rigs: [{ id: 'rig', name: 'House', channelCount: 16 }],
    boxes: [
      { id: 'a', rigId: 'rig', name: 'A', order: 0, xM: 0, yM: 5, reachM: 12 },
      { id: 'b', rigId: 'rig', name: 'B', order: 1, xM: 0, yM: 0, reachM: 12 },
    ],
    sockets: ['a', 'b'].flatMap((box) =>
      [1, 2, 3, 4].map((number) => ({ id: `${box}${number}`, boxId: box, number })),
    ),
    buses: [1, 2, 3, 4].map((number) => ({ id: `bus${number}`, rigId: 'rig', number })),
    outputs: [1, 2, 3, 4].map((number) => ({
      id: `out${number}`,
      rigId: 'rig',
      place: 'desk',
      number,
      name: `Out ${number}`,
    })),
    devices: [
      { id: 'wedge', rigId: 'rig', name: 'Wedge 1', kind: 'wedge', format: 'mono' },
      { id: 'pack', rigId: 'rig', name: 'Pack 1', kind: 'in-ear', format: 'mono' },
    ],
    days: [{ id: 'day', rigId: 'rig', name: 'Saturday', crewSize: 2 }],
    acts: [
      { id: 'herons', dayId: 'day', order: 0, name: 'Paper Herons', startMinute: 960, endMinute: 1000 },
      { id: 'choir', dayId: 'day', order: 1, name: 'Tin Choir', startMinute: 1020, endMinute: 1060 },
    ],
    performers: [
      { id: 'noor', actId: 'herons', name: 'Noor', role: 'lead vocal', xM: 0, yM: 1 },
      { id: 'ada', actId: 'choir', name: 'Ada', role: 'lead vocal', xM: 0, yM: 1 },
    ],
    sources: [
      {
        id: 'h kick',
        actId: 'herons',
        order: 0,
        name: 'Kick',
        kind: 'kick',
        sharedLine: 'House kick',
        xM: 0,
        yM: 5,
      },
      { id: 'h bass', actId: 'herons', order: 1, name: 'Bass', kind: 'bass di', xM: 1, yM: 4 },
      {
        id: 'h voc',
        actId: 'herons',
        order: 2,
        name: 'Noor',
        kind: 'lead vocal',
        performerId: 'noor',
        stand: 'tall',
      },
      {
        id: 'c kick',
        actId: 'choir',
        order: 0,
        name: 'Kick',
        kind: 'kick',
        sharedLine: 'house kick ',
        xM: 0,
        yM: 5,
      },
      {
        id: 'c keys l',
        actId: 'choir',
        order: 1,
        name: 'Keys L',
        kind: 'keys',
        pairSourceId: 'c keys r',
        xM: 2,
        yM: 3,
      },
      {
        id: 'c keys r',
        actId: 'choir',
        order: 2,
        name: 'Keys R',
        kind: 'keys',
        pairSourceId: 'c keys l',
        xM: 2,
        yM: 3,
      },
      {
        id: 'c voc',
        actId: 'choir',
        order: 3,
        name: 'Ada',
        kind: 'lead vocal',
        performerId: 'ada',
        stand: 'tall',
      },
    ],
    mixes: [
      {
        id: 'h mix',
        actId: 'herons',
        order: 0,
        name: 'Noor wedge',
        deviceKind: 'wedge',
        format: 'mono',
        xM: 0,
        yM: 0.5,
      },
      {
        id: 'c mix',
        actId: 'choir',
        order: 0,
        name: 'Ada wedge',
        deviceKind: 'wedge',
        format: 'mono',
        xM: 0,
        yM: 0.5,
      },
    ],
    listeners: [
      { id: 'l1', mixId: 'h mix', performerId: 'noor' },
      { id: 'l2', mixId: 'c mix', performerId: 'ada' },
    ],
  };
  return showFromRows(ShowDocument.parse({ format: 'foldbook-show', version: 1, ...plain, ...tables }));
}

/** The rows of a table of the plain day with some fields of one row changed. */
export function withFields(
  show: Show,
  table: 'acts' | 'sources' | 'days' | 'boxes' | 'sockets' | 'rigs',
  id: string,
  fields: Row,
): Row[] {
  return [...(show[table] as ReadonlyMap<string, Row>).values()].map((row) =>
    row.id === id ? { ...row, ...fields } : row,
  );
}
