import type { Id } from '../../show/rig.ts';

/**
 * A day as plain data for the planner. The four layers of a patch have one shape: lines go to sockets, copies to
 * channels, mixes to buses and mixes to outputs. Each time there are *items* of acts in running order and *slots*
 * in groups (a stage box is a group of sockets), and the changes between consecutive acts are to be few.
 */
export type Layer = {
  of: 'sockets' | 'channels' | 'buses' | 'outputs';
  acts: LayerAct[];
  groups: SlotGroup[];
  /** In group order, by number within a group; `Item.slot` figures are indexes into this list. */
  slots: Slot[];
  /** In running order, then in the order of the act. */
  items: Item[];
  /** False where nothing can be prepared while another act plays, as on the desk: every change is a change. */
  canPrepare: boolean;
  /** Slots that are closed to every item, as the engineer holds them back; `group` is that of their box. */
  heldBack?: { slot: Slot; reservedFor: string }[];
};

export type LayerAct = {
  actId: Id;
  name: string;
  /** Slots of `spareGroups` that this act must leave free, and for what. */
  spareCount: number;
  spareGroups: number[];
};

/**
 * Slots that are alike for the planner, in ascending order. A group `forPairs` lies over two groups of one slot
 * each: pairs go there, singles into the slots below it.
 */
export type SlotGroup = {
  name: string;
  slots: number[];
  forPairs?: true;
  /** Reserved slots that only what is locked to them may take. */
  forLocks?: true;
};

export type Slot = {
  group: number;
  /** The row it stands for: a socket, a bus or an output; a channel has no row. */
  id: Id | null;
  number: number;
  /** As the trade calls it: "A5", "channel 12". */
  name: string;
  /** Slots with one bank share one phantom switch. */
  bank: number;
  /** Index of the second slot of a pair that starts here, or -1. */
  pairedWith: number;
};

export type Phantom = 'on' | 'off' | 'any';

/** One item of one act: a line, a stereo pair of lines, a copy, a mix. */
export type Item = {
  act: number;
  name: string;
  /** The sources or mixes it stands for, left first; two where `width` is 2 and they are rows of their own. */
  ids: Id[];
  /** What else tells the item, such as the purpose of a copy; empty where nothing does. */
  detail: string;
  width: 1 | 2;
  phantom: Phantom;
  /** The same key in two acts is the same physical line (or the same role): it can stay where it is. */
  key: string;
  /** The nearest earlier and later item of the same key, or -1. */
  previous: number;
  next: number;
  /** Slot that the engineer locked it to, or null. */
  locked: number | null;
  /** Where it comes in the usual order of its list; for laying slots out, never for cost. */
  rank: number;
  /** Slot it had in the plan before this one, or null. */
  earlier: number | null;
  /** Must be in before the changeover begins. */
  mustPrepare: boolean;
  /** Groups it can go to, in group order. */
  reach: number[];
  /** Groups it could go to if its lock were open; only where it has a lock. */
  reachUnlocked?: number[];
  /** Left out last where a rig is too small for all: a voice. */
  vital?: true;
  /** What entering costs by group: in the changeover, and prepared in peace. Whole numbers. */
  hotCost: number[];
  coldCost: number[];
};

/** The slot of each item (the left one of a pair), by item index; -1: none. */
export type Assignment = number[];

/** How an item comes into its slot. `kept` is no work, `cold` is done in peace, `hot` in the changeover. */
export type Entry = 'kept' | 'cold' | 'hot';

/** Links items of the same key, in running order. Call it once the list of items is complete. */
export function linkKeys(items: Item[]): Item[] {
  const lastOfKey = new Map<string, number>();
  items.forEach((item, index) => {
    const previous = lastOfKey.get(item.key) ?? -1;
    item.previous = previous;
    item.next = -1;
    const earlier = items[previous];
    if (earlier) earlier.next = index;
    lastOfKey.set(item.key, index);
  });
  return items;
}

/** The slots that an item takes when it starts at `slot`: one, or the pair. Empty where no pair starts there. */
export function slotsTaken(layer: Layer, item: Item, slot: number): number[] {
  if (item.width === 1) return [slot];
  const second = layer.slots[slot]?.pairedWith ?? -1;
  return second < 0 ? [] : [slot, second];
}

/** The items of each act, as indexes. */
export function itemsByAct(layer: Layer): number[][] {
  const byAct: number[][] = layer.acts.map(() => []);
  layer.items.forEach((item, index) => {
    byAct[item.act]?.push(index);
  });
  return byAct;
}
