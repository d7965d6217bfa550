import Database from 'better-sqlite3';
import type { ArchivedAct, FoundInArchive } from '../../core/contract/archive.ts';
import type { Changed, Standing } from '../../core/contract/contract.ts';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import type { Edition } from '../../core/sheets/edition.ts';
import { applyChange, findBrokenReferences } from '../../core/show/apply-change.ts';
import { Change } from '../../core/show/change.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show, ShowDocument } from '../../core/show/show.ts';
import { Archive, type StoredAct } from './archive.ts';
import { changeToNow } from './change-to-now.ts';
import { copyOpenShow } from './copy-show.ts';
import { History, type Step, type Writing } from './history.ts';
import { PrintedSheets } from './printed-sheets.ts';
import { ShowRows } from './rows.ts';
import { type KeptState, type NewState, States, type StoredState } from './states.ts';
import { problemOf } from './trouble.ts';

export type WriterSettings = {
  now: () => Date;
  /** The name of this machine, under which its writes are told. */
  device: string;
};

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
  readonly #states: States;
  readonly #archive: Archive;
  readonly #now: () => Date;

  /** For `openShow`: the database is at the newest version and is this object's alone from here on. */
  constructor(path: string, database: Database.Database, { now, device }: WriterSettings) {
    this.path = path;
    this.#database = database;
    this.#rows = new ShowRows(database);
    this.#history = new History(database, device);
    this.#printed = new PrintedSheets(database);
    this.#states = new States(database, device);
    this.#archive = new Archive(database, this.#rows, device);
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
        this.#archive.follow(checked, madeAt, () =>
          this.#history.record(checked.label, madeAt, () => this.#rows.write(checked)),
        );
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

  /** Keeps a state of an act or a day under a name. No step of undo: what is kept takes nothing away. */
  keepState(state: NewState): Outcome<KeptState> {
    return this.#write(() => this.#states.keep(state, this.#now().toISOString(), this.standing().revision));
  }

  /** The states kept of an act or a day, the newest first. */
  states(of: NewState['of']): KeptState[] {
    return this.#states.list(of);
  }

  /** One kept state with its document, or null where there is none of that id. */
  state(id: Id): (KeptState & { document: ShowDocument }) | null {
    return this.#states.read(id);
  }

  /** Every kept state with its document, to go to another file. */
  allStates(): StoredState[] {
    return this.#states.all();
  }

  /** Brings in states of another file that are not here yet. */
  adoptStates(states: readonly StoredState[]): Outcome<null> {
    return this.#write(() => {
      this.#states.adopt(states);
      return null;
    });
  }

  /** Archives an act as it ran until now. False where there is no such act. No step of undo. */
  keepInArchive(actId: Id): Outcome<boolean> {
    return this.#write(() => this.#archive.keep(this.read(), actId, this.#now().toISOString()));
  }

  /** Takes an act out of the archive, from where it can be put back for a month. False where it is not there. */
  removeFromArchive(actId: Id): Outcome<boolean> {
    return this.#write(() => this.#archive.remove(actId, this.#now().toISOString()));
  }

  /** Puts a removed act back. False where it is not among the removed ones. */
  putBackIntoArchive(actId: Id): Outcome<boolean> {
    return this.#write(() => this.#archive.putBack(actId));
  }

  /** The acts that were taken out and can be put back. */
  removedFromArchive(): ArchivedAct[] {
    return this.#archive.removed();
  }

  /** What the archive has by the beginnings of words, then inside them; nothing asked for: the acts that ran last. */
  findInArchive(text: string, most: number): FoundInArchive[] {
    return this.#archive.find(text, most);
  }

  /** How many acts the archive holds. */
  archivedCount(): number {
    return this.#archive.count();
  }

  /** An archived act as planned and as it ran; `damaged show` where it cannot be read. */
  archivedAct(actId: Id): Outcome<ReturnType<Archive['read']>> {
    return this.#write(() => this.#archive.read(actId));
  }

  /** Every archived act, to go to another file. */
  allArchived(): StoredAct[] {
    return this.#archive.all();
  }

  /** Brings in archived acts of another file. */
  adoptArchived(acts: readonly StoredAct[]): Outcome<null> {
    return this.#write(() => {
      this.#archive.adopt(acts);
      return null;
    });
  }

  /** The writes after one revision up to another, the oldest first. */
  writings(after: number, upTo: number): Writing[] {
    return this.#history.writings(after, upTo);
  }

  /** Writes a whole copy beside the work, in small steps between which the program goes on. Throws as SQLite does. */
  async copyTo(path: string): Promise<void> {
    await copyOpenShow(this.#database, path);
  }

  /** What is in the file now, as the bytes of a file. */
  bytes(): Buffer {
    return this.#database.serialize();
  }

  /** The first row that is not as it was written, in words; null where all are. */
  wrongRow(): string | null {
    return this.#history.wrongRow();
  }

  /** What a thorough look finds wrong in the file, or null. It takes a second for each 100 MB or so. */
  damage(): string | null {
    try {
      const found = String(this.#database.pragma('integrity_check(1)', { simple: true }));
      return found === 'ok' ? null : found;
    } catch (error) {
      return problemOf(error, this.path)?.what ?? String(error);
    }
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
      this.#history.turn(step, to, this.#now().toISOString());
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
