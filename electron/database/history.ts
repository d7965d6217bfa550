import type { Database } from 'better-sqlite3';
import type { Standing } from '../../core/contract/contract.ts';
import type { Id } from '../../core/show/rig.ts';
import { type TableName, tableNames } from '../../core/show/show.ts';
import { type Column, columnsOf } from './columns.ts';
import { RowSums } from './row-sums.ts';
import { quoteName } from './rows.ts';

/** More steps than anyone takes back in a day; older ones are forgotten. */
const mostSteps = 5000;

/** More writes than a festival of several days has; older ones are forgotten. */
const mostWritings = 20_000;

/** A write that touches more rows than this, as bringing in a whole show does, is told without naming them. */
const mostRowsNamed = 2_000;

export type Step = { number: number; label: string };

/** One durable write: when and on which machine; `rows` are those it touched, null where they were too many. */
export type Writing = {
  revision: number;
  madeAt: string;
  device: string;
  did: 'done' | 'undone' | 'done again';
  label: string;
  rows: [table: TableName, id: Id][] | null;
};

/** A row that an undone or redone step wrote or removed. */
export type Touched = { table: TableName; id: Id };

/**
 * Undo by inverse statements that triggers record (the technique of sqlite.org/undoredo.html, with a step for each
 * change instead of one for each pause). The triggers are made for every table at opening and live only as long as
 * the connection, so a new table or column is covered without anybody thinking of it. All methods run inside the
 * caller's transaction.
 */
export class History {
  readonly #database: Database;
  readonly #device: string;
  readonly #sums: RowSums;
  readonly #run: ReturnType<typeof prepareStatements>;

  /** `device`: the name of this machine, under which writes are told. */
  constructor(database: Database, device: string) {
    this.#database = database;
    this.#device = device;
    // Where there is no row, nothing is recorded: that is how the first show comes in.
    database.exec('CREATE TEMP TABLE "recording" ("step" INTEGER NOT NULL)');
    for (const table of tableNames) database.exec(triggersOf(table, columnsOf[table]));
    this.#sums = new RowSums(database);
    this.#run = prepareStatements(database);
  }

  standing(): Standing {
    return {
      revision: this.#run.revision.get() as number,
      undo: this.nextUndo()?.label ?? null,
      redo: this.nextRedo()?.label ?? null,
    };
  }

  nextUndo(): Step | null {
    return (this.#run.nextUndo.get() as Step | undefined) ?? null;
  }

  nextRedo(): Step | null {
    return (this.#run.nextRedo.get() as Step | undefined) ?? null;
  }

  /** Does a new step: what was undone is forgotten, and a step that changed no row leaves no trace. */
  record(label: string, madeAt: string, work: () => void): void {
    const step = Number(this.#run.addStep.run(label, madeAt).lastInsertRowid);
    this.#recordInto(step, work);
    if (this.#run.anyInverse.get(step) === undefined) {
      this.#run.removeStep.run(step);
      return;
    }
    this.#run.forgetUndone.run(step);
    this.#run.forgetOldest.run(step - mostSteps);
    this.#countWrite({ number: step, label }, madeAt, 'done');
  }

  /** The rows that turning a step will write or remove. */
  touchedBy(step: Step): Touched[] {
    return this.#run.touched.all(step.number) as Touched[];
  }

  /** Takes a step back, or does it again, by its inverses; what they do is recorded as the way back. */
  turn(step: Step, to: 'undone' | 'done', madeAt: string): void {
    const statements = this.#run.inverses.all(step.number) as string[];
    this.#run.removeInverses.run(step.number);
    this.#recordInto(step.number, () => {
      for (const statement of statements) this.#database.exec(statement);
    });
    this.#run.markStep.run(to === 'undone' ? 1 : 0, step.number);
    this.#countWrite(step, madeAt, to === 'undone' ? 'undone' : 'done again');
  }

  /** The first row that is not as it was written, in words; null where all are. */
  wrongRow(): string | null {
    return this.#sums.wrong();
  }

  /** The writes after one revision up to another, the oldest first. */
  writings(after: number, upTo: number): Writing[] {
    const found = this.#run.writings.all(after, upTo) as (Omit<Writing, 'rows'> & { rows: string })[];
    return found.map((it) => ({ ...it, rows: JSON.parse(it.rows) as Writing['rows'] }));
  }

  #countWrite(step: Step, madeAt: string, did: Writing['did']): void {
    this.#run.countWrite.run();
    const revision = this.#run.revision.get() as number;
    const touchedRows = this.touchedBy(step);
    this.#sums.keep(touchedRows);
    const touched = touchedRows.map(({ table, id }) => [table, id]);
    const rows = touched.length > mostRowsNamed ? null : touched;
    this.#run.addWriting.run(revision, madeAt, this.#device, did, step.label, JSON.stringify(rows));
    this.#run.forgetWritings.run(revision - mostWritings);
  }

  #recordInto(step: number, work: () => void): void {
    this.#run.startRecording.run(step);
    work();
    this.#run.stopRecording.run();
  }
}

function prepareStatements(database: Database) {
  return {
    revision: database.prepare('SELECT "revision" FROM "standing"').pluck(),
    countWrite: database.prepare('UPDATE "standing" SET "revision" = "revision" + 1'),
    nextUndo: database.prepare(
      'SELECT "number", "label" FROM "steps" WHERE "undone" = 0 ORDER BY "number" DESC LIMIT 1',
    ),
    nextRedo: database.prepare(
      'SELECT "number", "label" FROM "steps" WHERE "undone" = 1 ORDER BY "number" LIMIT 1',
    ),
    addStep: database.prepare('INSERT INTO "steps" ("label", "madeAt") VALUES (?, ?)'),
    markStep: database.prepare('UPDATE "steps" SET "undone" = ? WHERE "number" = ?'),
    removeStep: database.prepare('DELETE FROM "steps" WHERE "number" = ?'),
    forgetUndone: database.prepare('DELETE FROM "steps" WHERE "undone" = 1 AND "number" < ?'),
    forgetOldest: database.prepare('DELETE FROM "steps" WHERE "number" <= ?'),
    anyInverse: database.prepare('SELECT 1 FROM "inverses" WHERE "step" = ?'),
    touched: database.prepare('SELECT DISTINCT "table", "rowId" AS "id" FROM "inverses" WHERE "step" = ?'),
    inverses: database
      .prepare('SELECT "statement" FROM "inverses" WHERE "step" = ? ORDER BY "number" DESC')
      .pluck(),
    removeInverses: database.prepare('DELETE FROM "inverses" WHERE "step" = ?'),
    addWriting: database.prepare(
      'INSERT INTO "writings" ("revision", "madeAt", "device", "did", "label", "rows") VALUES (?, ?, ?, ?, ?, ?)',
    ),
    forgetWritings: database.prepare('DELETE FROM "writings" WHERE "revision" <= ?'),
    writings: database.prepare(
      `SELECT "revision", "madeAt", "device", "did", "label", "rows" FROM "writings"
       WHERE "revision" > ? AND "revision" <= ? ORDER BY "revision"`,
    ),
    startRecording: database.prepare('INSERT INTO "recording" ("step") VALUES (?)'),
    stopRecording: database.prepare('DELETE FROM "recording"'),
  };
}

function triggersOf(table: TableName, columns: readonly Column[]): string {
  const name = quoteName(table);
  const put = `'DELETE FROM ${name} WHERE "putOrder" = ' || NEW."putOrder"`;
  const change = `'UPDATE ${name} SET "putOrder" = "putOrder"' || ${columns.map(restoreIfChanged).join(' || ')}
    || ' WHERE "putOrder" = ' || OLD."putOrder"`;
  const columnList = columns.map((column) => `, ${quoteName(column.name)}`).join('');
  const values = columns.map((column) => `', ' || ${oldLiteral(column)}`).join(' || ');
  const remove = `'INSERT INTO ${name} ("putOrder"${columnList}) VALUES (' || OLD."putOrder" || ${values} || ')'`;
  const isChange = columns.map(isChanged).join(' OR ');
  return `
    CREATE TEMP TRIGGER ${quoteName(`${table} put`)} AFTER INSERT ON main.${name}
      BEGIN ${recordInverse(table, 'NEW', put)}; END;
    CREATE TEMP TRIGGER ${quoteName(`${table} changed`)} AFTER UPDATE ON main.${name} WHEN ${isChange}
      BEGIN ${recordInverse(table, 'OLD', change)}; END;
    CREATE TEMP TRIGGER ${quoteName(`${table} removed`)} AFTER DELETE ON main.${name}
      BEGIN ${recordInverse(table, 'OLD', remove)}; END;`;
}

function recordInverse(table: TableName, row: 'OLD' | 'NEW', statement: string): string {
  return `INSERT INTO "inverses" ("step", "table", "rowId", "statement")
    SELECT "step", '${table}', ${row}."id", ${statement} FROM "recording"`;
}

function isChanged({ name }: Column): string {
  return `OLD.${quoteName(name)} IS NOT NEW.${quoteName(name)}`;
}

function restoreIfChanged(column: Column): string {
  return `CASE WHEN ${isChanged(column)} THEN ', ${quoteName(column.name)} = ' || ${oldLiteral(column)} ELSE '' END`;
}

/** SQL that makes the literal of an old value. `quote` ends a text at its first NUL, so such a text goes as bytes. */
function oldLiteral({ name, kind }: Column): string {
  const value = `OLD.${quoteName(name)}`;
  if (kind !== 'text') return `quote(${value})`;
  return `CASE WHEN instr(${value}, char(0)) THEN 'CAST(' || quote(CAST(${value} AS BLOB)) || ' AS TEXT)'
    ELSE quote(${value}) END`;
}
