import { type Demand, openGroups } from './demands.ts';
import { type Item, type Layer, linkKeys, type Slot, slotsTaken } from './problem.ts';

/** A layer in which only some demands of some acts hold: what is not kept asks for nothing. */
export function withDemands(layer: Layer, acts: readonly number[], kept: readonly Demand[]): Layer {
  const ofItem = Map.groupBy(
    kept.filter((it) => it.item >= 0),
    (it) => it.item,
  );
  const open = openGroups(layer);
  const items = layer.items.flatMap((item, index): Item[] => {
    const kinds = new Set((ofItem.get(index) ?? []).map((it) => it.kind));
    if (!acts.includes(item.act) || !kinds.has('place')) return [];
    const part: Item = {
      ...item,
      act: acts.indexOf(item.act),
      phantom: kinds.has('phantom') ? item.phantom : 'any',
      mustPrepare: kinds.has('ready early'),
    };
    if (item.locked === null) part.reach = kinds.has('reach') ? item.reach : open;
    else if (!kinds.has('lock')) Object.assign(part, { locked: null, reach: open });
    return item.width === 1 || kinds.has('side by side') ? [part] : sidesOf(layer, part);
  });
  const part: Layer = {
    ...layer,
    acts: acts.map((act) => ({
      ...(layer.acts[act] ?? { actId: '', name: '', spareGroups: [] }),
      spareCount: kept.some((it) => it.kind === 'spare' && it.act === act)
        ? (layer.acts[act]?.spareCount ?? 0)
        : 0,
    })),
    items: linkKeys(items),
  };
  const closed = new Set(kept.filter((it) => it.kind === 'held back').map((it) => it.group));
  const released = (layer.heldBack ?? []).filter(({ slot }) => !closed.has(slot.group));
  return released.length === 0
    ? part
    : withSlots(
        part,
        released.map(({ slot }) => slot),
      );
}

/** A pair as two lines that need not lie side by side. */
function sidesOf(layer: Layer, pair: Item): Item[] {
  const taken = pair.locked === null ? [] : slotsTaken(layer, pair, pair.locked);
  return [0, 1].map((side) => ({
    ...pair,
    width: 1,
    key: `${pair.key} side ${side}`,
    locked: pair.locked === null ? null : (taken[side] ?? pair.locked),
  }));
}

/** The layer with further slots in its groups. */
function withSlots(layer: Layer, more: readonly Slot[]): Layer {
  const slots = [...layer.slots, ...more].map((slot) => ({ ...slot }));
  const indexOf = new Map(slots.map((slot, index) => [`${slot.group} ${slot.number}`, index]));
  for (const slot of slots)
    if (slot.number % 2 === 1 && slot.pairedWith < 0)
      slot.pairedWith = indexOf.get(`${slot.group} ${slot.number + 1}`) ?? -1;
  const groups = layer.groups.map((group, at) => ({
    ...group,
    slots: slots.flatMap((slot, index) => (slot.group === at ? [index] : [])),
  }));
  return { ...layer, slots, groups };
}
