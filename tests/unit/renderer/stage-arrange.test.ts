import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ActSheet } from '../../../core/show/act-sheet.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import type { Change } from '../../../core/show/change.ts';
import { Change as ChangeSchema, put } from '../../../core/show/change.ts';
import type { Show } from '../../../core/show/show.ts';
import { mirrored, moved, takenOff, turned, withinHalfTurn } from '../../../renderer/stage/arrange.ts';
import { laidOut } from '../../../renderer/stage/laid-out.ts';
import { leastTargetPx, pillWidthPx } from '../../../renderer/stage/mark-look.ts';
import { marksOf } from '../../../renderer/stage/marks.ts';
import { linesOfOthers, snapped, toCentimetre } from '../../../renderer/stage/snap.ts';
import { isPlaced, thingsOnStage, withTheirThings } from '../../../renderer/stage/stage-objects.ts';
import { fittedView, toScreen } from '../../../renderer/stage/stage-view.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

const sheetOf = (show: Show): ActSheet => {
  const sheet = actSheet(show, 'tarn');
  if (!sheet) throw new Error('The small festival has this act.');
  return sheet;
};

/** The small festival with a microphone and a wedge on its plot. */
function festival(): Show {
  const show = smallFestival();
  const sheet = sheetOf(show);
  const [mix, source] = [sheet.mixes[0], sheet.sources[0]];
  if (!mix || !source) throw new Error('The act has a mix and a source.');
  return applyChange(show, {
    label: 'Place',
    put: [
      put('mixes', { ...mix, xM: 1.5, yM: 1, aimDeg: 30 }),
      put('sources', { ...source, xM: -2.2, yM: 2.6, aimDeg: -45 }),
    ],
    remove: [],
  });
}

const applied = (show: Show, change: Change) => {
  expect(ChangeSchema.safeParse(change).success).toBe(true);
  return applyChange(show, change);
};
const looks = (show: Show) =>
  thingsOnStage(sheetOf(show)).map(({ key, at, aimDeg, ownPlace }) => ({ key, at, aimDeg, ownPlace }));

const allThings = thingsOnStage(sheetOf(festival()));
const someThings = fc.subarray(allThings, { minLength: 1 });

describe('arranging', () => {
  test('mirroring twice is what it was', () => {
    fc.assert(
      fc.property(someThings, (things) => {
        const show = festival();
        const keys = new Set(things.map(({ key }) => key));
        const mirror = (now: Show) => {
          const sheet = sheetOf(now);
          return applied(
            now,
            mirrored(
              sheet,
              thingsOnStage(sheet).filter(({ key }) => keys.has(key)),
            ),
          );
        };
        const once = mirror(show);
        for (const it of thingsOnStage(sheetOf(once)).filter(({ key }) => keys.has(key))) {
          const before = allThings.find(({ key }) => key === it.key);
          // A line that only stands with its performer is mirrored where the performer is.
          if (it.ownPlace && it.at && before?.at)
            expect(it.at).toEqual({ xM: -before.at.xM + 0, yM: before.at.yM });
          if (it.ownPlace && before && before.aimDeg !== null) expect(it.aimDeg).toBe(-before.aimDeg);
        }
        const placeAndAim = (now: Show) => looks(now).map(({ key, at, aimDeg }) => ({ key, at, aimDeg }));
        expect(placeAndAim(mirror(once))).toEqual(placeAndAim(show));
      }),
    );
  });

  test('moving there and back is what it was', () => {
    const way = fc.integer({ min: -900, max: 900 }).map((cm) => cm / 100);
    fc.assert(
      fc.property(someThings, way, way, (things, xM, yM) => {
        const keys = new Set(things.map(({ key }) => key));
        const move = (now: Show, by: { xM: number; yM: number }) => {
          const sheet = sheetOf(now);
          return applied(
            now,
            moved(
              sheet,
              thingsOnStage(sheet).filter(({ key }) => keys.has(key)),
              by,
            ),
          );
        };
        const there = move(festival(), { xM, yM });
        const back = move(there, { xM: -xM, yM: -yM });
        expect(looks(back).map(({ at }) => at)).toEqual(looks(festival()).map(({ at }) => at));
      }),
    );
  });

  test('a performer takes along their lines and the wedge that only they hear, unless told not to', () => {
    const things = thingsOnStage(sheetOf(festival()));
    const wedge = things.find((it) => it.kind === 'wedge' && it.performerId !== null && isPlaced(it));
    const performer = things.find((it) => it.kind === 'performer' && it.id === wedge?.performerId);
    const chosen = new Set([performer?.key ?? '']);
    const along = [...withTheirThings(things, chosen, true)];
    expect(along).toContain(wedge?.key);
    const left = [...withTheirThings(things, chosen, false)];
    expect(left).not.toContain(wedge?.key);
    // A line without a place of its own stands where its performer does, wanted or not.
    const own = things.filter(
      (it) => it.kind === 'source' && it.performerId === performer?.id && !it.ownPlace,
    );
    for (const it of own) expect(left).toContain(it.key);
  });

  test('a line that leaves its performer gets a place of its own; one that goes along does not', () => {
    const sheet = sheetOf(festival());
    const things = thingsOnStage(sheet);
    const line = things.find((it) => it.kind === 'source' && !it.ownPlace && isPlaced(it));
    const performer = things.find((it) => it.kind === 'performer' && it.id === line?.performerId);
    if (!line?.at || !performer) throw new Error('A line stands with its performer.');
    const alone = moved(sheet, [line], { xM: 1, yM: 0 });
    expect(alone.put).toMatchObject([{ table: 'sources', row: { xM: line.at.xM + 1, yM: line.at.yM } }]);
    const together = moved(sheet, [performer, line], { xM: 1, yM: 0 });
    expect(together.put.map(({ table }) => table)).toEqual(['performers']);
  });

  test('a box moves for every act of the rig, the cue position in the rig itself', () => {
    const sheet = sheetOf(festival());
    const box = thingsOnStage(sheet).find((it) => it.kind === 'box');
    if (!box) throw new Error('The rig has a box.');
    expect(moved(sheet, [box], { xM: 0, yM: -1 }).put.map(({ table }) => table)).toEqual(['boxes']);
  });

  test('what is taken off the plot has no place, and what never had one is left alone', () => {
    const show = festival();
    const sheet = sheetOf(show);
    const things = thingsOnStage(sheet);
    const change = takenOff(sheet, things);
    expect(change.put.length).toBe(things.filter((it) => it.ownPlace).length);
    expect(thingsOnStage(sheetOf(applied(show, change))).every((it) => !it.ownPlace)).toBe(true);
  });

  test('four quarter turns are a whole one', () => {
    let show = festival();
    const wedgesOf = (now: Show) =>
      thingsOnStage(sheetOf(now)).filter((it) => it.kind === 'wedge' && it.aimDeg !== null);
    const before = wedgesOf(show).map(({ aimDeg }) => aimDeg);
    for (let turn = 0; turn < 4; turn++) show = applied(show, turned(sheetOf(show), wedgesOf(show), 90));
    expect(wedgesOf(show).map(({ aimDeg }) => aimDeg)).toEqual(before);
  });

  test.each([
    [0, 0],
    [180, 180],
    [-180, 180],
    [195, -165],
    [-345, 15],
    [720.5, 0.5],
  ])('%d degrees are kept as %d', (turn, kept) => {
    expect(withinHalfTurn(turn)).toBe(kept);
  });
});

describe('snapping', () => {
  const lines = { xs: [0, 1.13], ys: [2.4] };

  test.each([
    ['near a line of another: onto that line', 1.1, 0, 1.13, 1.13],
    ['near the centre line: onto it', 0.05, 0, 0, 0],
    ['far from every line: to the quarter metre', 2.6, 0, 2.5, null],
  ])('%s', (_, xM, yM, snappedX, along) => {
    expect(snapped({ xM, yM }, lines, 0.1)).toMatchObject({ at: { xM: snappedX }, alongX: along });
  });

  test('what is snapped is on a line within reach or on the grid, and snapping it again moves nothing', () => {
    const metre = fc.double({ min: -20, max: 20, noNaN: true });
    const centimetre = fc.integer({ min: -900, max: 900 }).map((cm) => cm / 100);
    fc.assert(
      fc.property(metre, metre, fc.array(centimetre), fc.array(centimetre), (xM, yM, xs, ys) => {
        const once = snapped({ xM, yM }, { xs, ys }, 0.1);
        expect(Math.abs(once.at.xM - xM)).toBeLessThanOrEqual(0.1251);
        if (once.alongX === null) expect(Math.abs((once.at.xM * 4) % 1)).toBe(0);
        else expect(xs.map(toCentimetre)).toContain(once.at.xM);
        expect(snapped(once.at, { xs, ys }, 0).at).toEqual(once.at);
      }),
    );
  });

  test('a moved thing is never drawn to itself', () => {
    const at = { xM: 3, yM: 1 };
    const others = [
      { key: 'a', at },
      { key: 'b', at: { xM: -2, yM: 5 } },
    ];
    expect(linesOfOthers(others, new Set(['a']))).toEqual({ xs: [0, -2], ys: [5] });
  });
});

describe('the marks of the drawing', () => {
  test('every thing with a place is in one mark and no other', () => {
    fc.assert(
      fc.property(fc.subarray(allThings), fc.boolean(), (some, along) => {
        const chosen = new Set(some.map(({ key }) => key));
        const marks = marksOf(allThings, chosen, withTheirThings(allThings, chosen, along));
        const drawn = marks.flatMap((mark) => mark.things.map(({ key }) => key)).sort();
        expect(drawn).toEqual(
          allThings
            .filter(isPlaced)
            .map(({ key }) => key)
            .sort(),
        );
      }),
    );
  });

  test('lines at one spot share a mark until one of them is chosen', () => {
    const lines = allThings.filter((it) => it.kind === 'source' && !it.ownPlace && isPlaced(it));
    const together = lines.filter((it) => it.performerId === lines[0]?.performerId);
    expect(together.length).toBeGreaterThan(1);
    const none = new Set<string>();
    const shared = marksOf(together, none, none);
    expect(shared.map((mark) => mark.things.length)).toEqual([together.length]);
    const one = new Set([together[0]?.key ?? '']);
    const apart = marksOf(together, one, one);
    expect(apart.map((mark) => mark.things.length)).toEqual([1, together.length - 1]);
  });

  test('numbers of lines stand in line with their place and cover neither each other nor a box', () => {
    const size = { width: 900, height: 600 };
    const extent = { leftM: -6, rightM: 6, frontM: 0, backM: 8 };
    fc.assert(
      fc.property(fc.subarray(allThings), (some) => {
        const chosen = new Set(some.map(({ key }) => key));
        const view = fittedView('engineer', size, extent);
        const marks = laidOut(marksOf(allThings, chosen, chosen), view);
        const lines = marks
          .filter((mark) => mark.things[0].kind === 'source')
          .map((mark) => {
            const { x, y } = toScreen(view, mark.at);
            return { x: x + mark.aside.x, y: y + mark.aside.y, width: pillWidthPx(mark) };
          });
        for (const [nth, one] of lines.entries())
          for (const other of lines.slice(nth + 1)) {
            const apart = Math.abs(one.x - other.x) >= (one.width + other.width) / 2 - 1e-6;
            expect(apart || Math.abs(one.y - other.y) >= leastTargetPx - 1e-6).toBe(true);
          }
        for (const mark of marks)
          if (mark.things[0].kind !== 'source') expect(mark.aside).toEqual({ x: 0, y: 0 });
      }),
    );
  });
});
