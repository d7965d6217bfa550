import { type ActSheet, actSheet } from '../../core/show/act-sheet.ts';
import { type Show, ShowDocument, showFromRows, type TableName } from '../../core/show/show.ts';

/** Rows as a test writes them: only what matters for it. */
export type TestRow = Record<string, unknown>;
export type TestRows = Partial<Record<TableName, TestRow[]>> & {
  rig?: TestRow;
  day?: TestRow;
  act?: TestRow;
};

/** Tables whose rows have an order, a number or a name of their own, filled in where a test does not say it. */
const ownerOf: Partial<Record<TableName, TestRow>> = {
  boxes: { rigId: 'rig' },
  buses: { rigId: 'rig' },
  outputs: { rigId: 'rig', place: 'desk' },
  devices: { rigId: 'rig', format: 'mono' },
  cueOutputs: { rigId: 'rig', format: 'mono' },
  performers: { actId: 'act' },
  sources: { actId: 'act' },
  mixes: { actId: 'act' },
  decisions: { actId: 'act' },
  riders: { actId: 'act', fileName: 'rider.csv', receivedAt: '' },
};
const ordered: readonly TableName[] = [
  'boxes',
  'devices',
  'performers',
  'sources',
  'mixes',
  'wishes',
  'alternates',
  'riders',
];
const numbered: readonly TableName[] = ['sockets', 'buses', 'outputs'];
const named: readonly TableName[] = [
  'boxes',
  'outputs',
  'devices',
  'cueOutputs',
  'performers',
  'sources',
  'mixes',
];

/** A show of one act, from the rows that matter; ids, orders, numbers and names are filled in. */
export function showOf({ rig, day, act, ...tables }: TestRows): Show {
  const filled = Object.entries(tables).map(([name, rows]) => {
    const table = name as TableName;
    return [
      table,
      rows.map((row, at) => {
        const id = row.id ?? `${table} ${at + 1}`;
        return {
          id,
          ...ownerOf[table],
          ...(ordered.includes(table) ? { order: at } : {}),
          ...(numbered.includes(table) ? { number: at + 1 } : {}),
          ...(named.includes(table) ? { name: id } : {}),
          ...row,
        };
      }),
    ];
  });
  return showFromRows(
    ShowDocument.parse({
      format: 'foldbook-show',
      version: 1,
      rigs: [{ id: 'rig', name: 'House', channelCount: 48, ...rig }],
      days: [{ id: 'day', rigId: 'rig', name: 'Saturday', ...day }],
      acts: [{ id: 'act', dayId: 'day', order: 0, name: 'Paper Herons', ...act }],
      ...Object.fromEntries(filled),
    }),
  );
}

/** The sheet of a show of one act. */
export function sheetOf(rows: TestRows): ActSheet {
  const sheet = actSheet(showOf(rows), 'act');
  if (!sheet) throw new Error('The rows of a test have no act.');
  return sheet;
}

/** `count` rows alike, for sockets, buses, outputs and channels of a rig. */
export function rows(count: number, row: TestRow = {}): TestRow[] {
  return Array.from({ length: count }, (_, at) => ({
    ...row,
    id: `${row.id ?? 'row'} ${at + 1}`,
    number: at + 1,
  }));
}
