import type { Source } from '../../show/act.ts';
import type { ActSheet } from '../../show/act-sheet.ts';
import type { Id } from '../../show/rig.ts';
import { indexSheet } from '../../show/sheet-index.ts';
import { factsOfKind } from '../../show/source-kinds.ts';
import { type Purpose, purposes } from '../../show/words.ts';
import { planCopies, rowsOfCopies } from '../plan-copies.ts';
import { type Item, type Layer, linkKeys, type Slot } from './problem.ts';
import { roleCounter } from './roles.ts';

/**
 * Copies to channels for a whole day. The same role (the second electric guitar, its copy for monitors) wants the
 * same channel in every act, so that gains and settings stay where hands find them; each move costs 1.
 */
export function buildChannelLayer(sheets: readonly ActSheet[]): Layer {
  const count = sheets[0]?.rig.channelCount ?? 0;
  const slots = Array.from(
    { length: count },
    (_, index): Slot => ({
      group: 0,
      id: null,
      number: index + 1,
      name: `channel ${index + 1}`,
      bank: index,
      pairedWith: index % 2 === 0 && index + 1 < count ? index + 1 : -1,
    }),
  );
  const items = linkKeys(sheets.flatMap((sheet, act) => channelItems(sheet, act, slots)));
  for (const item of items) item.hotCost = [item.previous < 0 ? 0 : item.width];
  return {
    of: 'channels',
    acts: sheets.map((sheet) => ({
      actId: sheet.act.id,
      name: sheet.act.name,
      spareCount: 0,
      spareGroups: [],
    })),
    groups: [{ name: 'desk', slots: slots.map((_, index) => index) }],
    slots,
    items,
    canPrepare: false,
  };
}

type WantedCopy = { source: Source; channel: number | null; isLocked: boolean };

function channelItems(sheet: ActSheet, act: number, slots: readonly Slot[]): Item[] {
  const wanted = wantedCopies(sheet);
  return purposes.flatMap((purpose) => {
    const nextRole = roleCounter();
    const copies = wanted.get(purpose) ?? new Map<Id, WantedCopy>();
    const done = new Set<Id>();
    return [...copies.values()].flatMap((copy): Item[] => {
      if (done.has(copy.source.id)) return [];
      const partner = copies.get(copy.source.pairSourceId ?? '');
      const isPair =
        partner !== undefined &&
        partner.source.pairSourceId === copy.source.id &&
        sitsTogether(copy, partner);
      const members = isPair ? [copy, partner] : [copy];
      for (const member of members) done.add(member.source.id);
      return [itemOf(act, purpose, members, nextRole(`${copy.source.kind} ${members.length}`), slots)];
    });
  });
}

function wantedCopies(sheet: ActSheet): Map<Purpose, Map<Id, WantedCopy>> {
  const { sourceAt } = indexSheet(sheet);
  const rows = rowsOfCopies(sheet);
  const wanted = new Map<Purpose, Map<Id, WantedCopy>>();
  for (const { sourceId, purpose } of planCopies(sheet).copies) {
    const at = sourceAt.get(sourceId) ?? -1;
    const source = sheet.sources[at];
    if (!source) continue;
    const row = rows[at]?.[purpose];
    const ofPurpose = wanted.get(purpose) ?? new Map<Id, WantedCopy>();
    ofPurpose.set(sourceId, { source, channel: row?.channel ?? null, isLocked: row?.locked ?? false });
    wanted.set(purpose, ofPurpose);
  }
  return wanted;
}

/** A pair whose sides the engineer put on channels that are no pair is planned as two. */
function sitsTogether(left: WantedCopy, right: WantedCopy): boolean {
  const locks = [left, right].map((copy) => (copy.isLocked ? copy.channel : null));
  const [first, second] = locks;
  if (first == null && second == null) return true;
  const start = first ?? (second ?? 0) - 1;
  return start % 2 === 1 && (second == null || second === start + 1);
}

function itemOf(
  act: number,
  purpose: Purpose,
  members: WantedCopy[],
  role: string,
  slots: readonly Slot[],
): Item {
  const source = members[0]?.source;
  const slotOf = (copy: WantedCopy, place: number) =>
    copy.channel === null || !slots[copy.channel - 1 - place] ? null : copy.channel - 1 - place;
  const locked = members.map((copy, place) => (copy.isLocked ? slotOf(copy, place) : null));
  const earlier = members.map(slotOf);
  return {
    act,
    name: members.map((copy) => copy.source.name).join(' + '),
    ids: members.map((copy) => copy.source.id),
    detail: purpose,
    width: members.length === 2 ? 2 : 1,
    phantom: 'any',
    key: `${purpose} ${role}`,
    previous: -1,
    next: -1,
    locked: locked.find((slot) => slot !== null) ?? null,
    earlier: earlier.find((slot) => slot !== null) ?? null,
    mustPrepare: false,
    reach: [0],
    hotCost: [0],
    coldCost: [0],
    rank: purposes.indexOf(purpose) * 1000 + (source ? factsOfKind(source.kind).order : 999),
  };
}
