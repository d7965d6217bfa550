import { deriveAct } from '../derive/derive-act.ts';
import type { Feed } from '../derive/derived.ts';
import { Wish } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { RanLevel } from '../show/as-ran.ts';
import { feedKey } from '../show/feed-key.ts';

/**
 * Which copy feeds what was brought into a mix during the show, by `feedKey`: the one that the rule gives
 * where it had been wished for. Empty where nothing was brought in.
 */
export function feedsAsRun(
  sheet: ActSheet,
  feeds: readonly (readonly Feed[])[],
  ran: ReadonlyMap<string, RanLevel>,
): ReadonlyMap<string, Feed> {
  const fed = new Set(feeds.flat().flatMap((it) => (it.purpose === null ? [] : [feedKey(it)])));
  const added = [...ran.values()].filter((it) => it.levelDb !== null && !fed.has(feedKey(it)));
  if (added.length === 0) return new Map();
  const wishes = added.map(({ mixId, sourceId }) =>
    Wish.parse({ id: feedKey({ mixId, sourceId }), mixId, sourceId, order: 100_000, amount: 'little' }),
  );
  const keys = new Set(added.map(feedKey));
  const asWished = deriveAct({ ...sheet, wishes: [...sheet.wishes, ...wishes] }).feeds.flat();
  return new Map(asWished.filter((it) => keys.has(feedKey(it))).map((it) => [feedKey(it), it]));
}
