import type { Act, Decision, Source } from '../../show/act.ts';
import { type ActSheet, actSheet, actsOfDay } from '../../show/act-sheet.ts';
import { placeOfSource } from '../../show/place-of-source.ts';
import type { Box, Id } from '../../show/rig.ts';
import type { Show } from '../../show/show.ts';
import { factsOfKind } from '../../show/source-kinds.ts';
import { distanceM, placeOf, type StagePlace } from '../../show/stage-place.ts';
import { needsSocket } from '../plan-sockets.ts';
import { coldCost, hotCost } from './costs.ts';
import { type Item, type Layer, type LayerAct, linkKeys, type Phantom, type Slot } from './problem.ts';
import { lockedSockets, socketSlots } from './socket-slots.ts';

/** Something in the show's rows that the planner had to read in its own way; one sentence each. */
export type BuildNote = string;

/** An item before its costs: what one act asks for one slot or pair of slots. */
type Wanted = { sources: Source[]; locked: number | null; earlier: number | null };

/** Sources to sockets for a whole day. Notes say where rows contradict each other and how they were read. */
export function buildLineLayer(show: Show, dayId: Id): { layer: Layer; notes: BuildNote[] } {
  const sheets = actsOfDay(show, dayId).flatMap((act) => actSheet(show, act.id) ?? []);
  const boxes = sheets[0]?.boxes ?? [];
  const { groups, slots, boxOfGroup, heldBack } = socketSlots(
    boxes,
    sheets[0]?.sockets ?? [],
    lockedSockets(sheets),
  );
  const slotOfSocket = new Map(slots.map((slot, index) => [slot.id, index]));
  const notes: BuildNote[] = [];
  const keyWidths = new Map<string, number>();
  const items = sheets.flatMap((sheet, act) =>
    wantedItems(sheet, slots, slotOfSocket, notes).map((wanted) =>
      itemOf(sheet, act, wanted, { boxOfGroup, openGroups: boxes.length, slots }, keyWidths, notes),
    ),
  );
  const acts = sheets.map((sheet): LayerAct => spareOf(sheet, boxes));
  return {
    layer: { of: 'sockets', acts, groups, slots, items: linkKeys(items), canPrepare: true, heldBack },
    notes,
  };
}

/** Groups in which an item without a lock may go come first, one for each box. */
type Places = { boxOfGroup: Box[]; openGroups: number; slots: Slot[] };

/** The items of one act in its order; pairs are one item unless the engineer locked them apart. */
function wantedItems(
  sheet: ActSheet,
  slots: Slot[],
  slotOfSocket: ReadonlyMap<Id | null, number>,
  notes: BuildNote[],
): Wanted[] {
  const sources = sheet.sources.filter(needsSocket);
  const byId = new Map(sources.map((source) => [source.id, source]));
  const decided = socketDecisions(sheet, slotOfSocket, notes);
  const done = new Set<Id>();
  return sources.flatMap((source): Wanted[] => {
    if (done.has(source.id)) return [];
    const partner = source.pairSourceId === null ? undefined : byId.get(source.pairSourceId);
    const single = (one: Source): Wanted => ({ sources: [one], ...decided(one) });
    if (!partner || partner.pairSourceId !== source.id || done.has(partner.id)) {
      done.add(source.id);
      return [single(source)];
    }
    done.add(source.id).add(partner.id);
    const left = decided(source);
    const right = decided(partner);
    const locked = pairSlot(slots, left.locked, right.locked);
    if (locked === 'apart') {
      notes.push(
        `${sheet.act.name}: ${source.name} and ${partner.name} are a pair, but their locks put them on no pair of sockets. They are planned as two lines.`,
      );
      return [single(source), single(partner)];
    }
    const earlier = pairSlot(slots, left.earlier, right.earlier);
    return [{ sources: [source, partner], locked, earlier: earlier === 'apart' ? null : earlier }];
  });
}

/** What is decided about the socket of a source: by the engineer's lock, and by the plan before. */
function socketDecisions(sheet: ActSheet, slotOfSocket: ReadonlyMap<Id | null, number>, notes: BuildNote[]) {
  const bySource = new Map<Id, Decision & { about: 'socket' }>();
  for (const decision of sheet.decisions)
    if (decision.about === 'socket') bySource.set(decision.sourceId, decision);
  return (source: Source): { locked: number | null; earlier: number | null } => {
    const decision = bySource.get(source.id);
    if (!decision) return { locked: null, earlier: null };
    const slot = slotOfSocket.get(decision.socketId) ?? null;
    if (slot === null && decision.locked)
      notes.push(
        `${sheet.act.name}: ${source.name} is locked to a socket that this day's rig does not have. The lock is left out.`,
      );
    return { locked: decision.locked || isHistory(sheet.act) ? slot : null, earlier: slot };
  };
}

/** What has been played or is being played is history: it stays where it was. */
function isHistory(act: Act): boolean {
  return act.state === 'done' || act.state === 'on stage';
}

/** The left slot of a pair from what is decided for its two sides; null: nothing decided. */
function pairSlot(slots: Slot[], left: number | null, right: number | null): number | null | 'apart' {
  if (left === null && right === null) return null;
  const start = left ?? slots.findIndex((slot) => slot.pairedWith === right);
  const second = slots[start]?.pairedWith ?? -1;
  return second < 0 || (right !== null && second !== right) ? 'apart' : start;
}

function itemOf(
  sheet: ActSheet,
  act: number,
  wanted: Wanted,
  places: Places,
  keyWidths: Map<string, number>,
  notes: BuildNote[],
): Item {
  const source = wanted.sources[0] as Source;
  const width = wanted.sources.length === 2 ? 2 : 1;
  const place = placeOfSource(sheet, source);
  const distances = places.boxOfGroup.map((box) => metresTo(box, place));
  const inReach = places.boxOfGroup
    .slice(0, places.openGroups)
    .flatMap((box, group) => ((distances[group] ?? 0) <= (box.reachM ?? Infinity) ? [group] : []));
  const lockedGroup = wanted.locked === null ? undefined : places.slots[wanted.locked]?.group;
  const hot = distances.map((distance) => hotCost(width, distance));
  return {
    act,
    name: wanted.sources.map((it) => it.name).join(' + '),
    ids: wanted.sources.map((it) => it.id),
    detail: '',
    width,
    phantom: phantomOf(sheet, wanted.sources),
    key: keyOf(sheet.act, source, width, keyWidths, notes),
    previous: -1,
    next: -1,
    locked: wanted.locked,
    earlier: wanted.earlier,
    rank: source.order,
    mustPrepare: sheet.act.prePatch && source.riser !== '' && !isHistory(sheet.act),
    // A lock goes before the length of the house's cables: the engineer may have a longer one.
    reach: lockedGroup === undefined ? inReach : [lockedGroup],
    ...(lockedGroup === undefined ? {} : { reachUnlocked: inReach }),
    ...(factsOfKind(source.kind).group === 'vocals' ? { vital: true as const } : {}),
    hotCost: hot,
    coldCost: hot.map(coldCost),
  };
}

/** Metres from a place to a box; 0 where one of them is not known, so that an unknown place forbids nothing. */
function metresTo(box: Box, place: StagePlace | null): number {
  const at = placeOf(box);
  return place && at ? distanceM(place, at) : 0;
}

function phantomOf(sheet: ActSheet, sources: Source[]): Phantom {
  const needs = sources.map((source): Phantom => {
    const decision = sheet.decisions.find((it) => it.about === 'phantom' && it.sourceId === source.id);
    if (decision?.about === 'phantom') return decision.on ? 'on' : 'off';
    if (source.phantom === 'needed') return 'on';
    return source.phantom === 'harmful' ? 'off' : 'any';
  });
  return needs.find((need) => need !== 'any') ?? 'any';
}

/** Lines with the name of one shared line are one line; it must be as wide in every act and once in each. */
function keyOf(
  act: Act,
  source: Source,
  width: number,
  keyWidths: Map<string, number>,
  notes: BuildNote[],
): string {
  const own = `own ${source.id}`;
  const name = source.sharedLine.trim().toLowerCase();
  if (name === '') return own;
  const key = `shared ${name}`;
  if ((keyWidths.get(key) ?? width) !== width) {
    notes.push(
      `${act.name}: "${source.sharedLine}" is one line in one act and a pair in another, so ${source.name} is planned as this act's own.`,
    );
    return own;
  }
  keyWidths.set(key, width);
  const inAct = `${key} in ${act.id}`;
  if (keyWidths.has(inAct)) {
    notes.push(
      `${act.name}: two sources use the shared line "${source.sharedLine}"; ${source.name} is planned as this act's own.`,
    );
    return own;
  }
  keyWidths.set(inAct, width);
  return key;
}

/** Which boxes the spare of this act's lead vocal may come from, and how many are still to be kept free. */
function spareOf(sheet: ActSheet, boxes: Box[]): LayerAct {
  const base = { actId: sheet.act.id, name: sheet.act.name };
  const vocal =
    sheet.sources.find((source) => source.kind === 'lead vocal' && needsSocket(source)) ??
    sheet.sources.find((source) => factsOfKind(source.kind).group === 'vocals' && needsSocket(source));
  if (!vocal) return { ...base, spareCount: 0, spareGroups: [] };
  const place = placeOfSource(sheet, vocal);
  const near = boxes.flatMap((box, group) =>
    metresTo(box, place) <= (box.reachM ?? Infinity) ? [group] : [],
  );
  const nearBoxes = new Set(near.map((group) => boxes[group]?.id));
  // A socket that the engineer holds back as a spare is one already.
  const heldBack = sheet.sockets.filter(
    (socket) => nearBoxes.has(socket.boxId) && /spare/i.test(socket.reservedFor ?? ''),
  ).length;
  return { ...base, spareCount: Math.max(0, sheet.rig.spareVocalLines - heldBack), spareGroups: near };
}
