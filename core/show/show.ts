import { z } from 'zod';
import { Act, Alternate, Copy, Day, Decision, Listener, Mix, Performer, Source, Wish } from './act.ts';
import { ActRun, LineResult, RanLevel, RunNote } from './as-ran.ts';
import { OwnWord } from './own-word.ts';
import { references } from './references.ts';
import { Answer, RiderRecord } from './rider-record.ts';
import { Box, Bus, CueOutput, Device, type Id, Output, Rig, Socket, StockItem } from './rig.ts';
import { Tick } from './tick.ts';

/**
 * The tables of a show, parents before children: the order in which rows can be written one by one.
 * Every table holds rows with an `id`; references between rows are in `references.ts`.
 */
export const rowSchemas = {
  rigs: Rig,
  boxes: Box,
  sockets: Socket,
  buses: Bus,
  outputs: Output,
  devices: Device,
  stockItems: StockItem,
  cueOutputs: CueOutput,
  days: Day,
  acts: Act,
  performers: Performer,
  sources: Source,
  mixes: Mix,
  listeners: Listener,
  wishes: Wish,
  copies: Copy,
  alternates: Alternate,
  decisions: Decision,
  riders: RiderRecord,
  answers: Answer,
  ticks: Tick,
  ownWords: OwnWord,
  actRuns: ActRun,
  lineResults: LineResult,
  ranLevels: RanLevel,
  runNotes: RunNote,
} as const;

export type TableName = keyof typeof rowSchemas;
export const tableNames = Object.keys(rowSchemas) as TableName[];

export type RowOf<T extends TableName> = z.infer<(typeof rowSchemas)[T]>;
export type Rows = { [T in TableName]: readonly RowOf<T>[] };

/** A whole show in memory: plain rows by table, each table by id. Values are never changed in place. */
export type Show = { readonly [T in TableName]: ReadonlyMap<Id, RowOf<T>> };

const rowArrays = Object.fromEntries(
  tableNames.map((table) => [table, z.array(rowSchemas[table]).default([])]),
) as { [T in TableName]: z.ZodDefault<z.ZodArray<(typeof rowSchemas)[T]>> };

/** A show as a document: the JSON that is exported, imported and checked. */
export const ShowDocument = z.strictObject({
  format: z.literal('foldbook-show'),
  version: z.literal(1),
  ...rowArrays,
});
export type ShowDocument = z.infer<typeof ShowDocument>;

/** A show with no row at all. */
export function emptyShow(): Show {
  return Object.fromEntries(tableNames.map((table) => [table, new Map()])) as unknown as Show;
}

/** Rows by table to a show. Later rows of the same id win. */
export function showFromRows(rows: Partial<Rows>): Show {
  const entries = tableNames.map((table) => [
    table,
    new Map((rows[table] ?? []).map((row) => [row.id, row])),
  ]);
  const show = Object.fromEntries(entries) as unknown as Show;
  shareTextsOfIds(show);
  return show;
}

/**
 * Makes every reference the very text that the row it names has as its id. Rows that were read each come with a text of
 * their own, and a show names a few hundred rows many thousand times: it is smaller then, and an id is found by what it
 * is and not letter by letter, which takes a tenth off deriving. Nothing else can tell: the value is the same.
 */
function shareTextsOfIds(show: Show): void {
  for (const { table, field, to } of references) {
    const named = show[to];
    for (const row of show[table].values() as Iterable<Record<string, unknown>>) {
      const id = row[field];
      const shared = typeof id === 'string' ? named.get(id)?.id : undefined;
      if (shared !== undefined) row[field] = shared;
    }
  }
}

/** The show as a document, tables in their fixed order and rows in the order they were put in. */
export function documentFromShow(show: Show): ShowDocument {
  const tables = Object.fromEntries(tableNames.map((table) => [table, [...show[table].values()]]));
  return { format: 'foldbook-show', version: 1, ...(tables as unknown as Rows) } as ShowDocument;
}
