import { deriveAct } from '../../core/derive/derive-act.ts';
import type { Feed } from '../../core/derive/derived.ts';
import { Copy, type Decision, Wish } from '../../core/show/act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { type Change, type Put, put } from '../../core/show/change.ts';
import { feedKey } from '../../core/show/feed-key.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Amount, Purpose } from '../../core/show/words.ts';
import { whoHears } from '../parts/names.ts';
import { newId } from '../state/new-id.ts';

/**
 * What the engineer does on the mixes, as changes. Typing a word changes the wish, typing a number decides the
 * start level; putting back removes what was decided and leaves what was wished.
 */
export type CellPlace = { mixId: Id; sourceId: Id };

type Parts = { put: Put[]; remove: Change['remove'] };

const nothing = (): Parts => ({ put: [], remove: [] });

type FeedMatter = 'feed' | 'second feed' | 'tap' | 'level';

function feedDecisions(
  sheet: ActSheet,
  { mixId, sourceId }: CellPlace,
  about: readonly FeedMatter[],
): Decision[] {
  return sheet.decisions.filter(
    (it) =>
      about.some((matter) => matter === it.about) &&
      'mixId' in it &&
      it.mixId === mixId &&
      'sourceId' in it &&
      it.sourceId === sourceId,
  );
}

const removals = (rows: readonly Decision[]): Change['remove'] =>
  rows.map(({ id }) => ({ table: 'decisions', id }));

const ownWishes = (sheet: ActSheet, { mixId, sourceId }: CellPlace): Wish[] =>
  sheet.wishes.filter((wish) => wish.mixId === mixId && wish.sourceId === sourceId);

function wishFor(sheet: ActSheet, place: CellPlace, want: { amount: Amount } | { levelDb: number }): Put {
  const before = ownWishes(sheet, place).at(-1);
  const order = Math.max(
    0,
    ...sheet.wishes.filter((it) => it.mixId === place.mixId).map((it) => it.order + 1),
  );
  const base = before ?? Wish.parse({ id: newId(), ...place, order, amount: 'some' });
  return put('wishes', {
    ...base,
    amount: 'amount' in want ? want.amount : null,
    levelDb: 'levelDb' in want ? want.levelDb : null,
  });
}

function levelDecision(sheet: ActSheet, place: CellPlace, levelDb: number): Put {
  const id = feedDecisions(sheet, place, ['level'])[0]?.id ?? newId();
  return put('decisions', { id, actId: sheet.act.id, locked: true, about: 'level', ...place, levelDb });
}

export function setAmount(sheet: ActSheet, place: CellPlace, amount: Amount): Parts {
  return {
    put: [wishFor(sheet, place, { amount })],
    remove: removals(feedDecisions(sheet, place, ['level'])),
  };
}

/** Decides a start level; where nothing was wished, the wish comes with it. */
export function setLevel(sheet: ActSheet, place: CellPlace, feed: Feed, levelDb: number): Parts {
  const isFed = feed.purpose !== null;
  return {
    put: [...(isFed ? [] : [wishFor(sheet, place, { levelDb })]), levelDecision(sheet, place, levelDb)],
    remove: [],
  };
}

/** Takes sources out of mixes, also where a wish on a group or on everything would bring them back. */
export function takeOut(sheet: ActSheet, places: readonly CellPlace[]): Parts {
  if (places.length === 0) return nothing();
  const own = places.map((place) => ({
    place,
    wishes: ownWishes(sheet, place),
    decisions: feedDecisions(sheet, place, ['feed', 'second feed', 'tap', 'level']),
  }));
  const gone = new Set(own.flatMap(({ wishes, decisions }) => [...wishes, ...decisions].map((it) => it.id)));
  const without: ActSheet = {
    ...sheet,
    wishes: sheet.wishes.filter((it) => !gone.has(it.id)),
    decisions: sheet.decisions.filter((it) => !gone.has(it.id)),
  };
  // One derivation tells for all places what would still feed them.
  const fed = new Set(
    deriveAct(without).feeds.flatMap((feeds) =>
      feeds.flatMap((feed) => (feed.amount === null && feed.wishId === null ? [] : [feedKey(feed)])),
    ),
  );
  const parts = own.map(({ place, wishes, decisions }): Parts => {
    if (fed.has(feedKey(place)))
      return { put: [wishFor(sheet, place, { amount: 'none' })], remove: removals(decisions) };
    const remove = wishes.map(({ id }) => ({ table: 'wishes' as const, id }));
    return { put: [], remove: [...removals(decisions), ...remove] };
  });
  return { put: parts.flatMap((part) => part.put), remove: parts.flatMap((part) => part.remove) };
}

/** Puts the copy, the level and the tap of a feed back to what the program proposes. */
export function putFeedBack(sheet: ActSheet, place: CellPlace): Parts {
  return { put: [], remove: removals(feedDecisions(sheet, place, ['feed', 'second feed', 'tap', 'level'])) };
}

export function chooseCopy(sheet: ActSheet, place: CellPlace, purpose: Purpose | null): Parts {
  const before = feedDecisions(sheet, place, ['feed']);
  if (purpose === null) return { put: [], remove: removals(before) };
  const id = before[0]?.id ?? newId();
  return {
    put: [put('decisions', { id, actId: sheet.act.id, locked: true, about: 'feed', ...place, purpose })],
    remove: [],
  };
}

/** The decision on a source's socket or a mix's bus, output, device or cue; null puts it back to the proposal. */
export function decide(
  sheet: ActSheet,
  what:
    | { about: 'socket'; sourceId: Id; socketId: Id | null }
    | { about: 'phantom'; sourceId: Id; on: boolean | null }
    | { about: 'bus'; mixId: Id; busId: Id | null }
    | { about: 'output'; mixId: Id; outputId: Id | null }
    | { about: 'device'; mixId: Id; deviceId: Id | null }
    | { about: 'cue'; mixId: Id; cueOutputId: Id | null },
): Parts {
  const owner = 'sourceId' in what ? what.sourceId : what.mixId;
  const before = sheet.decisions.filter(
    (it) =>
      it.about === what.about &&
      (('sourceId' in it && it.sourceId === owner) || ('mixId' in it && it.mixId === owner)),
  );
  if (Object.values(what).includes(null)) return { put: [], remove: removals(before) };
  const row = { id: before[0]?.id ?? newId(), actId: sheet.act.id, locked: true, ...what } as Decision;
  return { put: [put('decisions', row)], remove: removals(before.slice(1)) };
}

/** Makes a copy or does without it, or gives it a channel; `null` puts it back to the proposal. */
export function setCopy(
  sheet: ActSheet,
  sourceId: Id,
  purpose: Purpose,
  to: { wanted: boolean; channel?: number | null } | null,
): Parts {
  const before = sheet.copies.find((it) => it.sourceId === sourceId && it.purpose === purpose);
  if (to === null) return { put: [], remove: before ? [{ table: 'copies', id: before.id }] : [] };
  const base = before ?? Copy.parse({ id: newId(), sourceId, purpose });
  const channel = to.channel === undefined ? base.channel : to.channel;
  return { put: [put('copies', { ...base, locked: true, wanted: to.wanted, channel })], remove: [] };
}

/** Several parts as one change, so that one undo takes all of it back. */
export function changeOf(label: string, ...parts: readonly Parts[]): Change {
  const whole = nothing();
  for (const part of parts) {
    whole.put.push(...part.put);
    whole.remove.push(...part.remove);
  }
  return { label, ...whole };
}

/** How a cell is called in the list of what can be undone. */
export function cellLabel(sheet: ActSheet, { mixId, sourceId }: CellPlace): string {
  const source = sheet.sources.find((it) => it.id === sourceId);
  const mix = sheet.mixes.find((it) => it.id === mixId);
  return `${source?.name ?? ''} in ${mix ? whoHears(sheet, mix) : ''}`.slice(0, 150);
}
