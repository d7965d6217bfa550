import { rmSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyChange, findBrokenReferences } from '../../../core/show/apply-change.ts';
import type { Change, Put } from '../../../core/show/change.ts';
import { references } from '../../../core/show/references.ts';
import {
  documentFromShow,
  rowSchemas,
  type Show,
  type TableName,
  tableNames,
} from '../../../core/show/show.ts';
import { openShow } from '../../../electron/database/open-show.ts';
import type { ShowDatabase } from '../../../electron/database/show-database.ts';
import { anyRow } from '../../helpers/any-row.ts';
import { showPath } from '../../helpers/open-shows.ts';
import { smallShow } from '../../helpers/small-show.ts';

/** A row to put and a row to remove, not yet fitted to the show they meet. */
type Wish = { table: TableName; row: Record<string, unknown>; pick: number; wild: boolean; remove: boolean };

const anyWish: fc.Arbitrary<Wish> = fc.constantFrom(...tableNames).chain((table) =>
  fc.record({
    table: fc.constant(table),
    row: anyRow(table),
    pick: fc.nat(1000),
    wild: fc.integer({ min: 0, max: 39 }).map((it) => it === 0),
    remove: fc.integer({ min: 0, max: 4 }).map((it) => it === 0),
  }),
);
const anyDay = fc.array(fc.array(anyWish, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 12 });

test('changes, undo and redo in the file are those of the show in memory, whatever is changed', () => {
  fc.assert(
    fc.property(anyDay, (day) => {
      const path = showPath();
      let show = smallShow();
      let database = open(path, show);
      const states = [documentFromShow(show)];
      for (const [number, wishes] of day.entries()) {
        const change = fitted(show, wishes, `Change ${number}`);
        const after = applyChange(show, change);
        const outcome = database.change(change);
        const broken = findBrokenReferences(after);
        expect(outcome.ok, JSON.stringify(outcome)).toBe(broken.length === 0);
        if (outcome.ok) show = after;
        if (outcome.ok && outcome.value.undo === change.label) states.push(documentFromShow(show));
        expect(documentFromShow(database.read())).toEqual(documentFromShow(show));
      }
      database.close();
      database = open(path, show);
      for (const state of states.slice(0, -1).reverse()) show = turned(database, 'undo', show, state);
      expect(database.undo()).toMatchObject({ ok: false, problem: { code: 'nothing to undo' } });
      database.close();
      database = open(path, show);
      for (const state of states.slice(1)) show = turned(database, 'redo', show, state);
      expect(database.redo()).toMatchObject({ ok: false, problem: { code: 'nothing to undo' } });
      for (const state of states.slice(0, -1).reverse()) show = turned(database, 'undo', show, state);
      database.close();
      rmSync(path);
    }),
    { numRuns: 40 },
  );
}, 120_000);

function open(path: string, first: Show): ShowDatabase {
  const opened = openShow(path, { firstRows: () => documentFromShow(first) });
  if (!opened.ok) throw new Error(opened.problem.what);
  return opened.value;
}

/** Undoes or redoes, checks the file against the state it should have, and what a window would show against both. */
function turned(
  database: ShowDatabase,
  way: 'undo' | 'redo',
  window: Show,
  state: ReturnType<typeof documentFromShow>,
): Show {
  const outcome = database[way]();
  if (!outcome.ok) throw new Error(outcome.problem.what);
  const stored = documentFromShow(database.read());
  expect(stored).toEqual(state);
  const shown = applyChange(window, outcome.value.change);
  expect(byId(documentFromShow(shown))).toEqual(byId(stored));
  return shown;
}

/** A document with its rows by id: a window may hold a row that came back in another place. */
function byId(document: ReturnType<typeof documentFromShow>): unknown {
  return tableNames.map((table) => new Map(document[table].map((row) => [row.id, row])));
}

/** A change that fits the show, but for the few wild references that must be refused. */
function fitted(show: Show, wishes: readonly Wish[], label: string): Change {
  const change: Change = { label, put: [], remove: [] };
  for (const { table, pick } of wishes.filter((it) => it.remove)) {
    const id = [...show[table].keys()][pick % Math.max(1, show[table].size)];
    if (id !== undefined) change.remove.push({ table, id });
  }
  let reached = applyChange(show, change);
  for (const wish of wishes.filter((it) => !it.remove)) {
    const put = fittedPut(reached, wish);
    if (!put) continue;
    change.put.push(put);
    reached = applyChange(reached, { label, put: [put], remove: [] });
  }
  return change;
}

function fittedPut(show: Show, { table, row, pick, wild }: Wish): Put | null {
  const isNew = pick % 3 === 0 || show[table].size === 0;
  const id = isNew ? `${table} ${pick % 5}` : [...show[table].keys()][pick % show[table].size];
  const fields: Record<string, unknown> = { ...row, id };
  for (const { field, to } of references.filter((it) => it.table === table)) {
    if (typeof fields[field] !== 'string') continue;
    const targets = [...show[to].keys()];
    fields[field] = wild ? 'nobody' : (targets[pick % Math.max(1, targets.length)] ?? null);
  }
  const parsed = rowSchemas[table].safeParse(fields);
  return parsed.success ? ({ table, row: parsed.data } as Put) : null;
}
