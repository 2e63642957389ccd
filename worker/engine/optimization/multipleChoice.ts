/** One way to settle a group: what it is worth and what it uses of each budget. */
export interface GroupOption {
  /** Any sign. */
  readonly value: number;
  /** One amount a budget, each at least 0. */
  readonly use: readonly number[];
}

/**
 * Multiple-choice knapsack with several budgets: one option is taken in each group, the total value is the highest that the budgets allow.
 * A group that may be left has an option that uses nothing.
 */
export interface MultipleChoiceProblem {
  readonly groups: readonly (readonly GroupOption[])[];
  /** One a budget, at least 0; Infinity where there is no limit. */
  readonly budgets: readonly number[];
}

export interface MultipleChoiceSolution {
  /** Option index by group. */
  readonly choice: readonly number[];
  readonly value: number;
  /** Used of each budget. */
  readonly used: readonly number[];
  /** No choice is worth more than this. Equal to `value` where that is proven best. */
  readonly bound: number;
  /** False where the node limit was reached first: then the best found is told, with its bound. */
  readonly proven: boolean;
  /** What one more unit of each budget is worth in the linear relaxation: prices at which the bound is least. */
  readonly prices: readonly number[];
  /** Nodes of the search. */
  readonly nodes: number;
}
