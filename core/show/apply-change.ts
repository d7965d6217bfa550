import type { Change } from './change.ts';
import { references } from './references.ts';
import type { Id } from './rig.ts';
import { type Show, type TableName, tableNames } from './show.ts';

type AnyRow = { id: Id } & Record<string, unknown>;

/**
 * The show after a change: removals first, with everything that hangs on them, then the rows put.
 * The given show is not touched; tables without a change are shared with it.
 */
export function applyChange(show: Show, change: Change): Show {
  const draft = new Draft(show);
  removeWithDependants(draft, change.remove);
  for (const { table, row } of change.put) draft.open(table).set(row.id, row as AnyRow);
  return draft.close();
}

/** A show being changed: a table is copied when it is first written to. */
class Draft {
  readonly #show: Show;
  readonly #opened = new Map<TableName, Map<Id, AnyRow>>();

  constructor(show: Show) {
    this.#show = show;
  }

  read(table: TableName): ReadonlyMap<Id, AnyRow> {
    return this.#opened.get(table) ?? (this.#show[table] as ReadonlyMap<Id, AnyRow>);
  }

  open(table: TableName): Map<Id, AnyRow> {
    const opened = this.#opened.get(table) ?? new Map(this.read(table));
    this.#opened.set(table, opened);
    return opened;
  }

  close(): Show {
    return Object.fromEntries(tableNames.map((table) => [table, this.read(table)])) as unknown as Show;
  }
}

function removeWithDependants(draft: Draft, remove: Change['remove']): void {
  const pending = [...remove];
  for (let next = pending.pop(); next; next = pending.pop()) {
    const { table, id } = next;
    if (!draft.read(table).has(id)) continue;
    draft.open(table).delete(id);
    for (const reference of references.filter((it) => it.to === table)) {
      const { field } = reference;
      const hanging = [...draft.read(reference.table).values()].filter((row) => row[field] === id);
      if (reference.holds === 'owner')
        pending.push(...hanging.map((row) => ({ table: reference.table, id: row.id })));
      else for (const row of hanging) draft.open(reference.table).set(row.id, { ...row, [field]: null });
    }
  }
}

/** A reference of a row that names nothing in its show. */
export type BrokenReference = { table: TableName; id: Id; field: string; to: TableName; missing: string };

/** Every reference in the show that names nothing, in table order. */
export function findBrokenReferences(show: Show): BrokenReference[] {
  return references.flatMap(({ table, field, to }) =>
    [...(show[table] as ReadonlyMap<Id, AnyRow>).values()].flatMap((row) => {
      const value = row[field];
      if (typeof value !== 'string' || show[to].has(value)) return [];
      return [{ table, id: row.id, field, to, missing: value }];
    }),
  );
}
