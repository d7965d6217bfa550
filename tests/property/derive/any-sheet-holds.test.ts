import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { derivePaths, pathFrom, pathKey, pathThrough, pathTo } from '../../../core/derive/path.ts';
import { switchAlternates } from '../../../core/plan/switch-alternates.ts';
import { type ActSheet, actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import { type Change, put } from '../../../core/show/change.ts';
import { documentFromShow, ShowDocument, showFromRows } from '../../../core/show/show.ts';
import { showOf } from '../../helpers/sheet-of.ts';
import { anyActRows, anySheet, patienceMs } from './any-act.ts';

const acts = { numRuns: 300 };

vi.setConfig({ testTimeout: patienceMs });

function holds(name: string, check: (sheet: ActSheet) => void): void {
  test(name, () => fc.assert(fc.property(anySheet, check), acts));
}

/** Every number anywhere in a value, with the way to it. */
function numbersIn(value: unknown, way = ''): [string, number][] {
  if (typeof value === 'number') return [[way, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${way}.${key}`));
}

describe('whatever an act holds', () => {
  holds('every number is a number', (sheet) => {
    const derived = deriveAct(sheet);
    for (const [way, number] of [...numbersIn(derived), ...numbersIn(derivePaths(sheet, derived))])
      expect(Number.isFinite(number), way).toBe(true);
  });

  holds('the sentences are whole', (sheet) => {
    for (const { cause, remedy, subjects } of deriveAct(sheet).findings) {
      expect(`${cause} ${remedy}`).not.toMatch(/[{}]|undefined|NaN|Infinity/);
      expect(subjects.length).toBeGreaterThan(0);
    }
  });

  holds('deriving twice gives the same, and changes nothing of the sheet', (sheet) => {
    const before = structuredClone(sheet);
    expect(deriveAct(sheet)).toEqual(deriveAct(sheet));
    expect(sheet).toEqual(before);
  });

  holds('there is one feed for every mix and source, and nothing starts above unity', (sheet) => {
    const { feeds } = deriveAct(sheet);
    expect(feeds.map((row) => row.map((feed) => [feed.sourceId, feed.mixId]))).toEqual(
      sheet.sources.map((source) => sheet.mixes.map((mix) => [source.id, mix.id])),
    );
    for (const feed of feeds.flat()) {
      expect(feed.levelDb ?? 0).toBeLessThanOrEqual(0);
      expect(feed.levelDb === null).toBe(feed.purpose === null);
      expect(feed.channel === null).toBe(feed.purpose === null);
    }
  });

  holds(
    'no mix gets two copies of a source, unless somebody decided it, and then there is a finding',
    (sheet) => {
      const { secondFeeds, findings } = deriveAct(sheet);
      for (const { mixId, sourceId, purpose } of secondFeeds) {
        const decided = sheet.decisions.some(
          (it) =>
            it.about === 'second feed' &&
            it.mixId === mixId &&
            it.sourceId === sourceId &&
            it.purpose === purpose,
        );
        expect(decided).toBe(true);
      }
      const found = findings.filter((finding) => finding.code === 'two-copies-in-one-mix');
      expect(found.length).toBe(secondFeeds.length);
      for (const finding of found) expect(finding.severity).toBe('must fix');
    },
  );

  holds('a mix made elsewhere gets nothing from this desk', (sheet) => {
    const { feeds } = deriveAct(sheet);
    sheet.mixes.forEach((mix, mixAt) => {
      if (mix.mixedAt !== 'elsewhere') return;
      for (const row of feeds) expect(row[mixAt]?.levelDb).toBeNull();
    });
  });

  holds('what flows is on the path from its source to its mix, and back', (sheet) => {
    const derived = deriveAct(sheet);
    const paths = derivePaths(sheet, derived);
    const keys = new Set(paths.nodes.map((node) => node.key));
    expect(keys.size).toBe(paths.nodes.length);
    for (const link of paths.links) expect([keys.has(link.from), keys.has(link.to)]).toEqual([true, true]);
    for (const feed of derived.feeds.flat()) {
      if (feed.purpose === null) continue;
      const mix = pathKey('mix', feed.mixId);
      const source = pathKey('source', feed.sourceId);
      expect(pathFrom(paths, source).nodes.map((node) => node.key)).toContain(mix);
      expect(pathTo(paths, mix).nodes.map((node) => node.key)).toContain(source);
      expect(pathThrough(paths, pathKey('copy', feed.sourceId, feed.purpose)).links).toContainEqual(
        expect.objectContaining({ to: mix, levelDb: feed.levelDb }),
      );
    }
  });
});

describe('an edit', () => {
  const anyEdit = fc.record({
    rows: anyActRows(),
    at: fc.nat(),
    kind: fc.constantFrom('wish', 'copy', 'mix', 'remove'),
  });

  test('derives to the same as the edited show from scratch', () => {
    fc.assert(
      fc.property(anyEdit, ({ rows, at, kind }) => {
        const before = showOf(rows);
        const sheet = actSheet(before, 'act');
        if (sheet) deriveAct(sheet);
        const after = applyChange(before, editOf(before, at, kind));
        const reread = showFromRows(ShowDocument.parse(JSON.parse(JSON.stringify(documentFromShow(after)))));
        const [edited, fresh] = [actSheet(after, 'act'), actSheet(reread, 'act')];
        expect(edited && deriveAct(edited)).toEqual(fresh && deriveAct(fresh));
      }),
      acts,
    );
  });

  test('that puts all sources on alternates and back leaves every source on its own line', () => {
    fc.assert(
      fc.property(
        anyActRows(),
        fc.constantFrom('recorded track', 'spare line', 'second desk'),
        (rows, kind) => {
          const show = showOf(rows);
          const through = (state: typeof show, to: Parameters<typeof switchAlternates>[2]) => {
            const sheet = actSheet(state, 'act');
            if (!sheet) throw new Error('The act is gone.');
            return applyChange(state, switchAlternates(sheet, 'all', to));
          };
          const away = through(show, kind);
          const sheetAway = actSheet(away, 'act');
          const has = new Set(
            [...show.alternates.values()].filter((it) => it.kind === kind).map((it) => it.sourceId),
          );
          for (const input of sheetAway ? deriveAct(sheetAway).inputs : [])
            if (has.has(input.sourceId)) expect(input.from).toBe(kind);
          const sheetBack = actSheet(through(away, 'own line'), 'act');
          for (const input of sheetBack ? deriveAct(sheetBack).inputs : [])
            expect(input.from).toBe('own line');
        },
      ),
      { numRuns: 150 },
    );
  });
});

function editOf(show: ReturnType<typeof showOf>, at: number, kind: string): Change {
  const pick = <T>(table: ReadonlyMap<string, T>) => [...table.values()][at % Math.max(1, table.size)];
  const wish = pick(show.wishes);
  const source = pick(show.sources);
  const mix = pick(show.mixes);
  if (kind === 'wish' && wish) return edit([put('wishes', { ...wish, amount: 'little', levelDb: null })]);
  if (kind === 'copy' && source) {
    const copy = {
      id: 'new copy',
      sourceId: source.id,
      purpose: 'monitors' as const,
      wanted: true,
      locked: true,
    };
    const rest = { channel: null, trimDb: 0, polarityInverted: false, latencyMs: 0, inMainMix: null };
    return edit([put('copies', { ...copy, ...rest })]);
  }
  if (kind === 'mix' && mix) return edit([put('mixes', { ...mix, deviceKind: 'in-ear' })]);
  return { label: 'Remove', put: [], remove: source ? [{ table: 'sources', id: source.id }] : [] };
}

function edit(rows: Change['put']): Change {
  return { label: 'Edit', put: rows, remove: [] };
}
