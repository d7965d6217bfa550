import { describe, expect, test } from 'vitest';
import { lineResultsOf, nextToCheck, progressOf } from '../../../core/run/line-check.ts';
import { lineFaults } from '../../../core/run/line-faults.ts';
import { type CheckOrder, linesToCheck } from '../../../core/run/lines-to-check.ts';
import { swapSockets } from '../../../core/run/swap-lines.ts';
import { Source } from '../../../core/show/act.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import type { LineFinding, LineResult } from '../../../core/show/as-ran.ts';
import { put } from '../../../core/show/change.ts';
import type { Show } from '../../../core/show/show.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';
import { derivedAct } from '../../helpers/derived-act.ts';

const at = '2031-06-14T15:00:00.000Z';

function linesOf(show: Show, order: CheckOrder = 'by socket') {
  const { sheet, derived } = derivedAct(show, 'pale');
  return linesToCheck(sheet, derived.plan, order);
}

const result = (sourceId: string, found: LineFinding, more: Partial<LineResult> = {}): LineResult => ({
  id: `${sourceId}-${found}`,
  actId: 'pale',
  sourceId,
  found,
  cameSourceId: null,
  foundAt: at,
  ...more,
});

function withRows(show: Show, ...rows: LineResult[]): Show {
  return applyChange(show, { label: 'Check', put: rows.map((row) => put('lineResults', row)), remove: [] });
}

const socketAt = (show: Show, sourceId: string, socketId: string): Show =>
  applyChange(show, {
    label: 'Plug',
    put: [
      put('decisions', {
        id: `d-${sourceId}`,
        actId: 'pale',
        locked: true,
        about: 'socket',
        sourceId,
        socketId,
      }),
    ],
    remove: [],
  });

test('by socket the lines come as the patch person walks: box by box, number by number, not as text', () => {
  let show = smallFestival();
  for (const [source, socket] of [
    ['pale-s0', 'b2'],
    ['pale-s1', 'a10'],
    ['pale-s2', 'a9'],
    ['pale-s3', 'b1'],
    ['pale-s4', 'a1'],
  ] as const)
    show = socketAt(show, source, socket);
  expect(linesOf(show).map((line) => line.socketName)).toEqual(['A1', 'A9', 'A10', 'B1', 'B2']);
  const channels = linesOf(show, 'by channel').map((line) => line.channels[0]?.channel ?? 0);
  expect(channels).toEqual([...channels].sort((a, b) => a - b));
  expect(channels).toHaveLength(5);
});

test('a line is told with its number, its copies, 48 V and who plays it', () => {
  const piano = linesOf(smallFestival()).find(({ source }) => source.name === 'Piano low');
  expect(piano).toMatchObject({ line: 3, phantomOn: true, performer: 'Ines' });
  expect(piano?.channels.map((it) => it.purpose)).toContain('foh');
});

test('what comes back from the desk is no line from the stage, and what is nowhere cannot be heard', () => {
  const show = applyChange(smallFestival(), {
    label: 'Return',
    put: [
      put(
        'sources',
        Source.parse({ id: 'r', actId: 'pale', order: 9, name: 'Mix back', returnsMixId: 'pale-m0' }),
      ),
    ],
    remove: [],
  });
  expect(linesOf(show).map(({ source }) => source.name)).not.toContain('Mix back');
});

describe('which line is next', () => {
  const ids = ['pale-s0', 'pale-s1', 'pale-s2', 'pale-s3', 'pale-s4'] as const;
  test.each<[why: string, found: string, from: number | null, next: number | null]>([
    ['the first, where nobody has listened', '.....', null, 0],
    ['the one after', 'o....', 0, 1],
    ['one before, when the end is reached', '.ooo.', 4, 0],
    ['what was put off waits for all others', 'l.o..', 0, 1],
    ['what was put off comes at the end, in its order', 'oloLo'.toLowerCase(), 4, 1],
    ['after one that was put off the next one of those', 'oloLo'.toLowerCase(), 1, 3],
    ['the only one that was put off stays', 'ooool', 4, 4],
    ['a silent line has been listened to', 'ss...', 0, 2],
    ['none, where all have been listened to', 'oosno', 2, null],
  ])('%s', (_, found, from, next) => {
    const words: Record<string, LineFinding> = { o: 'ok', l: 'later', s: 'silent', n: 'noisy' };
    const lines = ids.flatMap((id) => linesOf(smallFestival()).filter(({ source }) => source.id === id));
    const results = new Map(
      ids.flatMap((id, place) => {
        const word = words[found[place] ?? ''];
        return word ? [[id, result(id, word)] as const] : [];
      }),
    );
    const fromId = from === null ? null : (ids[from] ?? null);
    expect(nextToCheck(lines, results, fromId)).toBe(next === null ? null : ids[next]);
  });
});

test('of several results for a line the last holds, and the progress counts every line once', () => {
  const show = withRows(
    smallFestival(),
    result('pale-s0', 'silent'),
    result('pale-s0', 'ok'),
    result('pale-s1', 'swapped'),
    result('pale-s2', 'later'),
  );
  const results = lineResultsOf(show, 'pale');
  expect(results.get('pale-s0')?.found).toBe('ok');
  expect(lineResultsOf(show, 'tarn').size).toBe(0);
  expect(progressOf(linesOf(show), results)).toEqual({ all: 5, ok: 1, notOk: 1, later: 1, left: 2 });
});

test('every result but ok is a fault until it is ok, with what to do and the caution that belongs to it', () => {
  const show = withRows(
    smallFestival(),
    result('pale-s0', 'silent'),
    result('pale-s1', 'noisy'),
    result('pale-s2', 'swapped', { cameSourceId: 'pale-s3' }),
    result('pale-s3', 'later'),
    result('pale-s4', 'ok'),
  );
  const faults = lineFaults(linesOf(show), lineResultsOf(show, 'pale'));
  const of = (id: string) => faults.find((it) => it.sourceId === id);
  expect(faults).toHaveLength(4);
  expect(of('pale-s0')).toMatchObject({ severity: 'must fix' });
  expect(of('pale-s0')?.cause).toMatch(/^Choir left \([AB]\d+\) was silent/);
  // A lifted protective earth can kill: IEC 60364-4-41 on protection by automatic disconnection (from memory).
  expect(of('pale-s1')?.remedy).toMatch(/Never lift the earth of a mains plug/);
  expect(of('pale-s2')?.cause).toMatch(/^Piano high came where Piano low/);
  expect(of('pale-s2')?.remedy).toMatch(/48 V off/);
  expect(of('pale-s3')).toMatchObject({ severity: 'know this' });
  const mended = withRows(show, result('pale-s2', 'ok', { id: 'mended' }));
  expect(lineFaults(linesOf(mended), lineResultsOf(mended, 'pale'))).toHaveLength(3);
});

test('swapping two lines in the plan gives each the socket of the other, moves nothing else, and both are heard again', () => {
  const show = smallFestival();
  const { sheet, derived } = derivedAct(show, 'pale');
  const lines = linesToCheck(sheet, derived.plan, 'by socket');
  const [one, other] = lines;
  if (!one || !other) throw new Error('two lines');
  let count = 0;
  const change = swapSockets(sheet, one, other, at, () => `n${count++}`);
  if (!change) throw new Error('both have sockets');
  const after = applyChange(show, change);
  const now = new Map(linesOf(after).map((line) => [line.source.id, line]));
  expect(now.get(one.source.id)?.socketName).toBe(other.socketName);
  expect(now.get(other.source.id)?.socketName).toBe(one.socketName);
  for (const line of lines.slice(2)) expect(now.get(line.source.id)).toEqual(line);
  for (const line of lines) expect(now.get(line.source.id)?.channels).toEqual(line.channels);
  expect([...lineResultsOf(after, 'pale').values()].map((it) => it.found)).toEqual(['later', 'later']);
  // Swapped back: the same decisions say it, there are no more of them.
  const again = linesOf(after);
  const back = swapSockets(
    derivedAct(after, 'pale').sheet,
    again.find(({ source }) => source === one.source) ?? one,
    again.find(({ source }) => source === other.source) ?? other,
    at,
    () => `m${count++}`,
  );
  if (!back) throw new Error('both have sockets');
  const restored = applyChange(after, back);
  expect(linesOf(restored)).toEqual(lines);
  expect(restored.decisions.size).toBe(after.decisions.size);
});

test('a line without a socket cannot be swapped', () => {
  const { sheet, derived } = derivedAct(smallFestival(), 'pale');
  const [one, other] = linesToCheck(sheet, derived.plan, 'by socket');
  if (!one || !other) throw new Error('two lines');
  expect(swapSockets(sheet, one, { ...other, socket: null }, at, () => 'x')).toBeNull();
});
