import loadHighs, { type Highs, type Model } from 'highs';
import type { LinearAnswer, LinearModel, LinearSolver } from '../../core/plan/day/linear-model.ts';

/** The engine's figure for "a feasible point was found". */
const feasiblePoint = 2;

/** Loads the engine (a WebAssembly file beside the package) and gives a solver that blocks its thread. */
export async function loadLinearSolver(isStopped: () => boolean = () => false): Promise<LinearSolver> {
  const highs = await loadHighs();
  return (model, options) => solve(highs, model, options, isStopped);
}

function solve(
  highs: Highs,
  model: LinearModel,
  options: Parameters<LinearSolver>[1],
  isStopped: () => boolean,
): LinearAnswer {
  const { variableType, callbackType } = highs.constants;
  const columnCount = model.columnCost.length;
  const rowCount = model.rowLower.length;
  return highs.withModel(
    {
      numCols: columnCount,
      numRows: rowCount,
      sense: highs.constants.objectiveSense.minimize,
      colCost: model.columnCost,
      colLower: model.columnLower,
      colUpper: model.columnUpper,
      rowLower: model.rowLower,
      rowUpper: model.rowUpper,
      matrix: {
        format: 'csr',
        numRows: rowCount,
        numCols: columnCount,
        starts: model.rowStart,
        indices: model.columnIndex,
        values: model.value,
      },
      ...(options.whole ? { integrality: new Int32Array(columnCount).fill(variableType.integer) } : {}),
    },
    (native) => {
      native.options.set({
        output_flag: false,
        mip_rel_gap: 0,
        mip_abs_gap: options.absoluteGap ?? 0.5,
        ...(options.nodeLimit === undefined ? {} : { mip_max_nodes: options.nodeLimit }),
      });
      if (options.start) native.setSolution(options.start);
      native.run({
        [callbackType.mipImprovingSolution](event) {
          const { mip_solution: values, objective_function_value: cost, mip_dual_bound: bound } = event.data;
          if (values && cost !== undefined)
            options.onBetter?.(values, cost, bound ?? Number.NEGATIVE_INFINITY);
          return undefined;
        },
        [callbackType.mipInterrupt](event) {
          options.onBound?.(event.data.mip_dual_bound ?? Number.NEGATIVE_INFINITY);
          if (isStopped()) event.interrupt();
          return undefined;
        },
        [callbackType.simplexInterrupt](event) {
          if (isStopped()) event.interrupt();
          return undefined;
        },
      });
      return readAnswer(highs, native, options.whole);
    },
  );
}

function readAnswer(highs: Highs, native: Model, whole: boolean): LinearAnswer {
  const { optimal, infeasible, solutionLimit, interrupted } = highs.constants.modelStatus;
  const ended = native.getModelStatus();
  const values =
    native.info.get('primal_solution_status') === feasiblePoint ? native.getSolution().colValue : null;
  const cost = native.getObjectiveValue();
  const wholeBound = () => Number(native.info.get('mip_dual_bound'));
  const relaxedBound = ended === optimal ? cost : Number.NEGATIVE_INFINITY;
  const bound = whole ? wholeBound() : relaxedBound;
  if (ended === optimal) {
    const answer = { status: 'optimal', values, cost, bound } as const;
    return whole ? answer : { ...answer, reducedCosts: native.getSolution().colDual };
  }
  if (ended === infeasible)
    return {
      status: 'infeasible',
      values: null,
      cost: Number.POSITIVE_INFINITY,
      bound: Number.POSITIVE_INFINITY,
    };
  return {
    status: ended === solutionLimit || ended === interrupted ? 'stopped' : 'failed',
    values,
    cost,
    bound,
  };
}
