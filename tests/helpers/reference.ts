import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

/**
 * Check values from outside the project, see tests/reference/README.md. A topic is run by a table from the kind
 * of a case to the checks it makes; a kind without an entry, and an entry without a case, fail the topic.
 */

export type Fields = Readonly<Record<string, unknown>>;
export type Case = Fields & { kind: string; how: string; from: string; in: Fields; out: Fields };

/** `within` is how far `got` may be from `want`; null and infinite values must be met exactly. */
export type Check = { what: string; got: unknown; want: unknown; within?: number };

type Topic = { topic: string; source: { id: string; what: string }[]; cases: Case[] };

/** JSON has no infinite numbers; the files write them as words. */
const infinities = new Map<unknown, number>([
  ['Infinity', Infinity],
  ['-Infinity', -Infinity],
]);

function readTopic(name: string): Topic {
  const text = readFileSync(new URL(`../reference/${name}.json`, import.meta.url), 'utf8');
  return JSON.parse(text, (_key, value: unknown) => infinities.get(value) ?? value) as Topic;
}

/** The cases of one kind, for a check of the whole program rather than of one function; never empty. */
export function casesOfKind(name: string, kind: string): Case[] {
  const cases = readTopic(name).cases.filter((row) => row.kind === kind);
  if (cases.length === 0) throw new Error(`${name}.json has no case of kind "${kind}"`);
  return cases;
}

/** A number that the case must have. */
export function num(fields: Fields, name: string): number {
  const value = fields[name];
  if (typeof value !== 'number') throw new Error(`the case has no number "${name}"`);
  return value;
}

/** The number the case has under this name, or the number to use where it has none. */
export function numOr(fields: Fields, name: string, otherwise: number): number {
  return name in fields ? num(fields, name) : otherwise;
}

export function nums(fields: Fields, name: string): number[] {
  const value = fields[name];
  if (!Array.isArray(value) || !value.every((it) => typeof it === 'number'))
    throw new Error(`the case has no numbers "${name}"`);
  return value;
}

export function word(fields: Fields, name: string): string {
  const value = fields[name];
  if (typeof value !== 'string') throw new Error(`the case has no word "${name}"`);
  return value;
}

export function fieldsOf(fields: Fields, name: string): Fields {
  const value = fields[name];
  if (typeof value !== 'object' || value === null) throw new Error(`the case has no fields "${name}"`);
  return value as Fields;
}

/** Half of the last of so many decimals: how far a value may be from the one it was rounded to. */
export function decimals(count: number): number {
  return 0.5 * 10 ** -count;
}

/**
 * The checks of a value that a source prints rounded: against the print within its tolerance, and against the
 * formula's exact value, where the case has one, within its last decimal.
 */
export function printedAndExact(
  row: Case,
  outName: string,
  got: number | null,
  names: { exact?: string; tol?: string; exactDecimals: number },
): Check[] {
  const exactName = names.exact ?? 'exact';
  const rounded = decimals(names.exactDecimals);
  const hasExact = exactName in row;
  const printed = {
    what: `${outName} as printed`,
    got,
    want: row.out[outName],
    within: numOr(row, names.tol ?? 'tol', rounded),
  };
  if (!hasExact) return [printed];
  return [printed, { what: `${outName} by the formula`, got, want: row[exactName], within: rounded }];
}

function expectCheck({ what, got, want, within = 0 }: Check): void {
  if (typeof want !== 'number' || !Number.isFinite(want)) {
    expect(got, what).toEqual(want);
    return;
  }
  if (typeof got !== 'number' || !Number.isFinite(got)) expect.fail(`${what}: got ${got}, want ${want}`);
  // A tolerance of 0.05 is met by 93.05 against 93, whatever the last bit of a double says.
  const slack = within + 1e-12 * Math.max(1, Math.abs(want));
  expect(Math.abs(got - want), `${what}: got ${got}, want ${want} within ${within}`).toBeLessThanOrEqual(
    slack,
  );
}

export function checkReference(name: string, checks: Record<string, (row: Case) => Check[]>): void {
  const { topic, source, cases } = readTopic(name);
  const said = new Map(source.map(({ id, what }) => [id, what]));
  describe(`${topic} (tests/reference/${name}.json)`, () => {
    test('every kind of case in the file is checked, and no other', () => {
      expect(Object.keys(checks).sort()).toEqual([...new Set(cases.map((row) => row.kind))].sort());
    });
    test('every case names a source that the file lists', () => {
      const unnamed = cases.filter((row) => !row.from.split('+').every((id) => said.has(id)));
      expect(unnamed).toEqual([]);
    });
    test.each(cases.map((row) => ({ row, name: `${row.kind} ${JSON.stringify(row.in)}` })))(
      '$name ($row.from, $row.how)',
      ({ row }) => {
        const made = checks[row.kind]?.(row) ?? [];
        expect(made.length, 'a case makes at least one check').toBeGreaterThan(0);
        for (const check of made) expectCheck(check);
      },
    );
  });
}
