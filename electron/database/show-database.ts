import Database from 'better-sqlite3';
import type { Changed, Standing } from '../../core/contract/contract.ts';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import type { Edition } from '../../core/sheets/edition.ts';
import { applyChange, findBrokenReferences } from '../../core/show/apply-change.ts';
import { Change } from '../../core/show/change.ts';
import type { Show } from '../../core/show/show.ts';
import { changeToNow } from './change-to-now.ts';
import { History, type Step } from './history.ts';
import { PrintedSheets } from './printed-sheets.ts';
import { ShowRows } from './rows.ts';
import { problemOf } from './trouble.ts';

/**
 * An open show. Every write is one durable transaction: when it answers, the change is on the disk. Answers are
 * outcomes; what is thrown is a bug. Everything is synchronous, for a transaction must not wait for anything.
 */
export class ShowDatabase {
  readonly path: string;
  readonly #database: Database.Database;
  readonly #rows: ShowRows;
  readonly #history: History;
  readonly #printed: PrintedSheets;
  readonly #now: () => Date;

  /** For `openShow`: the database is at the newest version and is this object's alone from here on. */
  constructor(path: string, database: Database.Database, now: () => Date) {
    this.path = path;
    this.#database = database;
    this.#rows = new ShowRows(database);
    this.#history = new History(database);
    this.#printed = new PrintedSheets(database);
    this.#now = now;
  }

  read(): Show {
    return this.#rows.readAll();
  }

  standing(): Standing {
    return this.#history.standing();
  }

  /** Writes a change, or nothing of it. `broken reference` where a row names one that would not be there. */
  change(change: Change): Outcome<Standing> {
    const checked = Change.parse(change);
    const madeAt = this.#now().toISOString();
    return this.#write(
      () => {
        this.#history.record(checked.label, madeAt, () => this.#rows.write(checked));
        return this.standing();
      },
      () => this.#brokenReference(checked),
    );
  }

  /** Takes the newest step back. Answers the change that a window must make to stand where the show now stands. */
  undo(): Outcome<Changed> {
    const step = this.#history.nextUndo();
    if (!step) return refuse('nothing to undo', 'There is nothing to undo.', 'Go on working.');
    return this.#turn(step, 'undone');
  }

  redo(): Outcome<Changed> {
    const step = this.#history.nextRedo();
    if (!step) return refuse('nothing to undo', 'There is nothing to do again.', 'Go on working.');
    return this.#turn(step, 'done');
  }

  /** The last print of each of these sheets that was ever printed, by its key. */
  lastPrints(keys: readonly string[]): Map<string, Edition> {
    return this.#printed.last(keys);
  }

  /** Remembers what was printed. No step of undo: paper that is out stays out. */
  keepPrints(printed: readonly { key: string; edition: Edition }[]): Outcome<null> {
    return this.#write(() => {
      this.#printed.keep(printed);
      return null;
    });
  }

  /** Ends the work on the file and brings all of it into the one file. */
  close(): void {
    this.#database.close();
  }

  #turn(step: Step, to: 'undone' | 'done'): Outcome<Changed> {
    return this.#write(() => {
      const touched = this.#history
        .touchedBy(step)
        .map((it) => ({ ...it, before: this.#rows.read(it.table, it.id) }));
      this.#history.turn(step, to);
      return { change: changeToNow(this.#rows, step.label, touched), standing: this.standing() };
    });
  }

  #write<T>(work: () => T, onBrokenReference?: () => Outcome<never>): Outcome<T> {
    try {
      return { ok: true, value: this.#database.transaction(work).immediate() };
    } catch (error) {
      if (onBrokenReference && isBrokenReference(error)) return onBrokenReference();
      const problem = problemOf(error, this.path);
      if (!problem) throw error;
      return { ok: false, problem };
    }
  }

  #brokenReference(change: Change): Outcome<never> {
    const broken = findBrokenReferences(applyChange(this.read(), change))[0];
    const where = broken ? ` (${broken.field} of a row of ${broken.table})` : '';
    return refuse(
      'broken reference',
      `"${change.label}" was not done: it refers to something that is no longer in the show${where}.`,
      'Look at the show as it is now and do it again. Nothing was changed.',
    );
  }
}

function isBrokenReference(error: unknown): boolean {
  return error instanceof Database.SqliteError && error.code === 'SQLITE_CONSTRAINT_FOREIGNKEY';
}
