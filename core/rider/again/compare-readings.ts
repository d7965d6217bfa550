import type { ActSheet } from '../../show/act-sheet.ts';
import type { Change, Put } from '../../show/change.ts';
import type { Id } from '../../show/rig.ts';
import type { TableName } from '../../show/show.ts';
import { squash } from '../language/text.ts';
import type { Reading } from '../reading.ts';
import { alignReading } from './align-reading.ts';
import { mergeReading, rowsAsRead } from './merge-reading.ts';

/** What the later version of a rider would do to one thing of the act. */
export type Consequence = {
  /** Stable for one comparison. */
  key: string;
  of: 'source' | 'mix' | 'listener' | 'wish' | 'performer';
  kind: 'added' | 'removed' | 'changed';
  /** What it is of: the name of the source, mix or performer; of a wish or listener the mix and what is wished. */
  name: string;
  /** The field that changes, or null for a whole row. */
  field: string | null;
  /** As it stands in the act now, and as it would be; empty where there is nothing. */
  now: string;
  next: string;
  /** The engineer put this right or decided on it: it is no longer as the earlier version said. */
  overwrites: boolean;
  puts: { table: TableName; row: Row; fields: readonly string[] | null }[];
  removes: Change['remove'];
};

export type LineChange = { before: string | null; after: string | null };

export type Comparison = {
  lines: LineChange[];
  consequences: Consequence[];
};

type Row = { id: Id } & Readonly<Record<string, unknown>>;

/**
 * A rider that came again: what differs between its two readings, and what each difference would do to the act as
 * it stands. `newId` makes ids for rows to come. Changes nothing.
 */
export function compareReadings(
  sheet: ActSheet,
  before: Reading,
  after: Reading,
  newId: () => Id,
): Comparison {
  const aligned = alignReading(before, after);
  const merge = mergeReading(sheet, before, aligned, newId);
  const rows = new Rows(sheet, merge.put);
  const asRead = rowsAsRead(sheet, before);
  const removed = new Set(merge.remove.map(({ id }) => id));
  const wholes = merge.put.filter(({ row }) => !rows.isThere(row.id));
  const parents = [
    ...wholes.filter(({ table }) => !isChild(table)).map((it) => addition(it, wholes, rows)),
    ...merge.remove.filter(({ table }) => !isChild(table)).map((it) => removal(it, sheet, rows, asRead)),
    ...merge.put.filter(({ row }) => rows.isThere(row.id)).flatMap((it) => changes(it, rows, asRead)),
  ];
  return {
    lines: lineChanges(before, aligned),
    consequences: [...joinPairs(parents), ...childChanges(merge, wholes, removed, rows, asRead)],
  };
}

const isChild = (table: TableName) => table === 'listeners' || table === 'wishes';

const singular = {
  performers: 'performer',
  sources: 'source',
  mixes: 'mix',
  listeners: 'listener',
  wishes: 'wish',
} as const;
type ReadTable = keyof typeof singular;
const ofTable = (table: TableName): Consequence['of'] => singular[table as ReadTable];

/** The rows of the act and those to come, with their names. */
class Rows {
  readonly #now: ReadonlyMap<Id, Row>;
  readonly #next: ReadonlyMap<Id, Row>;

  constructor(sheet: ActSheet, puts: readonly Put[]) {
    const tables = Object.keys(singular) as ReadTable[];
    const now = tables.flatMap((table) => sheet[table] as unknown as Row[]);
    this.#now = new Map(now.map((row) => [row.id, row]));
    this.#next = new Map(puts.map(({ row }) => [row.id, row as unknown as Row]));
  }

  isThere = (id: Id): boolean => this.#now.has(id);
  now = (id: Id): Row | undefined => this.#now.get(id);
  all = (): Row[] => [...this.#now.values()];

  /** The name of a row; of a wish or listener its mix and what it is of. */
  nameOf(row: Row): string {
    const nameById = (id: unknown) => {
      const found = typeof id === 'string' ? (this.#next.get(id) ?? this.#now.get(id)) : undefined;
      return typeof found?.name === 'string' ? found.name : '';
    };
    if (typeof row.name === 'string') return row.name;
    const what = row.sourceId ?? row.performerId ?? row.sameAsMixId;
    return [nameById(row.mixId), nameById(what) || String(row.group ?? '')].filter(Boolean).join(': ');
  }

  textOf(value: unknown): string {
    if (value === null || value === undefined) return '';
    const row = typeof value === 'string' ? (this.#now.get(value) ?? this.#next.get(value)) : undefined;
    return row ? this.nameOf(row) : String(value);
  }
}

function addition({ table, row }: Put, wholes: readonly Put[], rows: Rows): Consequence {
  const children =
    table === 'mixes'
      ? wholes.filter((it) => 'mixId' in it.row && it.row.mixId === row.id && isChild(it.table))
      : [];
  return {
    key: `${table} ${row.id}`,
    of: ofTable(table),
    kind: 'added',
    name: rows.nameOf(row as unknown as Row),
    field: null,
    now: '',
    next: summaryOf(row as unknown as Row),
    overwrites: false,
    puts: [
      { table, row: row as unknown as Row },
      ...children.map((it) => ({ table: it.table, row: it.row as unknown as Row })),
    ].map((it) => ({ ...it, fields: null })),
    removes: [],
  };
}

/** The few words that tell what a row is. */
function summaryOf(row: Row): string {
  const parts = [row.kind, row.pickUp, row.deviceKind, row.amount, row.levelDb];
  return parts.filter((it) => it !== null && it !== undefined).join(', ');
}

function removal(
  removed: Change['remove'][number],
  sheet: ActSheet,
  rows: Rows,
  asRead: ReadonlyMap<Id, Row>,
): Consequence {
  const { id } = removed;
  const row = rows.now(id) ?? { id };
  const decided = [...sheet.decisions, ...sheet.copies, ...sheet.alternates].some((it) =>
    Object.values(it).includes(id),
  );
  const confirmed = sheet.wishes.some((it) => it.confirmed && (it.sourceId === id || it.mixId === id));
  return removalOf(removed, row, rows, decided || confirmed || isEdited(row, asRead.get(id)));
}

function removalOf(
  { table, id }: Change['remove'][number],
  row: Row,
  rows: Rows,
  overwrites: boolean,
): Consequence {
  return {
    key: `${table} ${id}`,
    of: ofTable(table),
    kind: 'removed',
    name: rows.nameOf(row),
    field: null,
    now: summaryOf(row),
    next: '',
    overwrites,
    puts: [],
    removes: [{ table, id }],
  };
}

const places = new Set(['id', 'actId', 'order']);

/** Whether any field of a row is no longer what the rider said. */
const isEdited = (row: Row, read: Row | undefined): boolean =>
  read === undefined || Object.keys(read).some((field) => !places.has(field) && read[field] !== row[field]);

/** A changed row, field by field. */
function changes({ table, row }: Put, rows: Rows, asRead: ReadonlyMap<Id, Row>): Consequence[] {
  const next = row as unknown as Row;
  const now = rows.now(row.id);
  if (!now) return [];
  const read = asRead.get(row.id);
  return Object.keys(next)
    .filter((field) => next[field] !== now[field])
    .map((field) => ({
      key: `${table} ${row.id} ${field}`,
      of: ofTable(table),
      kind: 'changed',
      name: rows.nameOf(now),
      field,
      now: rows.textOf(now[field]),
      next: rows.textOf(next[field]),
      overwrites: read !== undefined && read[field] !== now[field],
      puts: [{ table, row: next, fields: [field] }],
      removes: [],
    }));
}

/** The two sides of a pair name each other: they are taken or left together. */
function joinPairs(all: readonly Consequence[]): Consequence[] {
  const pairs = all.filter((it) => it.field === 'pairSourceId');
  const joined = new Set<Consequence>();
  return all.flatMap((it) => {
    if (it.field !== 'pairSourceId') return [it];
    if (joined.has(it)) return [];
    const touched = new Set(it.puts.flatMap(({ row }) => [row.id, row.pairSourceId]));
    const others = pairs.filter(
      (other) =>
        !joined.has(other) &&
        other.puts.some(
          ({ row }) => touched.has(row.id) || (touched.has(row.pairSourceId) && row.pairSourceId !== null),
        ),
    );
    for (const other of others) joined.add(other);
    return [
      {
        ...it,
        overwrites: others.some((other) => other.overwrites),
        puts: others.flatMap((other) => other.puts),
      },
    ];
  });
}

/** Wishes and listeners of mixes that are there before and after. A wish on the same thing replaces the one there. */
function childChanges(
  merge: Pick<Change, 'put' | 'remove'>,
  wholes: readonly Put[],
  removed: ReadonlySet<Id>,
  rows: Rows,
  asRead: ReadonlyMap<Id, Row>,
): Consequence[] {
  const goes = (row: Row) =>
    ['mixId', 'sourceId', 'sameAsMixId'].some((field) => removed.has(String(row[field])));
  const replaced = new Set<Id>();
  const added = wholes
    .filter(
      (it) => isChild(it.table) && 'mixId' in it.row && it.row.mixId !== null && rows.isThere(it.row.mixId),
    )
    .map((it): Consequence => {
      const row = it.row as unknown as Row;
      const there =
        it.table === 'wishes'
          ? rows.all().find((other) => !replaced.has(other.id) && isSameWish(other, row))
          : undefined;
      if (there) replaced.add(there.id);
      return {
        ...addition(it, [], rows),
        ...(there && {
          kind: 'changed',
          field: 'amount',
          now: summaryOf(there),
          overwrites:
            there.confirmed === true ||
            asRead.get(there.id)?.amount !== there.amount ||
            asRead.get(there.id)?.levelDb !== there.levelDb,
          puts: [{ table: it.table, row: { ...row, id: there.id, order: there.order }, fields: null }],
        }),
      };
    });
  const gone = merge.remove
    .filter(({ table, id }) => isChild(table) && !replaced.has(id))
    .flatMap((child): Consequence[] => {
      const row = rows.now(child.id);
      if (!row || goes(row)) return [];
      const overwrites = row.confirmed === true || isEdited(row, asRead.get(child.id));
      return [removalOf(child, row, rows, overwrites)];
    });
  return [...added, ...gone];
}

const isSameWish = (one: Row, other: Row): boolean =>
  'sameAsMixId' in one &&
  (['mixId', 'sourceId', 'group', 'sameAsMixId'] as const).every((field) => one[field] === other[field]);

/** Lines by their words: gone, new, and changed where both speak of the same input or mix, or begin alike. */
function lineChanges(before: Reading, aligned: Reading): LineChange[] {
  const gone = onlyIn(before.lines, aligned.lines);
  const fresh = onlyIn(aligned.lines, before.lines);
  const used = new Set<Line>();
  const changed = gone.map((line): LineChange => {
    const left = fresh.filter((it) => !used.has(it));
    const other = left.find((it) => speakOfOne(line, it)) ?? left.find((it) => beginAlike(line, it));
    if (other) used.add(other);
    return { before: line.text, after: other?.text ?? null };
  });
  return [
    ...changed,
    ...fresh.filter((it) => !used.has(it)).map(({ text }) => ({ before: null, after: text })),
  ];
}

type Line = Reading['lines'][number];

function speakOfOne(one: Line, other: Line): boolean {
  const keys = new Set([...one.inputKeys, ...one.mixKeys]);
  return [...other.inputKeys, ...other.mixKeys].some((key) => keys.has(key));
}

/** Neither speaks of an input or a mix, and at least the first half of the shorter one is the same. */
function beginAlike(one: Line, other: Line): boolean {
  if ([one, other].some(({ inputKeys, mixKeys }) => inputKeys.length + mixKeys.length > 0)) return false;
  const [a, b] = [squash(one.text), squash(other.text)];
  const shorter = Math.min(a.length, b.length);
  return shorter > 0 && a.slice(0, Math.ceil(shorter / 2)) === b.slice(0, Math.ceil(shorter / 2));
}

function onlyIn(lines: Reading['lines'], others: Reading['lines']): Reading['lines'] {
  const left = new Map<string, number>();
  for (const { text } of others) left.set(squash(text), (left.get(squash(text)) ?? 0) + 1);
  return lines.filter(({ text }) => {
    const count = left.get(squash(text)) ?? 0;
    left.set(squash(text), count - 1);
    return count <= 0;
  });
}
