import { randomNumbers } from "../../../data/scripts/randomNumbers.ts";

/** A share of the rows to predict, and all others to learn from. */
export interface Fold {
  readonly learned: readonly number[];
  readonly held: readonly number[];
}

/** Row numbers in as many folds, shuffled (Fisher & Yates), every row held out once. */
export function foldsOf(rows: number, folds: number, seed: number): readonly Fold[] {
  const random = randomNumbers(seed);
  const order = Array.from({ length: rows }, (_, row) => row);
  for (let last = rows - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1));
    [order[last], order[other]] = [order[other]!, order[last]!];
  }
  return Array.from({ length: folds }, (_, fold) => ({
    learned: order.filter((_, place) => place % folds !== fold),
    held: order.filter((_, place) => place % folds === fold),
  }));
}
