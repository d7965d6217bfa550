/**
 * A linear model with whole-number columns as flat arrays, the form that a solver takes as it is: minimise the
 * cost of the columns within their bounds, so that each row's sum lies between its bounds.
 */
export type LinearModel = {
  columnCost: Float64Array;
  columnLower: Float64Array;
  columnUpper: Float64Array;
  /** Row r holds the entries rowStart[r] to rowStart[r + 1]. */
  rowStart: Int32Array;
  columnIndex: Int32Array;
  value: Float64Array;
  rowLower: Float64Array;
  rowUpper: Float64Array;
};

/** What a solver says of a model. `bound` is a proven lower bound of the cost, -Infinity where there is none. */
export type LinearAnswer = {
  status: 'optimal' | 'infeasible' | 'stopped' | 'failed';
  /** Column values; null where no solution was found. */
  values: Float64Array | null;
  cost: number;
  bound: number;
  /** Of a relaxation: how much dearer it gets for each unit of a column that it leaves out. */
  reducedCosts?: Float64Array;
};

/** A linear solver: takes whole numbers (or not, for the relaxation), a start and a limit. */
export type LinearSolver = (
  model: LinearModel,
  options: {
    whole: boolean;
    /** Values of the columns of a known solution to start from; columns left out are found by the solver. */
    start?: { indices: number[]; values: number[] };
    /** Stop once the cost is proven to within this much. */
    absoluteGap?: number;
    /** Stop after this many branches. A count, and not a time, so that the answer is the same everywhere. */
    nodeLimit?: number;
    /** Called for each better solution on the way. */
    onBetter?: (values: Float64Array, cost: number, bound: number) => void;
    /** Called now and then with the proven bound. */
    onBound?: (bound: number) => void;
  },
) => LinearAnswer;

/** Gathers columns and rows one by one. */
export class ModelBuilder {
  readonly #cost: number[] = [];
  readonly #lower: number[] = [];
  readonly #upper: number[] = [];
  readonly #rowStart: number[] = [0];
  readonly #columns: number[] = [];
  readonly #values: number[] = [];
  readonly #rowLower: number[] = [];
  readonly #rowUpper: number[] = [];

  /** Adds a column and returns its index. */
  column(cost: number, lower = 0, upper = 1): number {
    this.#lower.push(lower);
    this.#upper.push(upper);
    return this.#cost.push(cost) - 1;
  }

  /** Adds a row: column indexes and factors, in pairs. */
  row(lower: number, upper: number, terms: readonly (readonly [column: number, factor: number])[]): void {
    for (const [column, factor] of terms) {
      this.#columns.push(column);
      this.#values.push(factor);
    }
    this.#rowStart.push(this.#columns.length);
    this.#rowLower.push(lower);
    this.#rowUpper.push(upper);
  }

  build(): LinearModel {
    return {
      columnCost: Float64Array.from(this.#cost),
      columnLower: Float64Array.from(this.#lower),
      columnUpper: Float64Array.from(this.#upper),
      rowStart: Int32Array.from(this.#rowStart),
      columnIndex: Int32Array.from(this.#columns),
      value: Float64Array.from(this.#values),
      rowLower: Float64Array.from(this.#rowLower),
      rowUpper: Float64Array.from(this.#rowUpper),
    };
  }
}
