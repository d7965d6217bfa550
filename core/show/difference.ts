import { type AnyRow, fieldOf } from './part-of-show.ts';
import { references } from './references.ts';
import type { Id } from './rig.ts';
import { type Show, type TableName, tableNames } from './show.ts';

/**
 * How one row differs between two states. A field has the words of both. Of a row that came or went the fields are
 * told only where they are what it is about: a wish, a decision.
 */
export type RowDifference = {
  table: TableName;
  id: Id;
  kind: 'added' | 'removed' | 'changed';
  /** What it is and its name: "source Kick in". */
  what: string;
  fields: { field: string; before: string; after: string }[];
};

const singular: Record<TableName, string> = {
  rigs: 'rig',
  boxes: 'stage box',
  sockets: 'socket',
  buses: 'bus',
  outputs: 'output',
  devices: 'device',
  stockItems: 'stock item',
  cueOutputs: 'cue output',
  days: 'day',
  acts: 'act',
  performers: 'performer',
  sources: 'source',
  mixes: 'mix',
  listeners: 'listener',
  wishes: 'wish',
  copies: 'copy',
  alternates: 'alternate',
  decisions: 'decision',
  riders: 'rider',
  answers: 'answer',
  ticks: 'tick',
  ownWords: 'own word',
  actRuns: 'run',
  lineResults: 'line check result',
  ranLevels: 'level as it ran',
  runNotes: 'note of the show',
};

/** Units at the end of a field's name, as they are written. */
const units: Record<string, string> = {
  Db: 'dB',
  Dbu: 'dBu',
  Dbv: 'dBV',
  Spl: 'SPL',
  Ms: 'ms',
  M: 'm',
  Mhz: 'MHz',
  Hz: 'Hz',
  Deg: 'degrees',
  Mv: 'mV',
  Pa: 'Pa',
};

const longestValue = 80;

/** Every row that is not the same in both, table by table in the order of the show. */
export function differenceOf(before: Show, after: Show): RowDifference[] {
  return tableNames.flatMap((table) => {
    const removed = [...before[table].values()]
      .filter(({ id }) => !after[table].has(id))
      .map((row) => ({
        ...whole('removed', before, table, row),
        fields: ownFields(before, after, table, row, {}),
      }));
    const now = [...after[table].values()].flatMap((row): RowDifference[] => {
      const old = before[table].get(row.id);
      if (!old)
        return [{ ...whole('added', after, table, row), fields: ownFields(before, after, table, {}, row) }];
      const fields = fieldsBetween(before, after, table, old, row);
      return fields.length === 0 ? [] : [{ ...whole('changed', after, table, row), fields }];
    });
    return [...removed, ...now];
  });
}

/** One difference as a sentence. */
export function sentenceOfDifference({
  kind,
  what,
  fields,
}: Pick<RowDifference, 'kind' | 'what' | 'fields'>): string {
  if (kind !== 'changed') {
    const values = fields.map(
      ({ field, before, after }) => `, ${field} ${kind === 'added' ? after : before}`,
    );
    return `${kind === 'added' ? 'Added' : 'Removed'}: ${what}${values.join('')}.`;
  }
  const parts = fields.map(({ field, before, after }) => `${field} from ${before} to ${after}`);
  return `Changed: ${what}: ${parts.join(', ')}.`;
}

/** Whether two values of rows are the same, lists and objects by what is in them. */
export function sameValue(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const [keys, others] = [Object.keys(one), Object.keys(other)];
  return (
    Array.isArray(one) === Array.isArray(other) &&
    keys.length === others.length &&
    keys.every(
      (key) =>
        Object.hasOwn(other, key) &&
        sameValue((one as Record<string, unknown>)[key], (other as Record<string, unknown>)[key]),
    )
  );
}

function whole(kind: RowDifference['kind'], show: Show, table: TableName, row: AnyRow): RowDifference {
  return {
    table,
    id: row.id,
    kind,
    what: `${singular[table]} ${nameOf(show, table, row)}`.trim(),
    fields: [],
  };
}

/** Rows that are nothing but their value, so that a row which came or went is told with it. */
const toldByValue: ReadonlySet<TableName> = new Set(['wishes', 'decisions']);

function ownFields(before: Show, after: Show, table: TableName, old: Partial<AnyRow>, row: Partial<AnyRow>) {
  if (!toldByValue.has(table)) return [];
  const inName = new Set([
    'id',
    'about',
    'order',
    ...references.filter((it) => it.table === table).map((it) => it.field),
  ]);
  const isEmpty = (value: unknown) =>
    value === undefined || value === null || value === false || value === '';
  return fieldsBetween(before, after, table, old, row, (name) => {
    return !inName.has(name) && !(isEmpty(fieldOf(old, name)) && isEmpty(fieldOf(row, name)));
  });
}

function fieldsBetween(
  before: Show,
  after: Show,
  table: TableName,
  old: Partial<AnyRow>,
  row: Partial<AnyRow>,
  isTold: (name: string) => boolean = () => true,
) {
  const names = [...new Set([...Object.keys(old), ...Object.keys(row)])];
  return names
    .filter((name) => isTold(name) && !sameValue(fieldOf(old, name), fieldOf(row, name)))
    .map((name) => ({
      field: wordsOfField(name),
      before: wordsOfValue(before, table, name, fieldOf(old, name)),
      after: wordsOfValue(after, table, name, fieldOf(row, name)),
    }));
}

/** A row's own name; one without is told by what it hangs on: "Mix 1, Noor". */
function nameOf(show: Show, table: TableName, row: AnyRow): string {
  const own = fieldOf(row, 'name');
  if (typeof own === 'string') return shortened(own);
  const number = fieldOf(row, 'number') ?? fieldOf(row, 'about') ?? '';
  const names = references
    .filter((it) => it.table === table)
    .flatMap(({ field, to }) => nameOfReferred(show, to, fieldOf(row, field)));
  return [...names, String(number)].filter((it) => it !== '').join(', ');
}

function nameOfReferred(show: Show, to: TableName, id: unknown): string[] {
  const row = typeof id === 'string' ? show[to].get(id) : undefined;
  if (!row) return [];
  const name = fieldOf(row, 'name') ?? fieldOf(row, 'number');
  return name === undefined || name === null ? [] : [shortened(String(name))];
}

function wordsOfField(name: string): string {
  const words = name.replace(/Id$/, '').split(/(?=[A-Z])/);
  return words.map((word, place) => (place > 0 && units[word]) || word.toLowerCase()).join(' ');
}

function wordsOfValue(show: Show, table: TableName, field: string, value: unknown): string {
  if (value === null || value === undefined || value === '') return 'nothing';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'object') return shortened(JSON.stringify(value));
  const to = references.find((it) => it.table === table && it.field === field)?.to;
  const referred = to && nameOfReferred(show, to, value)[0];
  return referred ?? shortened(String(value));
}

function shortened(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length <= longestValue ? line : `${line.slice(0, longestValue - 1)}…`;
}
