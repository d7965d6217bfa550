import type { Item, Layer } from './problem.ts';

/** Something that an act, a line or the rig asks of the patch, and that could be given up. */
export type Demand = {
  kind: 'place' | 'reach' | 'side by side' | 'lock' | 'phantom' | 'ready early' | 'spare' | 'held back';
  /** Item of the layer, or -1 where it is none of one item's. */
  item: number;
  /** Act, or -1 where it holds for the whole day. */
  act: number;
  /** Group of slots, or -1 where it is none of one group's. */
  group: number;
  /** "kick out is locked to A3". */
  what: string;
};

/** Everything that some acts of a day ask for. */
export function demandsOf(layer: Layer, acts: readonly number[]): Demand[] {
  const items = layer.items.flatMap((item, index) =>
    acts.includes(item.act) ? demandsOfItem(layer, item, index) : [],
  );
  const isPlace = (demand: Demand) => demand.kind === 'place';
  return [
    ...acts.flatMap((act) => spareOf(layer, act)),
    ...heldBackOf(layer),
    ...items.filter((it) => !isPlace(it)),
    ...items.filter(isPlace),
  ];
}

function demandsOfItem(layer: Layer, item: Item, index: number): Demand[] {
  const demand = (kind: Demand['kind'], what: string): Demand => ({
    kind,
    item: index,
    act: item.act,
    group: -1,
    what,
  });
  const found = [
    demand('place', item.width === 2 ? `${item.name} need two places` : `${item.name} needs a place`),
  ];
  if (item.locked !== null)
    found.push(demand('lock', `${item.name} is locked to ${layer.slots[item.locked]?.name ?? '?'}`));
  else if (item.reach.length < openGroups(layer).length) found.push(demand('reach', reachText(layer, item)));
  if (item.width === 2) found.push(demand('side by side', `${item.name} want them side by side`));
  if (item.phantom === 'off') found.push(demand('phantom', `48 V would harm ${item.name}`));
  if (item.phantom === 'on') found.push(demand('phantom', `${item.name} needs 48 V`));
  if (item.mustPrepare)
    found.push(demand('ready early', `${item.name} is to be patched before the changeover`));
  return found;
}

function reachText(layer: Layer, item: Item): string {
  if (item.reach.length === 0) return `${item.name} has no box in reach`;
  return `${item.name} reaches only ${groupNames(layer, item.reach)}`;
}

function spareOf(layer: Layer, act: number): Demand[] {
  const wanted = layer.acts[act];
  if (!wanted || wanted.spareCount === 0) return [];
  const spare = wanted.spareCount === 1 ? '1 spare line' : `${wanted.spareCount} spare lines`;
  const what = `${spare} near the lead vocal to stay free (${groupNames(layer, wanted.spareGroups)})`;
  return [{ kind: 'spare', item: -1, act, group: -1, what }];
}

/** Slots that the engineer holds back, box by box. */
function heldBackOf(layer: Layer): Demand[] {
  const byGroup = Map.groupBy(layer.heldBack ?? [], (it) => it.slot.group);
  return [...byGroup].map(([group, held]): Demand => {
    const names = held.map(({ slot }) => slot.name).join(', ');
    const why = [...new Set(held.map((it) => it.reservedFor))].join(', ');
    return { kind: 'held back', item: -1, act: -1, group, what: `${names} kept for ${why}` };
  });
}

/** Groups that are open to every item. */
export function openGroups(layer: Layer): number[] {
  return layer.groups.flatMap((group, index) => (group.forLocks ? [] : [index]));
}

export function groupNames(layer: Layer, groups: readonly number[]): string {
  return groups.map((group) => layer.groups[group]?.name ?? '').join(', ');
}
