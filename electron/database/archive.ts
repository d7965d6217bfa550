import { deflateRawSync, inflateRawSync } from 'node:zlib';
import type { Database } from 'better-sqlite3';
import { documentOfArchive, namesOfArchive, withoutRun } from '../../core/archive/archived-act.ts';
import { whatToArchive } from '../../core/archive/what-to-archive.ts';
import type { ArchivedAct, FoundInArchive } from '../../core/contract/archive.ts';
import type { Change } from '../../core/show/change.ts';
import type { Id } from '../../core/show/rig.ts';
import { type Show, ShowDocument } from '../../core/show/show.ts';
import { ArchiveNames, type NameRow } from './archive-names.ts';
import type { ShowRows } from './rows.ts';

/** An archived act as it lies in a file, to go to another file. `ranAt` is null for one that has not ended yet. */
export type StoredAct = Omit<ArchivedAct, 'ranAt'> & {
  ranAt: string | null;
  planned: Uint8Array;
  ran: Uint8Array | null;
  /** When it was taken out of the archive, from where it can still be put back. */
  removedAt?: string | null;
};

const monthMs = 30 * 24 * 60 * 60 * 1000;
const monthBefore = (at: string) => new Date(Date.parse(at) - monthMs).toISOString();

type Documents = { act: ArchivedAct; planned: ShowDocument; ran: ShowDocument };

const head = ['actId', 'actName', 'dayName', 'date', 'rigName', 'device'];
const told = [...head, 'plannedAt', 'ranAt'];
const list = (of: string) => told.map((name) => `${of}."${name}"`).join(', ');

/**
 * The acts that were played, as planned and as they ran. They stay when the show is replaced or a step is undone:
 * no row of the show, so no change ever takes one away; only the engineer does, by hand. All methods run inside the caller's transaction.
 */
export class Archive {
  readonly #rows: ShowRows;
  readonly #device: string;
  readonly #names: ArchiveNames;
  readonly #run: ReturnType<typeof prepareStatements>;

  constructor(database: Database, rows: ShowRows, device: string) {
    this.#rows = rows;
    this.#device = device;
    this.#names = new ArchiveNames(database, list('a'));
    this.#run = prepareStatements(database);
  }

  /** Writes a change by `write`, and archives what it says, before and after it. */
  follow(change: Change, at: string, write: () => void): void {
    const { plan, run } = whatToArchive(change, {
      hasAct: (id) => this.#rows.read('acts', id) !== null,
      hasPlan: (id) => this.#run.number.get(id) !== undefined,
      run: (id) => this.#rows.read('actRuns', id),
    });
    if (plan.length > 0) {
      const before = this.#rows.readAll();
      for (const actId of plan) this.#keepPlan(before, actId, at);
    }
    write();
    if (run.length === 0) return;
    const after = this.#rows.readAll();
    for (const actId of run) this.keep(after, actId, at);
  }

  /** Archives an act as it ran until now; where it has no plan yet, that is how it is planned now. */
  keep(show: Show, actId: Id, at: string): boolean {
    const document = documentOfArchive(show, actId);
    if (!document) return false;
    if (this.#run.number.get(actId) === undefined) this.#keepPlan(show, actId, at);
    this.#run.keepRun.run({ ...this.#headOf(document), ran: packed(document), ranAt: at });
    this.#run.putBack.run(this.#numberOf(actId));
    this.#index(actId, document);
    return true;
  }

  /** What was found for the words of a text; nothing asked for: the acts that ran last. */
  find(text: string, most: number): FoundInArchive[] {
    const words = text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word));
    if (words.length === 0) return this.newest(most).map((act) => ({ kind: 'act', name: act.actName, act }));
    return this.#names.find(words, most).map(foundName);
  }

  /**
   * Takes an act out of the archive: it is neither found nor read. It can be put back until another is taken out a
   * month or more later; then it goes for good. False where the archive has no such act.
   */
  remove(actId: Id, at: string): boolean {
    const number = this.#run.shown.get(actId) as number | undefined;
    if (number === undefined) return false;
    for (const gone of this.#run.longRemoved.all(monthBefore(at)) as number[]) this.#run.forget.run(gone);
    this.#names.remove(number);
    this.#run.remove.run(number, at);
    return true;
  }

  /** Puts a removed act back. False where it is not among the removed ones. */
  putBack(actId: Id): boolean {
    const row = this.#run.removed.get(actId) as { number: number; ran: Buffer } | undefined;
    if (!row) return false;
    this.#run.putBack.run(row.number);
    this.#index(actId, unpacked(row.ran));
    return true;
  }

  /** The acts that can be put back, the one that was removed last first. */
  removed(): ArchivedAct[] {
    return this.#run.allRemoved.all() as ArchivedAct[];
  }

  newest(most: number): ArchivedAct[] {
    return this.#run.newest.all(most) as ArchivedAct[];
  }

  count(): number {
    return this.#run.count.get() as number;
  }

  /** An archived act with its documents, or null. Throws a `ZodError` where they are none of this program. */
  read(actId: Id): Documents | null {
    const row = this.#run.one.get(actId) as (ArchivedAct & { planned: Buffer; ran: Buffer }) | undefined;
    if (!row) return null;
    const { planned, ran, ...act } = row;
    return { act, planned: unpacked(planned), ran: unpacked(ran) };
  }

  all(): StoredAct[] {
    return this.#run.all.all() as StoredAct[];
  }

  /**
   * Takes over acts of another file; of one that both have, the one that ran later stays. What cannot be read, as of
   * a damaged file, is left out.
   */
  adopt(acts: readonly StoredAct[]): void {
    for (const it of acts) {
      const here = this.#run.ranAt.get(it.actId) as { ranAt: string | null } | undefined;
      if ((here && (here.ranAt ?? '') >= (it.ranAt ?? '')) || !readable(it.planned)) continue;
      const ran = it.ran && readable(it.ran);
      if (it.ran && !ran) continue;
      const { removedAt, ...act } = it;
      this.#run.adopt.run(act);
      const number = this.#numberOf(it.actId);
      this.#run.putBack.run(number);
      if (ran && removedAt) this.#run.remove.run(number, removedAt);
      else if (ran) this.#index(it.actId, ran);
    }
  }

  #keepPlan(show: Show, actId: Id, at: string): void {
    const document = documentOfArchive(show, actId);
    if (!document) return;
    this.#run.keepPlan.run({
      ...this.#headOf(document),
      planned: packed(withoutRun(document)),
      plannedAt: at,
    });
  }

  #numberOf(actId: Id): number {
    return this.#run.number.get(actId) as number;
  }

  #headOf({ acts, days, rigs }: ShowDocument) {
    return {
      actId: acts[0]?.id ?? '',
      actName: acts[0]?.name ?? '',
      dayName: days[0]?.name ?? '',
      date: days[0]?.date ?? '',
      rigName: rigs[0]?.name ?? '',
      device: this.#device,
    };
  }

  #index(actId: Id, document: ShowDocument): void {
    const { actName, dayName, date, rigName } = this.#headOf(document);
    const names = namesOfArchive(document).map(({ kind, name }) => ({
      kind,
      name,
      place: kind === 'act' ? `${dayName} ${date} ${rigName}` : `${actName} ${dayName} ${date}`,
    }));
    this.#names.put(this.#numberOf(actId), names);
  }
}

const foundName = ({ number: _, kind, name, ...act }: NameRow): FoundInArchive => ({ kind, name, act });

/** Has run and was not taken out. */
const shown = '"ranAt" IS NOT NULL AND "number" NOT IN (SELECT "act" FROM "removedFromArchive")';

function prepareStatements(database: Database) {
  const write = (columns: readonly string[]) =>
    database.prepare(
      `INSERT INTO "archivedActs" (${columns.map((it) => `"${it}"`).join(', ')})
       VALUES (${columns.map((it) => `@${it}`).join(', ')})
       ON CONFLICT ("actId") DO UPDATE SET ${columns.map((it) => `"${it}" = excluded."${it}"`).join(', ')}`,
    );
  return {
    number: database.prepare('SELECT "number" FROM "archivedActs" WHERE "actId" = ?').pluck(),
    ranAt: database.prepare('SELECT "ranAt" FROM "archivedActs" WHERE "actId" = ?'),
    keepPlan: write([...head, 'planned', 'plannedAt']),
    keepRun: database.prepare(
      `UPDATE "archivedActs" SET ${[...head, 'ran', 'ranAt'].map((it) => `"${it}" = @${it}`).join(', ')}
       WHERE "actId" = @actId`,
    ),
    adopt: write([...head, 'planned', 'plannedAt', 'ran', 'ranAt']),
    newest: database.prepare(
      `SELECT ${list('a')} FROM "archivedActs" a WHERE ${shown} ORDER BY "ranAt" DESC LIMIT ?`,
    ),
    count: database.prepare(`SELECT count(*) FROM "archivedActs" WHERE ${shown}`).pluck(),
    one: database.prepare(
      `SELECT ${list('a')}, "planned", "ran" FROM "archivedActs" a WHERE "actId" = ? AND ${shown}`,
    ),
    shown: database.prepare(`SELECT "number" FROM "archivedActs" WHERE "actId" = ? AND ${shown}`).pluck(),
    all: database.prepare(
      `SELECT ${list('a')}, "planned", "ran", "removedAt" FROM "archivedActs" a
       LEFT JOIN "removedFromArchive" r ON r."act" = a."number" ORDER BY "number"`,
    ),
    remove: database.prepare('INSERT INTO "removedFromArchive" ("act", "removedAt") VALUES (?, ?)'),
    putBack: database.prepare('DELETE FROM "removedFromArchive" WHERE "act" = ?'),
    removed: database.prepare(
      `SELECT "number", "ran" FROM "archivedActs" JOIN "removedFromArchive" ON "act" = "number" WHERE "actId" = ?`,
    ),
    allRemoved: database.prepare(
      `SELECT ${list('a')} FROM "removedFromArchive" r JOIN "archivedActs" a ON a."number" = r."act"
       ORDER BY "removedAt" DESC, "act" DESC`,
    ),
    longRemoved: database.prepare('SELECT "act" FROM "removedFromArchive" WHERE "removedAt" < ?').pluck(),
    forget: database.prepare('DELETE FROM "archivedActs" WHERE "number" = ?'),
  };
}

const packed = (document: ShowDocument): Buffer => deflateRawSync(JSON.stringify(document));
const unpacked = (bytes: Uint8Array): ShowDocument =>
  ShowDocument.parse(JSON.parse(inflateRawSync(bytes).toString('utf8')));

function readable(bytes: Uint8Array): ShowDocument | null {
  try {
    return unpacked(bytes);
  } catch {
    return null;
  }
}
