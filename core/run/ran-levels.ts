import type { Feed } from '../derive/derived.ts';
import type { Source } from '../show/act.ts';
import type { RanLevel } from '../show/as-ran.ts';
import { feedKey } from '../show/feed-key.ts';
import type { Id } from '../show/rig.ts';
import type { Show } from '../show/show.ts';

/** Quieter than this is off. */
export const quietestDb = -60;
/** More than a send of a desk usually adds; louder is a slip of the finger. */
export const loudestDb = 10;

/** A hand that goes on turning within this time is one change of a level. */
export const oneMoveMs = 10_000;

/** Where the levels of an act stand against its plan, by `feedKey`. */
export function ranLevelsOf(show: Show, actId: Id): ReadonlyMap<string, RanLevel> {
  const rows = [...show.ranLevels.values()].filter((it) => it.actId === actId);
  return new Map(rows.map((it) => [feedKey(it), it]));
}

/** One source of a mix as it is heard now. */
export type HeardNow = {
  source: Source;
  /** The planned feed of it: its copy is the one that feeds the mix, also where the level was changed. */
  feed: Feed;
  /** null: off. */
  levelDb: number | null;
  plannedDb: number | null;
  /** The level was moved during the show and is not back where it was planned. */
  isChanged: boolean;
  /** It was not planned in this mix. */
  isAdded: boolean;
};

/** What a mix holds now, the loudest first; what was switched off during the show stays in the list, last. */
export function heardNow(
  sources: readonly Source[],
  feeds: readonly (readonly Feed[])[],
  mixId: Id,
  ran: ReadonlyMap<string, RanLevel>,
): HeardNow[] {
  const heard = sources.flatMap((source, place): HeardNow[] => {
    const feed = feeds[place]?.find((it) => it.mixId === mixId);
    if (!feed) return [];
    const moved = ran.get(feedKey({ mixId, sourceId: source.id }));
    const plannedDb = feed.purpose === null ? null : feed.levelDb;
    if (!moved && feed.purpose === null) return [];
    const levelDb = moved ? moved.levelDb : plannedDb;
    const isChanged = levelDb !== plannedDb;
    if (!isChanged && feed.purpose === null) return [];
    return [{ source, feed, levelDb, plannedDb, isChanged, isAdded: feed.purpose === null }];
  });
  return heard.sort((one, other) => (other.levelDb ?? -1000) - (one.levelDb ?? -1000));
}

/**
 * The row that keeps a new level: the last one again where it is not older than `since` (see `oneMoveMs`), because
 * then the hand is still moving; else a new one. Times are ISO 8601.
 */
export function movedLevel(
  moved: Omit<RanLevel, 'id'>,
  ran: ReadonlyMap<string, RanLevel>,
  since: string,
  newId: () => Id,
): RanLevel {
  const last = ran.get(feedKey(moved));
  const goesOn = last !== undefined && last.changedAt >= since;
  return { ...moved, id: goesOn ? last.id : newId(), fromDb: goesOn ? last.fromDb : moved.fromDb };
}

/** A level one step up or down; from off it goes up to `fromOffDb`, and below the quietest it is off. */
export function steppedDb(levelDb: number | null, byDb: number, fromOffDb: number): number | null {
  if (levelDb === null) return byDb > 0 ? fromOffDb : null;
  const next = Math.round((levelDb + byDb) * 10) / 10;
  return next < quietestDb ? null : Math.min(next, loudestDb);
}
