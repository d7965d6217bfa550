import type { Database } from 'better-sqlite3';
import { type ArchivedKind, archivedKinds } from '../../core/archive/archived-act.ts';
import type { ArchivedAct } from '../../core/contract/archive.ts';

/** A name of the archive with the act it was found in. */
export type NameRow = ArchivedAct & { number: number; kind: ArchivedKind; name: string };

export type ArchivedName = { kind: ArchivedKind; name: string; place: string };

/** Shorter words have no three letters in a row to be looked up by; their beginnings are found. */
const shortestInside = 3;

/** The names of archived acts, found by the beginnings of their words and by what stands inside them. */
export class ArchiveNames {
  readonly #run: ReturnType<typeof prepareStatements>;

  /** `told`: the columns of an archived act (`a`) that come with a name. */
  constructor(database: Database, told: string) {
    this.#run = prepareStatements(database, told);
  }

  /** Puts the names of an act in place of those it had. */
  put(act: number, names: readonly ArchivedName[]): void {
    this.remove(act);
    for (const { kind, name, place } of names) this.#run.add.run(act, kind, name, place);
    this.#run.index.run(act);
    this.#run.indexInside.run(act);
  }

  remove(act: number): void {
    this.#run.unindex.run(act);
    this.#run.unindexInside.run(act);
    this.#run.remove.run(act);
  }

  /**
   * What was found by the beginnings of words: acts, performers, sources, each the newest first, with an equal share
   * of the room each. Two words may be one of an act and one of what is in it. Where there is room left, names with
   * the letters somewhere inside come after them.
   */
  find(words: readonly string[], most: number): NameRow[] {
    const found = new Map(this.#byBeginnings(words, most).map((row) => [row.number, row]));
    if (found.size < most && words.every((word) => word.length >= shortestInside))
      for (const row of this.#inside(words, most)) if (!found.has(row.number)) found.set(row.number, row);
    return [...found.values()].slice(0, most);
  }

  #byBeginnings(words: readonly string[], most: number): NameRow[] {
    const begins = words.map((word) => `${quoted(word)} *`);
    const seek = (match: string) => this.#run.find.all(match, most) as NameRow[];
    const found = shareOut(
      archivedKinds.map((kind) => seek(`kind : "${kind}" AND name : (${begins.join(' AND ')})`)),
      most,
    );
    return begins.length > 1 && found.length < most ? [...found, ...namesAndPlaces(begins, seek)] : found;
  }

  #inside(words: readonly string[], most: number): NameRow[] {
    const inside = words.map(quoted);
    const seek = (match: string) => this.#run.findInside.all(match, most) as NameRow[];
    const found = seek(`name : (${inside.join(' AND ')})`);
    return inside.length > 1 && found.length < most ? [...found, ...namesAndPlaces(inside, seek)] : found;
  }
}

const quoted = (word: string) => `"${word.replaceAll('"', '""')}"`;

/** One word in the name, the others there or in what tells where it is from. */
const namesAndPlaces = (words: readonly string[], seek: (match: string) => NameRow[]): NameRow[] =>
  words.flatMap((word) =>
    seek(`name : ${word} AND {name place} : (${words.filter((it) => it !== word).join(' AND ')})`),
  );

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

function prepareStatements(database: Database, told: string) {
  const ofNames = `FROM "archivedNames" WHERE "act" = ?`;
  // An index without texts of its own has to be told what goes (sqlite.org/fts5.html, external content tables).
  const unindex = (index: string, columns: string) =>
    database.prepare(
      `INSERT INTO "${index}" ("${index}", "rowid", ${columns}) SELECT 'delete', "number", ${columns} ${ofNames}`,
    );
  const intoIndex = (index: string, columns: string) =>
    database.prepare(`INSERT INTO "${index}" ("rowid", ${columns}) SELECT "number", ${columns} ${ofNames}`);
  const find = (index: string) =>
    database.prepare(
      `SELECT n."number", n."kind", n."name", ${told}
       FROM "${index}" i CROSS JOIN "archivedNames" n ON n."number" = i."rowid"
       CROSS JOIN "archivedActs" a ON a."number" = n."act"
       WHERE "${index}" MATCH ? ORDER BY i."rowid" DESC LIMIT ?`,
    );
  return {
    add: database.prepare('INSERT INTO "archivedNames" ("act", "kind", "name", "place") VALUES (?, ?, ?, ?)'),
    remove: database.prepare(`DELETE ${ofNames}`),
    index: intoIndex('archivedNamesIndex', '"kind", "name", "place"'),
    unindex: unindex('archivedNamesIndex', '"kind", "name", "place"'),
    indexInside: intoIndex('archivedNamesInside', '"name", "place"'),
    unindexInside: unindex('archivedNamesInside', '"name", "place"'),
    find: find('archivedNamesIndex'),
    findInside: find('archivedNamesInside'),
  };
}
