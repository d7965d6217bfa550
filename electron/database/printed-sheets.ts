import type { Database, Statement } from 'better-sqlite3';
import { Edition } from '../../core/sheets/edition.ts';

/** What was printed last of each sheet, as it is kept with the show. */
export class PrintedSheets {
  readonly #read: Statement<[string], { edition: string }>;
  readonly #write: Statement<[string, string]>;

  constructor(database: Database) {
    this.#read = database.prepare('SELECT "edition" FROM "printedSheets" WHERE "key" = ?');
    this.#write = database.prepare(
      'INSERT INTO "printedSheets" ("key", "edition") VALUES (?, ?) ON CONFLICT DO UPDATE SET "edition" = excluded."edition"',
    );
  }

  /** The last editions of these sheets by key; a sheet that was never printed has none. */
  last(keys: readonly string[]): Map<string, Edition> {
    return new Map(
      keys.flatMap((key) => {
        const row = this.#read.get(key);
        const edition = row && editionOf(row.edition);
        return edition ? [[key, edition] as const] : [];
      }),
    );
  }

  /** For `ShowDatabase`, within its transaction. */
  keep(printed: readonly { key: string; edition: Edition }[]): void {
    for (const { key, edition } of printed) this.#write.run(key, JSON.stringify(edition));
  }
}

/** A print that cannot be read is as good as none: the sheet starts again at version 1. */
function editionOf(text: string): Edition | null {
  try {
    return Edition.parse(JSON.parse(text));
  } catch {
    return null;
  }
}
