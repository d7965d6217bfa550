import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyChange, findBrokenReferences } from '../../../core/show/apply-change.ts';
import { bringBack } from '../../../core/show/bring-back.ts';
import { differenceOf } from '../../../core/show/difference.ts';
import { changeOfImport, documentOfAct, type ExchangeDocument } from '../../../core/show/exchange.ts';
import { partOfShow } from '../../../core/show/part-of-show.ts';
import { references } from '../../../core/show/references.ts';
import {
  documentFromShow,
  emptyShow,
  rowSchemas,
  type Show,
  showFromRows,
  tableNames,
} from '../../../core/show/show.ts';
import { exchangeOfText } from '../../../electron/exchange/exchange-of-text.ts';
import { exportedText } from '../../../electron/exchange/exported-text.ts';
import { anyRow } from '../../helpers/any-row.ts';
import { smallShow } from '../../helpers/small-show.ts';

/** Any show that is whole: rows of every table, each reference to a row that is there, or the row is left out. */
const anyShow: fc.Arbitrary<Show> = fc
  .tuple(...tableNames.map((table) => fc.array(anyRow(table), { maxLength: 3 })), fc.nat(1000))
  .map((drawn) => {
    const pick = Number(drawn.at(-1));
    let show = smallShow();
    for (const [place, table] of tableNames.entries())
      for (const [number, row] of (drawn[place] as Record<string, unknown>[]).entries()) {
        const fields: Record<string, unknown> = { ...row, id: `${table} ${number}` };
        for (const { field, to } of references.filter((it) => it.table === table))
          if (typeof fields[field] === 'string') {
            const targets = [...show[to].keys()];
            fields[field] = targets[(pick + number) % Math.max(1, targets.length)] ?? null;
          }
        const parsed = rowSchemas[table].safeParse(fields);
        if (!parsed.success) continue;
        const next = applyChange(show, {
          label: 'Put',
          put: [{ table, row: parsed.data } as never],
          remove: [],
        });
        if (findBrokenReferences(next).length === 0) show = next;
      }
    return show;
  });

const runs = { numRuns: 60 };

function newIds(): () => string {
  let count = 0;
  return () => `new ${++count}`;
}

function textOf(show: Show, actId: string | null): string {
  const exported = exportedText(show, actId);
  if (!exported) throw new Error('there is nothing to export');
  return exported.text;
}

function readBack(text: string): ExchangeDocument {
  const read = exchangeOfText('The file', text);
  if (!read.ok) throw new Error(read.problem.what);
  return read.value;
}

/** How many rows of each table, and every text and number in them, whatever the ids are. */
function withoutIds(show: Show): unknown {
  const named = new Set(['id', 'taskKey', 'dayId', 'order']);
  const links = new Set(references.map((it) => it.field));
  return tableNames.map((table) =>
    [...show[table].values()].map((row) =>
      Object.entries(row).filter(([name]) => !named.has(name) && !links.has(name)),
    ),
  );
}

test('a show that goes out and comes back in is the same show, to the last letter', () => {
  fc.assert(
    fc.property(anyShow, (show) => {
      const document = readBack(textOf(show, null));
      expect(document).toEqual(documentFromShow(show));
      const brought = changeOfImport(emptyShow(), document, { how: 'replace' }, newIds());
      if (!brought) throw new Error('it was refused');
      expect(brought.leftOut).toBe(0);
      expect(documentFromShow(applyChange(emptyShow(), brought.change))).toEqual(documentFromShow(show));
    }),
    runs,
  );
}, 120_000);

test('an act that comes in beside touches no row that was there, and says the same under new ids', () => {
  fc.assert(
    fc.property(anyShow, (show) => {
      const brought = changeOfImport(
        show,
        readBack(textOf(show, 'act')),
        { how: 'beside', dayId: 'day' },
        newIds(),
      );
      if (!brought) throw new Error('it was refused');
      const after = applyChange(show, brought.change);
      expect(findBrokenReferences(after)).toEqual([]);
      expect(differenceOf(show, after).filter(({ kind }) => kind !== 'added')).toEqual([]);
      const newAct = brought.change.put.find(({ table }) => table === 'acts')?.row.id ?? '';
      const [one, other] = ['act', newAct].map((id) => partOfShow(after, { table: 'acts', id }));
      expect(brought.leftOut).toBe(0);
      expect(withoutIds(other as Show)).toEqual(withoutIds(one as Show));
    }),
    runs,
  );
}, 120_000);

test('a show that comes in beside doubles every row and replaces none', () => {
  fc.assert(
    fc.property(anyShow, (show) => {
      const brought = changeOfImport(show, documentFromShow(show), { how: 'beside', dayId: null }, newIds());
      if (!brought) throw new Error('it was refused');
      const after = applyChange(show, brought.change);
      for (const table of tableNames) expect(after[table].size).toBe(2 * show[table].size);
      expect(differenceOf(show, after).every(({ kind }) => kind === 'added')).toBe(true);
    }),
    runs,
  );
}, 120_000);

test('putting back what was kept leaves no difference, whatever was done since', () => {
  fc.assert(
    fc.property(anyShow, anyShow, (before, now) => {
      const { change } = bringBack('Put back', now, now, before);
      expect(differenceOf(before, applyChange(now, change))).toEqual([]);
    }),
    runs,
  );
}, 120_000);

test('an act goes to a house that has not its sockets: what belongs to them is left out and counted', () => {
  const show = smallShow();
  const locked = showFromRows({
    ...documentFromShow(show),
    decisions: [
      { id: 'lock', actId: 'act', about: 'socket', sourceId: 'vocal', socketId: 'socket' } as never,
    ],
  });
  const document = documentOfAct(locked, 'act');
  if (!document) throw new Error('there is an act');
  const elsewhere = applyChange(show, {
    label: 'Other house',
    put: [],
    remove: [{ table: 'boxes', id: 'box' }],
  });
  const brought = changeOfImport(elsewhere, document, { how: 'beside', dayId: 'day' }, newIds());
  expect(brought?.leftOut).toBe(1);
});

test('an act cannot replace a show, and needs a day that is there', () => {
  const document = documentOfAct(smallShow(), 'act');
  if (!document) throw new Error('there is an act');
  expect(changeOfImport(smallShow(), document, { how: 'replace' }, newIds())).toBeNull();
  expect(changeOfImport(smallShow(), document, { how: 'beside', dayId: 'nobody' }, newIds())).toBeNull();
});

test.each([
  ['no JSON', '{', /not JSON/],
  ['another format', '{"format":"notes"}', /no show that can be read/],
  [
    'a row that breaks the rules',
    JSON.stringify({
      format: 'foldbook-show',
      version: 1,
      rigs: [{ id: 'rig', name: 'House', channelCount: -4 }],
    }),
    /rigs, row 1 \(rig\), channelCount/,
  ],
  [
    'a reference to nothing',
    JSON.stringify({ ...documentFromShow(smallShow()), rigs: [] }),
    /is not whole: \d+ times a row names something/,
  ],
])('a file with %s is refused and says where', (_what, text, says) => {
  const read = exchangeOfText('The file', text);
  expect(read).toMatchObject({ ok: false, problem: { code: 'not a show' } });
  if (!read.ok) expect(read.problem.what).toMatch(says);
});
