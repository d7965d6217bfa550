import { coldCost } from '../../core/plan/day/costs.ts';
import { type Item, type Layer, linkKeys, type Phantom, type Slot } from '../../core/plan/day/problem.ts';

/** An item in as few words as a test needs. `act` counts from 0; everything else has a plain default. */
export type TinyItem = {
  act: number;
  name: string;
  /** The same key in two acts is the same line; by default every item is its own. */
  key?: string;
  pair?: true;
  phantom?: Phantom;
  /** Name of a slot, as "A3". */
  lock?: string;
  earlier?: string;
  ready?: true;
  /** Names of boxes; all by default. */
  reach?: string[];
  /** Cost in the changeover by box, in box order; 10 for a line and 20 for a pair by default. */
  cost?: number[];
};

export type TinyBox = { name: string; slots: number; bankSize?: number };

/** What a layer is made of, as a case of a test says it. */
export type TinyDay = {
  boxes: TinyBox[];
  acts: number;
  items: TinyItem[];
  /** Lines that an act keeps free, and in which boxes. */
  spare?: Partial<Record<number, { count: number; boxes: string[] }>>;
};

export function tinyLayer(
  boxes: TinyBox[],
  acts: number,
  tinyItems: TinyItem[],
  spare: TinyDay['spare'] = {},
): Layer {
  const slots: Slot[] = [];
  const groups = boxes.map(({ name, slots: count, bankSize = 1 }, group) => {
    const first = slots.length;
    for (let index = 0; index < count; index++)
      slots.push({
        group,
        id: `${name}${index + 1}`,
        number: index + 1,
        name: `${name}${index + 1}`,
        bank: group * 1000 + Math.floor(index / bankSize),
        pairedWith: index % 2 === 0 && index + 1 < count ? first + index + 1 : -1,
      });
    return { name, slots: Array.from({ length: count }, (_, index) => first + index) };
  });
  const slotNamed = (name: string | undefined) => {
    const found = slots.findIndex((slot) => slot.name === name);
    return found < 0 ? null : found;
  };
  const groupsNamed = (names: string[]) =>
    names.map((name) => groups.findIndex((group) => group.name === name));
  const items = tinyItems
    .map((tiny, index): Item => {
      const width = tiny.pair ? 2 : 1;
      const hotCost = tiny.cost ?? groups.map(() => 10 * width);
      const locked = slotNamed(tiny.lock);
      const lockedGroup = locked === null ? undefined : slots[locked]?.group;
      return {
        act: tiny.act,
        name: tiny.name,
        ids: [tiny.name],
        detail: '',
        width,
        phantom: tiny.phantom ?? 'any',
        key: tiny.key ?? `own ${index}`,
        previous: -1,
        next: -1,
        locked,
        rank: index,
        earlier: slotNamed(tiny.earlier),
        mustPrepare: tiny.ready ?? false,
        reach:
          lockedGroup === undefined ? groupsNamed(tiny.reach ?? boxes.map((box) => box.name)) : [lockedGroup],
        hotCost,
        coldCost: hotCost.map(coldCost),
      };
    })
    .sort((a, b) => a.act - b.act);
  return {
    of: 'sockets',
    acts: Array.from({ length: acts }, (_, act) => ({
      actId: `act ${act}`,
      name: `Act ${act + 1}`,
      spareCount: spare[act]?.count ?? 0,
      spareGroups: groupsNamed(spare[act]?.boxes ?? []),
    })),
    groups,
    slots,
    items: linkKeys(items),
    canPrepare: true,
  };
}

/** The assignment that puts each item, in running order, into the slot of that name. */
export function assignmentOf(layer: Layer, names: string[]): number[] {
  return names.map((name) => layer.slots.findIndex((slot) => slot.name === name));
}
