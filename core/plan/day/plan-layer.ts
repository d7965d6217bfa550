import { type Chain, chainsOf } from './chains.ts';
import { colourChains } from './colour.ts';
import { buildGroupModel, type GroupChoice, readGroupChoice } from './group-model.ts';
import { patchByHabit } from './habits.ts';
import type { LinearAnswer, LinearSolver } from './linear-model.ts';
import { improvePatch } from './local-search.ts';
import {
  type Apart,
  canTellUse,
  groupApart,
  groupsBySwitch,
  narrowChains,
  narrowToGroups,
} from './narrow.ts';
import { brokenRuleCost } from './patch-board.ts';
import type { Assignment, Layer } from './problem.ts';
import { solveByReducedCost } from './reduced-cost.ts';

/** A patch of one layer and what is proven about it. */
export type LayerPlan = {
  assignment: Assignment;
  cost: number;
  /** No patch that keeps the rules costs less than this. */
  bound: number;
  /** True where the cost is the bound. */
  isProven: boolean;
  /** False while some rule is broken or some item has no slot. */
  isClean: boolean;
};

export type PlanLayerOptions = {
  solve: LinearSolver;
  /** Called for each better patch or bound on the way. */
  onProgress?: (plan: LayerPlan) => void;
  isStopped?: () => boolean;
  /** Patch to start from instead of a habit's, for example the plan before a change. */
  start?: Assignment;
  /** Proving stops at this relative gap. 0: proven or out of ideas. */
  relativeGap?: number;
};

type Patch = { assignment: Assignment; cost: number };

/** Steps of the searches for each item that can move; not timed, so that the same day gives the same plan everywhere. */
const steps = { inBox: 800, whole: 600 } as const;

/** The searches before any model: each gives a patch to show, and the next begins with it. */
const opening = [
  { stepsEach: 20, warmth: 2 },
  { stepsEach: 50, warmth: 1.5 },
  { stepsEach: 90, warmth: 2 },
  { stepsEach: 180, warmth: 2 },
] as const;

/** Columns of the largest model that is worth a try: told apart far enough it is exact, and too slow on a large day. */
const largestModel = 40_000;

/**
 * Plans one layer: a search gives a good patch at once, the group model a bound and where everything should go,
 * packing and searching within groups a patch that meets the bound. What is still open after that is tried with
 * narrower groups. Returns null where the solver proves that no patch keeps the rules.
 */
export function planLayer(layer: Layer, options: PlanLayerOptions): LayerPlan | null {
  return new LayerPlanner(layer, options).run();
}

class LayerPlanner {
  readonly #layer: Layer;
  readonly #options: PlanLayerOptions;
  #best: Patch;
  /** Nothing costs less than nothing, so a plan without any change is proven as it stands. */
  #bound = 0;
  /** Boxes that the last filling could not fill at the cost that the model gave them. */
  #unfilled: number[] = [];
  /** Searches in boxes get longer each time that some stay unfilled. */
  #patience = 1;
  /** How far the slots of each box are told apart. Locks are, from the start: they make the bound exact. */
  readonly #apart: Apart[];

  constructor(layer: Layer, options: PlanLayerOptions) {
    this.#layer = layer;
    this.#apart = layer.groups.map(() => 'locks');
    this.#options = options;
    this.#best = { assignment: layer.items.map(() => -1), cost: Number.POSITIVE_INFINITY };
  }

  run(): LayerPlan | null {
    this.#searchFromStart();
    if (this.#isDone()) return this.#plan();
    while (!this.#isDone()) {
      if (this.#solveGroups() === 'infeasible') return null;
      if (!this.#tellApart()) break;
    }
    if (!this.#isDone()) this.#search(steps.whole, 1);
    return this.#plan();
  }

  #plan(): LayerPlan {
    const isClean = this.#best.cost < brokenRuleCost;
    return {
      ...this.#best,
      bound: this.#bound,
      isProven: isClean && this.#best.cost <= this.#bound,
      isClean,
    };
  }

  #isDone(): boolean {
    const { relativeGap = 0, isStopped } = this.#options;
    return isStopped?.() || this.#best.cost <= this.#bound * (1 + relativeGap);
  }

  #stoppable(): { isStopped?: () => boolean } {
    const { isStopped } = this.#options;
    return isStopped ? { isStopped } : {};
  }

  #offer(found: Patch | null): void {
    if (!found || found.cost >= this.#best.cost) return;
    this.#best = found;
    this.#options.onProgress?.(this.#plan());
  }

  /** Costs are whole numbers, so a bound of 99.2 proves 100. */
  #raiseBound(bound: number): void {
    const whole = Math.ceil(bound - 1e-6);
    if (whole <= this.#bound) return;
    this.#bound = whole;
    this.#options.onProgress?.(this.#plan());
  }

  #searchFromStart(): void {
    const start = this.#options.start ?? patchByHabit(this.#layer, 'keep and fill');
    this.#offer(improvePatch(this.#layer, start, { steps: 1, seed: 1, warmth: 1, goodEnough: 0 }));
    for (const { stepsEach, warmth } of opening) this.#search(stepsEach, warmth);
  }

  #search(stepsEach: number, warmth: number): void {
    this.#offer(
      improvePatch(this.#layer, this.#best.assignment, {
        ...this.#stoppable(),
        steps: stepsEach * movable(this.#layer),
        seed: stepsEach,
        warmth,
        goodEnough: this.#bound,
      }),
    );
  }

  /** Solves the model of the groups as they are told apart now, and turns what it finds into patches. */
  #solveGroups(): LinearAnswer['status'] {
    const grouped = groupApart(this.#layer, (box) => this.#apart[box] ?? 'locks');
    const built = buildGroupModel(grouped);
    if (built.model.columnCost.length > largestModel) return 'stopped';
    const answer = solveByReducedCost(built.model, this.#options.solve, {
      known: this.#best.cost < brokenRuleCost ? this.#best.cost : Number.POSITIVE_INFINITY,
      onBound: (bound) => this.#raiseBound(bound),
      onBetter: (values, cost) => {
        if (cost < this.#best.cost - 0.5)
          this.#offer(this.#pack(grouped, readGroupChoice(grouped, built, values), 3));
      },
      isDone: () => this.#isDone(),
    });
    if (answer.status === 'infeasible') return 'infeasible';
    this.#raiseBound(answer.bound);
    if (answer.values && !this.#isDone())
      this.#fillGroups(grouped, readGroupChoice(grouped, built, answer.values));
    return answer.status;
  }

  /** All groups at once by packing alone: quick, and good enough on the way. */
  #pack(grouped: Layer, choice: GroupChoice, attempts: number): Patch | null {
    return colourChains(grouped, chainsOf(grouped, choice), { attempts, seed: 1, goodEnough: this.#bound });
  }

  /** Box by box: packing, then a search among the slots of the box until it costs what the model says. */
  #fillGroups(grouped: Layer, choice: GroupChoice): void {
    const chains = chainsOf(grouped, choice);
    const assignment: Assignment = grouped.items.map(() => -1);
    const boxOf = (group: number) => this.#layer.slots[grouped.groups[group]?.slots[0] ?? -1]?.group ?? -1;
    const chosenBox = choice.group.map(boxOf);
    this.#unfilled = [];
    for (const boxes of groupsBySwitch(this.#layer)) {
      const parts = [...grouped.groups.keys()].filter((group) => boxes.includes(boxOf(group)));
      const inBoxes = narrowToGroups(this.#layer, chosenBox, boxes);
      if (inBoxes.layer.items.length === 0) continue;
      const inParts = narrowToGroups(grouped, choice.group, parts);
      const inside = narrowChains(chains, parts, inParts.itemIndexes);
      const wanted = costOfChains(inParts.layer, inside);
      const filled = this.#fillBoxes(inBoxes.layer, inParts.layer, inside, wanted);
      if (filled.cost > wanted) this.#unfilled.push(...boxes);
      filled.assignment.forEach((slot, place) => {
        const index = inBoxes.itemIndexes[place] ?? -1;
        assignment[index] = slot < 0 ? -1 : (inBoxes.slotIndexes[slot] ?? -1);
      });
    }
    // Costed on the layer itself, so that no narrowing can flatter it.
    this.#offer(improvePatch(this.#layer, assignment, { steps: 1, seed: 1, warmth: 1, goodEnough: 0 }));
  }

  /**
   * Tells slots further apart in the boxes that could not be filled as the model said: what it only counts there may
   * need a phantom switch to be on and off at once, or a line to be cut. False where nothing is left to tell apart.
   */
  #tellApart(): boolean {
    this.#patience *= 3;
    const further = this.#unfilled.filter((box) => this.#apart[box] !== 'pairs');
    for (const box of further)
      this.#apart[box] = this.#apart[box] === 'locks' && canTellUse(this.#layer) ? 'use' : 'pairs';
    return further.length > 0;
  }

  /** `parts`: the same items and slots, with the parts of the boxes that the chains are meant for as its groups. */
  #fillBoxes(layer: Layer, parts: Layer, chains: Chain[], goodEnough: number): Patch {
    const packed = colourChains(parts, chains, { attempts: 10, seed: 1, goodEnough });
    let best: Patch = packed ?? { assignment: layer.items.map(() => -1), cost: Number.POSITIVE_INFINITY };
    for (const warmth of [1, 2]) {
      if (best.cost <= goodEnough) break;
      const found = improvePatch(layer, best.assignment, {
        ...this.#stoppable(),
        steps: this.#patience * steps.inBox * movable(layer),
        seed: 1,
        warmth,
        goodEnough,
      });
      if (found.cost < best.cost) best = found;
    }
    return best;
  }
}

function movable(layer: Layer): number {
  return layer.items.filter((item) => item.locked === null).length;
}

/** What chains cost as they stand: the first item of each enters, the others stay. */
function costOfChains(layer: Layer, chains: readonly Chain[]): number {
  return chains.reduce((sum, chain) => {
    const item = layer.items[chain.items[0] ?? -1];
    return sum + ((chain.cold ? item?.coldCost : item?.hotCost)?.[chain.group] ?? 0);
  }, 0);
}
