import type { Mix, Source } from '../../show/act.ts';
import type { ActSheet } from '../../show/act-sheet.ts';
import { actSheet, actsOfDay } from '../../show/act-sheet.ts';
import type { Id, StockItem } from '../../show/rig.ts';
import type { Show } from '../../show/show.ts';
import { stockKey } from '../../show/stock-key.ts';
import { usesHouseDevice } from '../plan-devices.ts';
import { clock } from './check-day.ts';

/** Where the house's stock does not last over the day. */
export type StockReport = {
  collisions: StockCollision[];
  /** What acts ask for that no stock row covers, and how often at most in one act. */
  unlisted: { kind: StockItem['kind']; name: string; most: number }[];
  /** Acts without times: they are counted in running order, with nothing coming back between two neighbours. */
  untimed: string[];
};

export type StockCollision = {
  stockId: Id;
  name: string;
  have: number;
  /** The most that are out, or not yet ready again, at one time. */
  most: number;
  /** The fewest further items with which every act has its own. */
  extra: number;
  /** Acts that hold the stock at the worst moment, and the moment in words. */
  acts: string[];
  what: string;
};

/** `line`: the shared line that it stands on, which holds it as long as the line stays; empty for an act's own. */
type Need = { kind: StockItem['kind']; name: string; count: number; line: string };
type Span = { acts: string[]; count: number; line: string; from: number; to: number };

/**
 * Follows every stock row through the day: an item is away from its hand-out until it is back, checked and
 * charged. Items of one row are alike, so the most that are away at once is the fewest that do (interval
 * partitioning: as many are needed as intervals overlap; Kleinberg and Tardos, Algorithm Design, 4.1, from memory).
 * What stands on a shared line is not handed out anew while it stays from one act to the next.
 */
export function findStockCollisions(show: Show, dayId: Id): StockReport {
  const rigId = show.days.get(dayId)?.rigId;
  const stock = [...show.stockItems.values()]
    .filter((item) => item.rigId === rigId)
    // A row with a name goes before one that stands for all of its kind.
    .sort((a, b) => Number(a.name === '') - Number(b.name === '') || a.order - b.order);
  const acts = actsOfDay(show, dayId).flatMap((act) => actSheet(show, act.id) ?? []);
  const unlisted = new Map<string, StockReport['unlisted'][number]>();
  const spans = new Map<Id, Span[]>();
  acts.forEach((sheet, place) => {
    for (const need of needsOf(sheet)) {
      const row = stock.find((item) => covers(item, need));
      if (row) spans.set(row.id, [...(spans.get(row.id) ?? []), spanOf(sheet, row, need, place)]);
      else noteUnlisted(unlisted, need);
    }
  });
  const collisions = stock.flatMap((row) => collisionOf(row, withStays(spans.get(row.id) ?? [])) ?? []);
  const untimed = acts
    .filter(({ act }) => act.startMinute === null || act.endMinute === null)
    .map(({ act }) => act.name);
  return { collisions, unlisted: [...unlisted.values()], untimed };
}

function covers(item: StockItem, need: Need): boolean {
  const name = stockKey(item.name);
  return item.kind === need.kind && (name === '' || name === need.name);
}

function noteUnlisted(unlisted: Map<string, StockReport['unlisted'][number]>, need: Need): void {
  const key = `${need.kind} ${need.name}`;
  const known = unlisted.get(key);
  if (!known || known.most < need.count)
    unlisted.set(key, { kind: need.kind, name: need.name, most: need.count });
}

/** Spans of one shared line that meet are one: it stays, with all that stands on it. */
function withStays(spans: readonly Span[]): Span[] {
  const stays = new Map<string, Span>();
  return spans.flatMap((span): Span[] => {
    if (span.line === '') return [span];
    const before = stays.get(span.line);
    if (before && span.from < before.to) {
      before.to = Math.max(before.to, span.to);
      before.acts.push(...span.acts);
      return [];
    }
    const own = { ...span, acts: [...span.acts] };
    stays.set(span.line, own);
    return [own];
  });
}

/** What an act takes from the house, alike things together. What the band brings is not counted. */
function needsOf(sheet: ActSheet): Need[] {
  const needs = new Map<string, Need>();
  const add: Add = (kind, name, count, sharedLine = '') => {
    const plain = stockKey(name);
    const line = sharedLine.trim().toLowerCase() && `${kind} ${plain} ${sharedLine.trim().toLowerCase()}`;
    const key = `${kind} ${plain} ${line}`;
    needs.set(key, { kind, name: plain, line, count: (needs.get(key)?.count ?? 0) + count });
  };
  for (const source of sheet.sources) addSource(source, add);
  for (const mix of sheet.mixes) addMix(mix, add);
  return [...needs.values()];
}

type Add = (kind: Need['kind'], name: string, count: number, sharedLine?: string) => void;

function addSource(source: Source, add: Add): void {
  if (source.broughtBy === 'band' || source.audience === 'not here') return;
  if (source.pickUp === 'mic' || source.pickUp === 'di')
    add(source.pickUp, source.pickUpModel, 1, source.sharedLine);
  if (source.stand !== '') add('stand', source.stand, 1, source.sharedLine);
}

function addMix(mix: Mix, add: Add): void {
  if (!usesHouseDevice(mix)) return;
  if (mix.deviceKind === 'in-ear') add('in-ear pack', '', mix.deviceCount);
  else add(mix.deviceKind === 'wedge' ? 'wedge' : 'fill', '', mix.deviceCount);
}

function spanOf({ act }: ActSheet, row: StockItem, { count, line }: Need, place: number): Span {
  // Without times, two neighbours meet and others do not.
  const start = act.startMinute ?? place * 1000;
  const end = Math.max(start, act.endMinute ?? (act.startMinute === null ? start + 1000 : start));
  return {
    acts: [act.name],
    count,
    line,
    from: start - row.handOutMinutes,
    to: end + row.returnMinutes + row.chargeMinutes,
  };
}

function collisionOf(row: StockItem, spans: readonly Span[]): StockCollision | null {
  let worst: { at: number; out: Span[]; count: number } = { at: 0, out: [], count: 0 };
  for (const { from } of spans) {
    const out = spans.filter((span) => span.from <= from && from < span.to);
    const count = out.reduce((sum, span) => sum + span.count, 0);
    if (count > worst.count) worst = { at: from, out, count };
  }
  if (worst.count <= row.count) return null;
  const name = row.name || row.kind;
  const acts = [...new Set(worst.out.flatMap((span) => span.acts))];
  const extra = worst.count - row.count;
  return {
    stockId: row.id,
    name,
    have: row.count,
    most: worst.count,
    extra,
    acts,
    what: `${name}: at ${clock(Math.max(0, worst.at))} ${acts.join(' and ')} hold ${worst.count} together, and there are ${row.count}. ${extra} more would do.`,
  };
}
