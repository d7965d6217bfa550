import type { ActSheet } from '../../show/act-sheet.ts';
import { type Change, type Put, put } from '../../show/change.ts';
import type { Id } from '../../show/rig.ts';
import type { Reading } from '../reading.ts';
import { rowsOfReading } from './rows-of-reading.ts';

/** The tables a reading writes, in the order in which rows can refer to each other. */
const tables = ['performers', 'sources', 'mixes', 'listeners', 'wishes'] as const;
type ReadTable = (typeof tables)[number];
type Row = { id: Id } & Record<string, unknown>;

/** Fields that name another row of the act. */
const references = ['performerId', 'pairSourceId', 'mixId', 'sourceId', 'sameAsMixId'] as const;

/** Fields that say where a row is, not what it means. */
const places = new Set(['id', 'actId', 'order']);

/**
 * What has to be written to an act when a rider is read again: after an answer (`before` is the reading without it)
 * or for the first time (`before` is null). Only what the new reading says otherwise than the old one is written,
 * so that what the engineer put right by hand, and every decision on a row, stays. A row that the engineer took away
 * stays away. Of a rider that comes on top of another one, the newer wins where it speaks.
 */
export function mergeReading(
  sheet: ActSheet,
  before: Reading | null,
  after: Reading,
  newId: () => Id,
): Pick<Change, 'put' | 'remove'> {
  const old = before ? namedRows(before, sheet.act.id) : noRows();
  const next = namedRows(after, sheet.act.id);
  const now = rowsOfSheet(sheet, before ? old : next);
  const ids = new Map<string, Id>();
  for (const table of tables) for (const [name, row] of now[table]) ids.set(name, row.id);

  for (const table of tables)
    for (const name of next[table].keys()) if (!ids.has(name)) ids.set(name, newId());

  const merge: Merge = { old, next, now, ids, isFirst: before === null };
  return {
    put: tables.flatMap((table) => putsOf(table, merge)),
    remove: tables.flatMap((table) => removalsOf(table, merge)),
  };
}

/** The rows of the act as a reading says them, by their ids in the act; a row that the reading does not say is not in. */
export function rowsAsRead(sheet: ActSheet, reading: Reading): ReadonlyMap<Id, Row> {
  const read = namedRows(reading, sheet.act.id);
  const now = rowsOfSheet(sheet, read);
  const ids = new Map(
    tables.flatMap((table) => [...now[table]].map(([name, row]) => [name, row.id] as const)),
  );
  return new Map(
    tables.flatMap((table) =>
      [...now[table]].flatMap(([name, { id }]) => {
        const row = read[table].get(name);
        return row ? [[id, resolved(row, ids)] as const] : [];
      }),
    ),
  );
}

type Merge = {
  old: NamedRows;
  next: NamedRows;
  now: NamedRows;
  /** Name of a row to its id in the act. */
  ids: ReadonlyMap<string, Id>;
  isFirst: boolean;
};

function putsOf(table: ReadTable, { old, next, now, ids, isFirst }: Merge): Put[] {
  const last = Math.max(-1, ...[...now[table].values()].map((row) => Number(row.order ?? -1)));
  return [...next[table]].flatMap(([name, row]) => {
    const was = old[table].get(name);
    const is = now[table].get(name);
    if (was && !is) return [];
    const id = ids.get(name) ?? row.id;
    const written = is
      ? withDifferences(is, was, row, ids)
      : { ...resolved(row, ids), id, ...movedBy(row, isFirst ? last + 1 : 0) };
    return written === is ? [] : [put(table, written as never) as Put];
  });
}

function removalsOf(table: ReadTable, merge: Merge): Change['remove'] {
  const { old, next, now } = merge;
  return [...old[table].keys()].flatMap((name) => {
    const is = now[table].get(name);
    const goes = is && !next[table].has(name) && !isStillNamed(table, name, merge);
    return goes ? [{ table, id: is.id }] : [];
  });
}

type NamedRows = Record<ReadTable, Map<string, Row>>;

const noRows = (): NamedRows => ({
  performers: new Map(),
  sources: new Map(),
  mixes: new Map(),
  listeners: new Map(),
  wishes: new Map(),
});

/** The rows of a reading under names that are the same in every reading of the rider; they refer to each other by
 * these names. */
function namedRows(reading: Reading, actId: Id): NamedRows {
  let count = 0;
  const puts = rowsOfReading(reading, actId, () => `read ${count++}`);
  const rowsOf = (table: ReadTable) =>
    puts.flatMap((it) => (it.table === table ? [it.row as unknown as Row] : []));
  const names = new Map<Id, string>();
  for (const row of rowsOf('performers')) names.set(row.id, performerName(row));
  rowsOf('sources').forEach((row, at) => {
    names.set(row.id, `source ${reading.inputs[at]?.key}`);
  });
  rowsOf('mixes').forEach((row, at) => {
    names.set(row.id, `mix ${reading.mixes[at]?.key}`);
  });
  return collect(rowsOf, names);
}

/** The rows of the act under the names that the reading gives them; a row that is none of the reading's keeps its
 * id as its name. */
function rowsOfSheet(sheet: ActSheet, read: NamedRows): NamedRows {
  const rowsOf = (table: ReadTable) => sheet[table] as unknown as Row[];
  const names = new Map<Id, string>();
  for (const row of rowsOf('performers')) names.set(row.id, performerName(row));
  nameAlike(rowsOf('sources'), read.sources, names, [
    (a, b) => a.riderLine === b.riderLine && a.name === b.name,
    (a, b) => a.riderLine === b.riderLine,
    (a, b) => a.name === b.name && a.kind === b.kind,
  ]);
  nameAlike(rowsOf('mixes'), read.mixes, names, [
    (a, b) => a.name === b.name && a.order === b.order,
    (a, b) => a.name === b.name,
    (a, b) => a.order === b.order && a.deviceKind === b.deviceKind,
  ]);
  return collect(rowsOf, names);
}

const performerName = (row: Row) => `performer ${row.name}`;

/** Names rows after the read rows they are most alike, by one test of likeness after the other. */
function nameAlike(
  rows: readonly Row[],
  read: ReadonlyMap<string, Row>,
  names: Map<Id, string>,
  tests: readonly ((row: Row, read: Row) => boolean)[],
): void {
  const free = new Map(read);
  for (const isAlike of tests)
    for (const row of rows) {
      if (names.has(row.id)) continue;
      const found = [...free].find(([, other]) => isAlike(row, other));
      if (!found) continue;
      names.set(row.id, found[0]);
      free.delete(found[0]);
    }
}

/** Rows by name, with names in place of the ids they refer to. Listeners and wishes are named by what they say. */
function collect(rowsOf: (table: ReadTable) => Row[], names: ReadonlyMap<Id, string>): NamedRows {
  const all = noRows();
  for (const table of tables)
    for (const row of rowsOf(table)) {
      const symbolic = { ...row };
      for (const field of references) {
        const id = row[field];
        if (typeof id === 'string') symbolic[field] = names.get(id) ?? id;
      }
      const name =
        names.get(row.id) ?? (table === 'listeners' || table === 'wishes' ? said(table, symbolic) : row.id);
      all[table].set(all[table].has(name) ? `${name} ${all[table].size}` : name, symbolic);
    }
  return all;
}

function said(table: ReadTable, row: Row): string {
  const { mixId, performerId, words, sourceId, group, sameAsMixId, amount, levelDb } = row;
  return JSON.stringify([table, mixId, performerId, words, sourceId, group, sameAsMixId, amount, levelDb]);
}

/**
 * The row as it is, changed where the new reading differs from the old one; the very row where nothing differs.
 * Without an old reading, where the new one says something else.
 */
function withDifferences(is: Row, was: Row | undefined, next: Row, ids: ReadonlyMap<string, Id>): Row {
  const differing = Object.keys(next).filter((field) => {
    if (places.has(field) || next[field] === is[field]) return false;
    return was ? next[field] !== was[field] : !unsaid.has(next[field]);
  });
  if (differing.length === 0) return is;
  const changed = Object.fromEntries(differing.map((field) => [field, next[field]]));
  return resolved({ ...is, ...changed }, ids);
}

/** Values of a rider that does not speak of a matter. */
const unsaid = new Set<unknown>(['', null, 'not said', 'other']);

/** The row with ids in place of names. A name that nothing stands for is no reference. */
function resolved(row: Row, ids: ReadonlyMap<string, Id>): Row {
  const result = { ...row };
  for (const field of references) {
    const name = row[field];
    if (typeof name === 'string') result[field] = ids.get(name) ?? null;
  }
  return result;
}

const movedBy = (row: Row, offset: number) =>
  typeof row.order === 'number' ? { order: row.order + offset } : {};

/** A performer whom something else in the act will still name stays, also when the rider no longer does. */
function isStillNamed(table: ReadTable, name: string, { old, next, now }: Merge): boolean {
  if (table !== 'performers') return false;
  return (['sources', 'listeners'] as const).some((naming) =>
    [...now[naming]].some(([row, { performerId }]) => {
      const was = old[naming].get(row);
      return performerId === name && (!was || next[naming].get(row)?.performerId === was.performerId);
    }),
  );
}
