import { type Chain, chainsOf } from './chains.ts';
import { colourChains } from './colour.ts';
import { evaluate } from './evaluate.ts';
import {
  buildGroupModel,
  type GroupChoice,
  type GroupModel,
  readGroupChoice,
  startFromEntries,
} from './group-model.ts';
import { patchByHabit } from './habits.ts';
import type { LinearAnswer, LinearSolver } from './linear-model.ts';
import { improvePatch } from './local-search.ts';
import {
  groupByBanks,
  groupByLocks,
  groupByPairs,
  narrowChains,
  narrowToGroup,
  sharesSwitches,
} from './narrow.ts';
import { brokenRuleCost } from './patch-board.ts';
import type { Assignment, Layer } from './problem.ts';

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

/** Steps of the searches; counted and not timed, so that the same day gives the same plan everywhere. */
const steps = { first: 20_000, second: 50_000, third: 90_000, inGroup: 300_000, whole: 300_000 } as const;

/** The joint model of single pairs of slots is exact, and only worth a try on a small day. */
const largestJointModel = 16_000;

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
  #best: { assignment: Assignment; cost: number };
  /** Nothing costs less than nothing, so a plan without any change is proven as it stands. */
  #bound = 0;

  constructor(layer: Layer, options: PlanLayerOptions) {
    this.#layer = layer;
    this.#options = options;
    this.#best = { assignment: layer.items.map(() => -1), cost: Number.POSITIVE_INFINITY };
  }

  run(): LayerPlan | null {
    this.#searchFromStart();
    if (this.#isDone()) return this.#plan();
    // Slots with locks are unlike the rest of their box; told apart from the start, they make the bound exact.
    const grouped = groupByLocks(this.#layer);
    if (this.#solveGroups(grouped, true) === 'infeasible') return null;
    if (!this.#isDone()) this.#search(steps.whole, 1);
    if (!this.#isDone() && sharesSwitches(this.#layer))
      if (this.#solveGroups(groupByBanks(this.#layer), false) === 'infeasible') return null;
    if (!this.#isDone() && this.#solveJoint() === 'infeasible') return null;
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

  #offer(found: { assignment: Assignment; cost: number } | null): void {
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
    this.#search(steps.first, 3);
    this.#search(steps.second, 4);
    this.#search(steps.third, 5);
    // With shared phantom switches the model takes longer and is harder to pack: search longer before it.
    if (sharesSwitches(this.#layer)) this.#search(steps.whole, 4);
  }

  #search(stepCount: number, warmth: number): void {
    this.#offer(
      improvePatch(this.#layer, this.#best.assignment, {
        ...this.#stoppable(),
        steps: stepCount,
        seed: stepCount,
        warmth,
        goodEnough: this.#bound,
      }),
    );
  }

  /** Solves the model of a grouping, and turns what it finds into patches. */
  #solveGroups(grouped: Layer, relaxFirst: boolean): LinearAnswer['status'] {
    const built = buildGroupModel(grouped);
    if (relaxFirst) {
      const relaxed = this.#options.solve(built.model, { whole: false });
      if (relaxed.status === 'infeasible') return 'infeasible';
      this.#raiseBound(relaxed.bound);
      if (this.#isDone()) return 'optimal';
    }
    const answer = this.#solveWhole(grouped, built, (values, cost) => {
      if (cost < this.#best.cost - 0.5)
        this.#offer(this.#pack(grouped, readGroupChoice(grouped, built, values), 3));
    });
    if (answer.status === 'infeasible') return 'infeasible';
    if (answer.values && !this.#isDone())
      this.#fillGroups(grouped, readGroupChoice(grouped, built, answer.values));
    return answer.status;
  }

  #solveWhole(
    grouped: Layer,
    built: GroupModel,
    onBetter?: (values: Float64Array, cost: number) => void,
  ): LinearAnswer {
    const isClean = this.#best.cost < brokenRuleCost;
    const start = isClean
      ? startFromEntries(
          grouped,
          built,
          this.#best.assignment,
          evaluate(grouped, this.#best.assignment).entries,
        )
      : undefined;
    const answer = this.#options.solve(built.model, {
      whole: true,
      onBound: (bound) => this.#raiseBound(bound),
      ...(onBetter ? { onBetter } : {}),
      ...(start ? { start } : {}),
    });
    if (answer.status !== 'infeasible' && answer.status !== 'failed') this.#raiseBound(answer.bound);
    return answer;
  }

  /** All groups at once by packing alone: quick, and good enough on the way. */
  #pack(
    grouped: Layer,
    choice: GroupChoice,
    attempts: number,
  ): { assignment: Assignment; cost: number } | null {
    return colourChains(grouped, chainsOf(grouped, choice), { attempts, seed: 1, goodEnough: this.#bound });
  }

  /** Group by group: packing, then a search among the slots of the group until it costs what the model says. */
  #fillGroups(grouped: Layer, choice: GroupChoice): void {
    const chains = chainsOf(grouped, choice);
    const assignment: Assignment = grouped.items.map(() => -1);
    grouped.groups.forEach((_, group) => {
      const narrowed = narrowToGroup(grouped, choice.group, group);
      if (narrowed.layer.items.length === 0) return;
      const inGroup = narrowChains(chains, group, narrowed.itemIndexes);
      const goodEnough = inGroup.reduce((sum, chain) => {
        const item = narrowed.layer.items[chain.items[0] ?? -1];
        return sum + ((chain.cold ? item?.coldCost[0] : item?.hotCost[0]) ?? 0);
      }, 0);
      const filled = this.#fillGroup(narrowed.layer, inGroup, goodEnough);
      filled.forEach((slot, place) => {
        const index = narrowed.itemIndexes[place] ?? -1;
        assignment[index] = slot < 0 ? -1 : (narrowed.slotIndexes[slot] ?? -1);
      });
    });
    // Costed on the layer itself, so that no narrowing can flatter it.
    this.#offer(improvePatch(this.#layer, assignment, { steps: 1, seed: 1, warmth: 1, goodEnough: 0 }));
  }

  #solveJoint(): LinearAnswer['status'] {
    const grouped = groupByPairs(this.#layer);
    const built = buildGroupModel(grouped);
    if (built.model.columnCost.length > largestJointModel) return 'stopped';
    const answer = this.#solveWhole(grouped, built);
    if (answer.values) this.#fillGroups(grouped, readGroupChoice(grouped, built, answer.values));
    return answer.status;
  }

  #fillGroup(layer: Layer, chains: Chain[], goodEnough: number): Assignment {
    const packed = colourChains(layer, chains, { attempts: 10, seed: 1, goodEnough });
    let best = packed ?? { assignment: layer.items.map(() => -1), cost: Number.POSITIVE_INFINITY };
    const keep = (found: { assignment: Assignment; cost: number } | null) => {
      if (found && found.cost < best.cost) best = found;
    };
    if (best.cost > goodEnough) keep(this.#fillBanks(layer));
    for (const warmth of [1, 2])
      if (best.cost > goodEnough)
        keep(
          improvePatch(layer, best.assignment, {
            ...this.#stoppable(),
            steps: steps.inGroup,
            seed: 1,
            warmth,
            goodEnough,
          }),
        );
    return best.assignment;
  }

  /** Where several slots share a phantom switch: first which bank, exactly, then which slot of it. */
  #fillBanks(layer: Layer): { assignment: Assignment; cost: number } | null {
    if (!sharesSwitches(layer)) return null;
    const grouped = groupByBanks(layer);
    const built = buildGroupModel(grouped);
    const answer = this.#options.solve(built.model, { whole: true, nodeLimit: 200 });
    if (!answer.values) return null;
    const choice = readGroupChoice(grouped, built, answer.values);
    const chains = chainsOf(grouped, choice);
    const packed = colourChains(grouped, chains, { attempts: 30, seed: 1, goodEnough: answer.cost + 0.5 });
    if (!packed) return null;
    return improvePatch(layer, packed.assignment, { steps: 1, seed: 1, warmth: 1, goodEnough: 0 });
  }
}
