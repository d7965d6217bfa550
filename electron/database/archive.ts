import { deflateRawSync, inflateRawSync } from 'node:zlib';
import type { Database } from 'better-sqlite3';
import {
  type ArchivedKind,
  archivedKinds,
  documentOfArchive,
  namesOfArchive,
  withoutRun,
} from '../../core/archive/archived-act.ts';
import { whatToArchive } from '../../core/archive/what-to-archive.ts';
import type { ArchivedAct, FoundInArchive } from '../../core/contract/archive.ts';
import type { Change } from '../../core/show/change.ts';
import type { Id } from '../../core/show/rig.ts';
import { type Show, ShowDocument } from '../../core/show/show.ts';
import type { ShowRows } from './rows.ts';

/** An archived act as it lies in a file, to go to another file. `ranAt` is null for one that has not ended yet. */
export type StoredAct = Omit<ArchivedAct, 'ranAt'> & {
  ranAt: string | null;
  planned: Uint8Array;
  ran: Uint8Array | null;
};

type Documents = { act: ArchivedAct; planned: ShowDocument; ran: ShowDocument };

const head = ['actId', 'actName', 'dayName', 'date', 'rigName', 'device'];
const told = [...head, 'plannedAt', 'ranAt'];
const list = (of: string) => told.map((name) => `${of}."${name}"`).join(', ');

/**
 * The acts that were played, as planned and as they ran. They stay when the show is replaced or a step is undone:
 * no row of the show, so no change ever takes one away. All methods run inside the caller's transaction.
 */
export class Archive {
  readonly #rows: ShowRows;
  readonly #device: string;
  readonly #run: ReturnType<typeof prepareStatements>;

  constructor(database: Database, rows: ShowRows, device: string) {
    this.#rows = rows;
    this.#device = device;
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
    this.#index(actId, document);
    return true;
  }

  /**
   * What was found by the beginnings of words: acts, performers, sources, each the newest first. Where there is more
   * than fits, every kind has a third of the room. Two words may be one of an act and one of what is in it.
   */
  find(text: string, most: number): FoundInArchive[] {
    const words = text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word));
    if (words.length === 0) return this.newest(most).map((act) => ({ kind: 'act', name: act.actName, act }));
    const begins = words.map((word) => `"${word.replaceAll('"', '""')}" *`);
    const seek = (match: string) => this.#run.find.all(match, most) as NameRow[];
    const found = shareOut(
      archivedKinds.map((kind) => seek(`kind : "${kind}" AND name : (${begins.join(' AND ')})`)),
      most,
    );
    if (begins.length > 1 && found.length < most)
      for (const begin of begins)
        found.push(
          ...seek(
            `name : ${begin} AND {name place} : (${begins.filter((it) => it !== begin).join(' AND ')})`,
          ),
        );
    const byNumber = new Map(found.map((row) => [row.number, row]));
    return [...byNumber.values()].slice(0, most).map(foundName);
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
      this.#run.adopt.run(it);
      if (ran) this.#index(it.actId, ran);
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
    const number = this.#run.number.get(actId);
    this.#run.unindex.run(number);
    this.#run.removeNames.run(number);
    const { actName, dayName, date, rigName } = this.#headOf(document);
    for (const { kind, name } of namesOfArchive(document)) {
      const place = kind === 'act' ? `${dayName} ${date} ${rigName}` : `${actName} ${dayName} ${date}`;
      this.#run.addName.run(number, kind, name, place);
    }
    this.#run.reindex.run(number);
  }
}

type NameRow = ArchivedAct & { number: number; kind: ArchivedKind; name: string };

const foundName = ({ number: _, kind, name, ...act }: NameRow): FoundInArchive => ({ kind, name, act });

/** The lists in their order with an equal share of the room each, and what one leaves free for the others. */
function shareOut<T>(lists: readonly T[][], room: number): T[] {
  const share = Math.ceil(room / lists.length);
  let free = room - lists.reduce((sum, list) => sum + Math.min(list.length, share), 0);
  return lists.flatMap((list) => {
    const more = Math.max(0, Math.min(list.length - share, free));
    free -= more;
    return list.slice(0, share + more);
  });
}

function prepareStatements(database: Database) {
  const write = (columns: readonly string[]) =>
    database.prepare(
      `INSERT INTO "archivedActs" (${columns.map((it) => `"${it}"`).join(', ')})
       VALUES (${columns.map((it) => `@${it}`).join(', ')})
       ON CONFLICT ("actId") DO UPDATE SET ${columns.map((it) => `"${it}" = excluded."${it}"`).join(', ')}`,
    );
  const ofNames = `FROM "archivedNames" WHERE "act" = ?`;
  return {
    number: database.prepare('SELECT "number" FROM "archivedActs" WHERE "actId" = ?').pluck(),
    ranAt: database.prepare('SELECT "ranAt" FROM "archivedActs" WHERE "actId" = ?'),
    keepPlan: write([...head, 'planned', 'plannedAt']),
    keepRun: database.prepare(
      `UPDATE "archivedActs" SET ${[...head, 'ran', 'ranAt'].map((it) => `"${it}" = @${it}`).join(', ')}
       WHERE "actId" = @actId`,
    ),
    adopt: write([...head, 'planned', 'plannedAt', 'ran', 'ranAt']),
    addName: database.prepare(
      'INSERT INTO "archivedNames" ("act", "kind", "name", "place") VALUES (?, ?, ?, ?)',
    ),
    removeNames: database.prepare(`DELETE ${ofNames}`),
    // An index without texts of its own has to be told what goes (sqlite.org/fts5.html, external content tables).
    unindex: database.prepare(
      `INSERT INTO "archivedNamesIndex" ("archivedNamesIndex", "rowid", "kind", "name", "place")
       SELECT 'delete', "number", "kind", "name", "place" ${ofNames}`,
    ),
    reindex: database.prepare(
      `INSERT INTO "archivedNamesIndex" ("rowid", "kind", "name", "place")
       SELECT "number", "kind", "name", "place" ${ofNames}`,
    ),
    find: database.prepare(
      `SELECT n."number", n."kind", n."name", ${list('a')}
       FROM "archivedNamesIndex" i CROSS JOIN "archivedNames" n ON n."number" = i."rowid"
       CROSS JOIN "archivedActs" a ON a."number" = n."act"
       WHERE "archivedNamesIndex" MATCH ? ORDER BY i."rowid" DESC LIMIT ?`,
    ),
    newest: database.prepare(
      `SELECT ${list('a')} FROM "archivedActs" a WHERE "ranAt" IS NOT NULL ORDER BY "ranAt" DESC LIMIT ?`,
    ),
    count: database.prepare('SELECT count(*) FROM "archivedActs" WHERE "ranAt" IS NOT NULL').pluck(),
    one: database.prepare(
      `SELECT ${list('a')}, "planned", "ran" FROM "archivedActs" a WHERE "actId" = ? AND "ranAt" IS NOT NULL`,
    ),
    all: database.prepare(`SELECT ${list('a')}, "planned", "ran" FROM "archivedActs" a ORDER BY "number"`),
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
