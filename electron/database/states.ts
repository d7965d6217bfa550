import { randomUUID } from 'node:crypto';
import type { Database, Statement } from 'better-sqlite3';
import type { PartRoot } from '../../core/show/part-of-show.ts';
import type { Id } from '../../core/show/rig.ts';
import { documentFromShow, type Show, ShowDocument } from '../../core/show/show.ts';

/**
 * A named state without what is in it. `revision`: the write after which it was kept; -1 where it was kept in
 * another file, whose writes are not in this one.
 */
export type KeptState = { id: Id; name: string; keptAt: string; device: string; revision: number };

/** A state to keep: of what, under which name, and the rows of it. */
export type NewState = { of: PartRoot; name: string; part: Show };

/** A state as it is kept, with what it is of. */
export type StoredState = KeptState & { ofTable: PartRoot['table']; ofId: Id; document: string };

const columns = '"id", "ofTable", "ofId", "name", "keptAt", "device", "revision"';

/** The named states in a show file, as documents. All methods run inside the caller's transaction. */
export class States {
  readonly #device: string;
  readonly #add: Statement;
  readonly #list: Statement;
  readonly #one: Statement;
  readonly #all: Statement;

  constructor(database: Database, device: string) {
    this.#device = device;
    this.#add = database.prepare(
      `INSERT INTO "states" (${columns}, "document") VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT ("id") DO NOTHING`,
    );
    this.#list = database.prepare(
      `SELECT "id", "name", "keptAt", "device", "revision" FROM "states"
       WHERE "ofTable" = ? AND "ofId" = ? ORDER BY "number" DESC`,
    );
    this.#one = database.prepare(`SELECT ${columns}, "document" FROM "states" WHERE "id" = ?`);
    this.#all = database.prepare(`SELECT ${columns}, "document" FROM "states" ORDER BY "number"`);
  }

  keep({ of, name, part }: NewState, keptAt: string, revision: number): KeptState {
    const state = { id: randomUUID(), name, keptAt, device: this.#device, revision };
    this.#put({ ...state, ofTable: of.table, ofId: of.id, document: JSON.stringify(documentFromShow(part)) });
    return state;
  }

  list(of: PartRoot): KeptState[] {
    return this.#list.all(of.table, of.id) as KeptState[];
  }

  read(id: Id): (KeptState & { document: ShowDocument }) | null {
    const stored = this.#one.get(id) as StoredState | undefined;
    if (!stored) return null;
    const { ofTable, ofId, document, ...state } = stored;
    return { ...state, document: ShowDocument.parse(JSON.parse(document)) };
  }

  all(): StoredState[] {
    return this.#all.all() as StoredState[];
  }

  /** Takes over states of another file that are not in this one. */
  adopt(states: readonly StoredState[]): void {
    for (const state of states) this.#put({ ...state, revision: -1 });
  }

  #put(it: StoredState): void {
    this.#add.run(it.id, it.ofTable, it.ofId, it.name, it.keptAt, it.device, it.revision, it.document);
  }
}
