import { deriveAct } from '../derive/derive-act.ts';
import type { Feed } from '../derive/derived.ts';
import { Wish } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { RanLevel } from '../show/as-ran.ts';

/**
 * Which copy feeds what was brought into a mix during the show, by `mixId sourceId`: the one that the rule gives
 * where it had been wished for. Empty where nothing was brought in.
 */
export function feedsAsRun(
  sheet: ActSheet,
  feeds: readonly (readonly Feed[])[],
  ran: ReadonlyMap<string, RanLevel>,
): ReadonlyMap<string, Feed> {
  const fed = new Set(feeds.flat().flatMap((it) => (it.purpose === null ? [] : [keyOf(it)])));
  const added = [...ran.values()].filter((it) => it.levelDb !== null && !fed.has(keyOf(it)));
  if (added.length === 0) return new Map();
  const wishes = added.map(({ mixId, sourceId }) =>
    Wish.parse({ id: keyOf({ mixId, sourceId }), mixId, sourceId, order: 100_000, amount: 'little' }),
  );
  const keys = new Set(added.map(keyOf));
  const asWished = deriveAct({ ...sheet, wishes: [...sheet.wishes, ...wishes] }).feeds.flat();
  return new Map(asWished.filter((it) => keys.has(keyOf(it))).map((it) => [keyOf(it), it]));
}

const keyOf = ({ mixId, sourceId }: { mixId: string; sourceId: string }) => `${mixId} ${sourceId}`;
