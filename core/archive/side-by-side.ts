import type { Derived } from '../derive/derived.ts';
import { lineResultsOf } from '../run/line-check.ts';
import { type CheckLine, linesToCheck } from '../run/lines-to-check.ts';
import { heardNow, ranLevelsOf } from '../run/ran-levels.ts';
import type { Mix, Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { LineResult } from '../show/as-ran.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';

/** An act of the archive with all that follows from it, in one of its two states. */
export type ArchivedState = { show: Show; sheet: ActSheet; derived: Derived };

/** The same thing in both states; null where one of them has it not. */
export type Both<T> = { planned: T | null; ran: T | null; differs: boolean };

export type LineInBoth = Both<CheckLine> & {
  source: Source;
  /** What the line check found last; null: nobody listened. */
  result: LineResult | null;
};

export type LevelInBoth = Both<{ levelDb: number | null }> & { source: Source };
export type MixInBoth = { mix: Mix; levels: LevelInBoth[]; differs: boolean };

/** An act as planned beside how it ran: its lines, and what every mix held. */
export type SideBySide = { lines: LineInBoth[]; mixes: MixInBoth[] };

/** Lines and mixes of both states, matched by their rows; those of the run first, then what it no longer has. */
export function sideBySide(planned: ArchivedState, ran: ArchivedState): SideBySide {
  return { lines: linesInBoth(planned, ran), mixes: mixesInBoth(planned, ran) };
}

function linesInBoth(planned: ArchivedState, ran: ArchivedState): LineInBoth[] {
  const [before, after] = [planned, ran].map(
    ({ sheet, derived }) =>
      new Map(linesToCheck(sheet, derived.plan, 'by channel').map((line) => [line.source.id, line])),
  );
  const results = lineResultsOf(ran.show, ran.sheet.act.id);
  const ids = new Set([...(after?.keys() ?? []), ...(before?.keys() ?? [])]);
  return [...ids].flatMap((id): LineInBoth[] => {
    const [one, other] = [before?.get(id) ?? null, after?.get(id) ?? null];
    const source = (other ?? one)?.source;
    if (!source) return [];
    const differs = !one || !other || toldOf(one) !== toldOf(other);
    return [{ source, planned: one, ran: other, differs, result: results.get(id) ?? null }];
  });
}

/** What a line is plugged, picked up and heard by; where two of these are equal, nothing was changed about it. */
function toldOf({ source, socketName, phantomOn, channels, performer }: CheckLine): string {
  return JSON.stringify([
    source.name,
    source.pickUp,
    source.pickUpModel,
    socketName,
    phantomOn,
    channels,
    performer,
  ]);
}

function mixesInBoth(planned: ArchivedState, ran: ArchivedState): MixInBoth[] {
  const mixes = [
    ...ran.sheet.mixes,
    ...planned.sheet.mixes.filter(({ id }) => !ran.sheet.mixes.some((it) => it.id === id)),
  ];
  return mixes.map((mix) => {
    const levels = levelsInBoth(levelsOf(planned, mix.id), levelsOf(ran, mix.id));
    return { mix, levels, differs: levels.some((it) => it.differs) };
  });
}

type Levels = ReadonlyMap<Id, { source: Source; levelDb: number | null }>;

function levelsOf({ show, sheet, derived }: ArchivedState, mixId: Id): Levels {
  const heard = heardNow(sheet.sources, derived.feeds, mixId, ranLevelsOf(show, sheet.act.id));
  return new Map(heard.map((it) => [it.source.id, it]));
}

/** The loudest as it ran first; what was planned only stands after that. */
function levelsInBoth(planned: Levels, ran: Levels): LevelInBoth[] {
  const ids = new Set([...ran.keys(), ...planned.keys()]);
  return [...ids].flatMap((id): LevelInBoth[] => {
    const [one, other] = [planned.get(id), ran.get(id)];
    const source = (other ?? one)?.source;
    if (!source) return [];
    return [
      {
        source,
        planned: one ? { levelDb: one.levelDb } : null,
        ran: other ? { levelDb: other.levelDb } : null,
        differs: (one?.levelDb ?? null) !== (other?.levelDb ?? null),
      },
    ];
  });
}
