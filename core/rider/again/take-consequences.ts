import type { ActSheet } from '../../show/act-sheet.ts';
import { type Change, type Put, put } from '../../show/change.ts';
import type { Id } from '../../show/rig.ts';
import type { TableName } from '../../show/show.ts';
import type { Consequence } from './compare-readings.ts';

type Row = { id: Id } & Record<string, unknown>;

/** Links that may be empty; the other references of a row are what it belongs to. */
const links = ['pairSourceId', 'performerId'] as const;
const owners = ['mixId', 'sourceId', 'sameAsMixId', 'performerId'] as const;

/**
 * What is written when some of the consequences of a later rider are taken and the others left. Of a row only the
 * fields taken change; what would name a row that was left is left too. Nothing taken: nothing is written.
 */
export function takeConsequences(
  sheet: ActSheet,
  all: readonly Consequence[],
  taken: ReadonlySet<string>,
): Pick<Change, 'put' | 'remove'> {
  const takenOnes = all.filter(({ key }) => taken.has(key));
  const remove = takenOnes.flatMap((it) => it.removes);
  const gone = new Set(remove.map(({ id }) => id));
  const now = new Map(rowsOf(sheet).map((row) => [row.id, row]));
  const written = new Map<Id, { table: TableName; row: Row }>();
  for (const { puts } of takenOnes) for (const it of puts) write(written, now, it);
  bringPerformers(written, now, all);

  const isThere = (id: unknown) =>
    typeof id === 'string' && (written.has(id) || (now.has(id) && !gone.has(id)));
  const kept = inNumberOrder(sheet, [...written.values()], gone);
  const puts = kept.flatMap((it) => {
    const row = withLinksTo(isThere, it.row, now.get(it.row.id));
    const isChild = it.table === 'wishes' || it.table === 'listeners';
    const isOwned = owners.every(
      (field) => row[field] === undefined || row[field] === null || isThere(row[field]),
    );
    return isChild && !isOwned ? [] : [{ table: it.table, row }];
  });
  const named = new Set(
    [...now.values(), ...puts.map(({ row }) => row)].flatMap((row) => namedBy(row, puts, gone)),
  );
  return {
    put: tableOrder.flatMap((table) =>
      puts.filter((it) => it.table === table).map(({ row }) => put(table, row as never) as Put),
    ),
    // A performer whom something that stays still names stays too.
    remove: remove.filter(({ table, id }) => table !== 'performers' || !named.has(id)),
  };
}

const tableOrder = ['performers', 'sources', 'mixes', 'listeners', 'wishes'] as const;
const rowsOf = (sheet: ActSheet): Row[] => tableOrder.flatMap((table) => sheet[table] as unknown as Row[]);

function write(
  written: Map<Id, { table: TableName; row: Row }>,
  now: ReadonlyMap<Id, Row>,
  { table, row, fields }: Consequence['puts'][number],
): void {
  const base = written.get(row.id)?.row ?? now.get(row.id);
  const changed = fields === null ? row : Object.fromEntries(fields.map((field) => [field, row[field]]));
  written.set(row.id, { table, row: { ...base, ...changed } as Row });
}

/** A source or listener that is taken brings the new performer it names along. */
function bringPerformers(
  written: Map<Id, { table: TableName; row: Row }>,
  now: ReadonlyMap<Id, Row>,
  all: readonly Consequence[],
): void {
  const coming = new Map(
    all.flatMap(({ of, puts }) => (of === 'performer' ? puts : [])).map((it) => [it.row.id as unknown, it]),
  );
  for (const { row } of [...written.values()]) {
    const it = coming.get(row.performerId);
    if (it) write(written, now, it);
  }
}

function withLinksTo(isThere: (id: unknown) => boolean, row: Row, now: Row | undefined): Row {
  const result = { ...row };
  for (const field of links)
    if (typeof row[field] === 'string' && !isThere(row[field])) {
      const old = now?.[field];
      result[field] = isThere(old) ? old : null;
    }
  return result;
}

/** The performer that a row names as it will be, or none where the row goes or is written anew. */
function namedBy(row: Row, puts: readonly { row: Row }[], gone: ReadonlySet<Id>): unknown[] {
  const next = puts.find((it) => it.row.id === row.id)?.row ?? row;
  return gone.has(row.id) || gone.has(String(next.mixId)) ? [] : [next.performerId];
}

/** New lines stand among the others by their numbers, where those stand in the order of theirs. */
function inNumberOrder(
  sheet: ActSheet,
  puts: { table: TableName; row: Row }[],
  gone: ReadonlySet<Id>,
): { table: TableName; row: Row }[] {
  const sources = puts.filter((it) => it.table === 'sources');
  const isNew = (id: Id) => !sheet.sources.some((it) => it.id === id);
  const next = new Map<Id, Row>(
    sheet.sources.filter(({ id }) => !gone.has(id)).map((row) => [row.id, row as unknown as Row]),
  );
  for (const { row } of sources) next.set(row.id, row);
  const numbers = sheet.sources.map(({ riderLine }) => riderLine);
  const isSorted = numbers.every((number, at) => number !== null && number >= (numbers[at - 1] ?? 0));
  const isNumbered = [...next.values()].every((row) => typeof row.riderLine === 'number');
  if (!isSorted || !isNumbered || !sources.some(({ row }) => isNew(row.id))) return puts;
  const sorted = [...next.values()].sort((a, b) => Number(a.riderLine) - Number(b.riderLine));
  const moved = sorted.flatMap((row, order) =>
    row.order === order && !sources.some((it) => it.row.id === row.id)
      ? []
      : [{ table: 'sources' as const, row: { ...row, order } }],
  );
  return [...puts.filter((it) => it.table !== 'sources'), ...moved];
}
