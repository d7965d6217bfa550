import type { Item, Layer } from '../../core/plan/day/problem.ts';

/**
 * A day said another way than the planner says it: which line is on which socket, one variable each, straight from
 * the rules, as text for a linear engine. Slow, and so only for small days; it shares nothing with the planner.
 * Variables: x on the socket, and of these h hot, c cold, k kept. Phantom is left out.
 */
export function socketModel(layer: Layer): string {
  return new SocketModel(layer).text();
}

class SocketModel {
  readonly #layer: Layer;
  readonly #slotsOf: number[][];
  readonly #objective: string[] = [];
  readonly #rows: string[] = [];
  readonly #binaries: string[] = [];

  constructor(layer: Layer) {
    this.#layer = layer;
    this.#slotsOf = layer.items.map((item) =>
      layer.slots.flatMap((slot, index) => {
        const fits = item.reach.includes(slot.group) && (item.width === 1 || slot.pairedWith >= 0);
        return fits && (item.locked === null || item.locked === index) ? [index] : [];
      }),
    );
  }

  text(): string {
    this.#layer.items.forEach((item, index) => {
      const slots = this.#slotsOf[index] ?? [];
      this.#rows.push(`${slots.map((slot) => `x_${index}_${slot}`).join(' + ')} = 1`);
      for (const slot of slots) this.#addEntry(item, index, slot);
      for (const slot of slots) this.#addKept(item, index, slot);
    });
    this.#layer.acts.forEach((_, act) => {
      this.#addAct(act);
    });
    return [
      'Minimize',
      this.#objective.join('\n + '),
      'Subject To',
      ...this.#rows,
      'Binaries',
      ...this.#binaries,
      'End\n',
    ].join('\n');
  }

  #taken(item: number, slot: number): number[] {
    return this.#layer.items[item]?.width === 2 ? [slot, this.#layer.slots[slot]?.pairedWith ?? -1] : [slot];
  }

  /** The variables of everything in an act that touches any of the slots. */
  #touching(act: number, slots: number[]): string[] {
    return this.#layer.items.flatMap((item, index) =>
      item.act !== act
        ? []
        : (this.#slotsOf[index] ?? [])
            .filter((slot) => this.#taken(index, slot).some((it) => slots.includes(it)))
            .map((slot) => `x_${index}_${slot}`),
    );
  }

  #addEntry(item: Item, index: number, slot: number): void {
    const at = `${index}_${slot}`;
    const group = this.#layer.slots[slot]?.group ?? 0;
    this.#binaries.push(`x_${at} h_${at} c_${at} k_${at}`);
    this.#rows.push(`x_${at} - h_${at} - c_${at} - k_${at} = 0`);
    this.#objective.push(`${item.hotCost[group]} h_${at}`, `${item.coldCost[group]} c_${at}`);
    if (item.act === 0 || item.mustPrepare) this.#rows.push(`h_${at} = 0`);
    for (const busy of this.#touching(item.act - 1, this.#taken(index, slot)))
      this.#rows.push(`c_${at} + ${busy} <= 1`);
  }

  #addKept(item: Item, index: number, slot: number): void {
    const at = `${index}_${slot}`;
    const before = this.#layer.items[item.previous];
    if (!before || !(this.#slotsOf[item.previous] ?? []).includes(slot)) {
      this.#rows.push(`k_${at} = 0`);
      return;
    }
    this.#rows.push(`k_${at} - x_${item.previous}_${slot} <= 0`);
    for (let act = before.act + 1; act < item.act; act++)
      for (const busy of this.#touching(act, this.#taken(index, slot)))
        this.#rows.push(`k_${at} + ${busy} <= 1`);
  }

  #addAct(act: number): void {
    for (const slot of this.#layer.slots.keys()) {
      const players = this.#touching(act, [slot]);
      if (players.length > 1) this.#rows.push(`${players.join(' + ')} <= 1`);
    }
    const { spareCount = 0, spareGroups = [] } = this.#layer.acts[act] ?? {};
    if (spareCount === 0) return;
    const isNear = (slot: number) => spareGroups.includes(this.#layer.slots[slot]?.group ?? -1);
    const near = this.#layer.items.flatMap((item, index) =>
      item.act !== act
        ? []
        : (this.#slotsOf[index] ?? []).filter(isNear).map((slot) => `${item.width} x_${index}_${slot}`),
    );
    const room = [...this.#layer.slots.keys()].filter(isNear).length - spareCount;
    if (near.length > 0) this.#rows.push(`${near.join(' + ')} <= ${room}`);
  }
}
