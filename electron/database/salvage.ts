import Database from 'better-sqlite3';
import { applyChange, findBrokenReferences } from '../../core/show/apply-change.ts';
import { type RowOf, type Show, showFromRows, type TableName, tableNames } from '../../core/show/show.ts';
import type { StoredAct } from './archive.ts';
import { columnsOf, rowFromValues } from './columns.ts';
import { quoteName } from './rows.ts';

/**
 * What could still be read of a damaged file. `isWhole`: every table was read to its end, and all rows are valid.
 * `revision`: its last write, or null where that could not be read.
 */
export type Salvage = {
  show: Show;
  rowCount: number;
  isWhole: boolean;
  revision: number | null;
  /** Acts of the archive that could be read; empty in a file of a time before it. */
  archived: StoredAct[];
};

/** Reads what can be read of a damaged file, without writing to it. Null where nothing can. */
export function salvage(path: string): Salvage | null {
  let database: Database.Database;
  try {
    database = new Database(path, { fileMustExist: true });
    database.pragma('query_only = ON');
    // A broken index must not hide rows that are there.
    database.pragma('cell_size_check = OFF');
  } catch {
    return null;
  }
  try {
    let isWhole = true;
    const rows = tableNames.map((table) => {
      const read = readTable(database, table);
      isWhole &&= read.isWhole;
      return [table, read.rows] as const;
    });
    const read = showFromRows(Object.fromEntries(rows));
    const show = withoutBroken(read);
    const rowCount = countOf(show);
    if (rowCount === 0) return null;
    return {
      show,
      rowCount,
      isWhole: isWhole && rowCount === countOf(read),
      revision: revisionOf(database),
      archived: archivedIn(database),
    };
  } finally {
    database.close();
  }
}

function revisionOf(database: Database.Database): number | null {
  try {
    return Number(database.prepare('SELECT "revision" FROM "standing"').pluck().get());
  } catch {
    return null;
  }
}

function archivedIn(database: Database.Database): StoredAct[] {
  const found: StoredAct[] = [];
  try {
    for (const row of database.prepare('SELECT * FROM "archivedActs" NOT INDEXED').iterate()) {
      const { number: _, ...act } = row as StoredAct & { number: number };
      found.push(act);
    }
  } catch {
    // What was read until the damage is kept.
  }
  return found;
}

function readTable<T extends TableName>(
  database: Database.Database,
  table: T,
): { rows: RowOf<T>[]; isWhole: boolean } {
  const rows: RowOf<T>[] = [];
  let isWhole = true;
  try {
    const list = columnsOf[table].map(({ name }) => quoteName(name)).join(', ');
    // NOT INDEXED: the rows themselves are the truth, their indexes are made anew.
    const all = database.prepare(`SELECT ${list} FROM ${quoteName(table)} NOT INDEXED ORDER BY "putOrder"`);
    for (const values of all.iterate()) {
      try {
        rows.push(rowFromValues(table, values as Record<string, unknown>));
      } catch {
        isWhole = false;
      }
    }
  } catch {
    isWhole = false;
  }
  return { rows, isWhole };
}

/** The show without rows that name something that was lost, and without what belongs to them. */
function withoutBroken(show: Show): Show {
  let whole = show;
  for (let broken = findBrokenReferences(whole); broken.length > 0; broken = findBrokenReferences(whole))
    whole = applyChange(whole, {
      label: 'Leave what hangs on lost rows',
      put: [],
      remove: broken.map(({ table, id }) => ({ table, id })),
    });
  return whole;
}

function countOf(show: Show): number {
  return tableNames.reduce((sum, table) => sum + show[table].size, 0);
}
