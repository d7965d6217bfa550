import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nextToCheck, progressOf } from '../../../core/run/line-check.ts';
import { lineFaults } from '../../../core/run/line-faults.ts';
import { type CheckLine, checkOrders, linesToCheck } from '../../../core/run/lines-to-check.ts';
import { type LineFinding, type LineResult, lineFindings } from '../../../core/show/as-ran.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';
import { derivedAct } from '../../helpers/derived-act.ts';

const { sheet, derived } = derivedAct(smallFestival(), 'tarn');

const result = (sourceId: string, found: LineFinding): LineResult => ({
  id: sourceId,
  actId: 'tarn',
  sourceId,
  found,
  cameSourceId: null,
  foundAt: '2031-06-14T15:00:00.000Z',
});

const anyLines = fc.constantFrom(...checkOrders).map((order) => linesToCheck(sheet, derived.plan, order));

/** Some of the lines with what was found of them. */
const anyCheck = anyLines.chain((lines) =>
  fc
    .array(fc.option(fc.constantFrom(...lineFindings), { nil: null }), {
      minLength: lines.length,
      maxLength: lines.length,
    })
    .map((found) => ({
      lines,
      results: new Map(
        lines.flatMap(({ source }, place) => {
          const it = found[place];
          return it ? [[source.id, result(source.id, it)] as const] : [];
        }),
      ),
    })),
);

/** Listens to line after line as the screen does; `hear` says what is found of each. Answers the order of listening. */
function listen(
  lines: readonly CheckLine[],
  results: Map<string, LineResult>,
  hear: (sourceId: string, times: number) => LineFinding,
): string[] {
  const heard: string[] = [];
  for (let at = nextToCheck(lines, results, null); at !== null; at = nextToCheck(lines, results, at)) {
    heard.push(at);
    results.set(at, result(at, hear(at, heard.filter((it) => it === at).length)));
    if (heard.length > 10 * lines.length) throw new Error('the line check never ends');
  }
  return heard;
}

test('the counts of a line check always add up to its lines, and every fault is one of them', () => {
  fc.assert(
    fc.property(anyCheck, ({ lines, results }) => {
      const { all, ok, notOk, later, left } = progressOf(lines, results);
      expect(ok + notOk + later + left).toBe(all);
      expect(lineFaults(lines, results)).toHaveLength(notOk + later);
      const next = nextToCheck(lines, results, null);
      expect(next === null).toBe(left + later === 0);
    }),
  );
});

test('wherever a line check stands, going on hears every line that is left once, and what is put off once more', () => {
  fc.assert(
    fc.property(
      anyCheck,
      fc.infiniteStream(fc.constantFrom(...lineFindings)),
      ({ lines, results }, found) => {
        const left = lines.map(({ source }) => source.id).filter((id) => !results.has(id));
        const off = lines.map(({ source }) => source.id).filter((id) => results.get(id)?.found === 'later');
        const heard = listen(lines, new Map(results), (id, times) => {
          const it = found.next().value ?? 'ok';
          // Nobody puts a line off for ever: the second time it is heard.
          return it === 'later' && (times > 1 || off.includes(id)) ? 'ok' : it;
        });
        expect(heard.slice(0, left.length)).toEqual(left);
        const more = heard.slice(left.length);
        expect(new Set(more).size).toBe(more.length);
        for (const id of off) expect(more).toContain(id);
      },
    ),
  );
});
