import fc from "fast-check";
import {
  type ConjugateRegression,
  conjugatePrior,
  type RegressionRow,
} from "../../../worker/engine/statistics/conjugateRegression.ts";

export interface RegressionProblem {
  readonly size: number;
  readonly prior: ConjugateRegression;
  readonly rows: readonly (RegressionRow & { readonly x: readonly number[] })[];
  /** Where something is to be predicted. */
  readonly target: readonly number[];
}

const MOST_COLUMNS = 6;
const MOST_ROWS = 25;

/** Whole hundredths: no numbers of 1e-300, which are another matter. */
const within = (low: number, high: number) =>
  fc
    .integer({ min: Math.round(100 * low), max: Math.round(100 * high) })
    .map((hundredths) => hundredths / 100);

/** A well-conditioned regression with a prior, rows of differing precision and count, some entries nought. */
export const anyRegression: fc.Arbitrary<RegressionProblem> = fc
  .integer({ min: 1, max: MOST_COLUMNS })
  .chain((size) => {
    const entry = fc.oneof(within(-5, 5), fc.constant(0));
    const vector = fc.array(entry, { minLength: size, maxLength: size });
    return fc.record({
      size: fc.constant(size),
      prior: fc
        .record({
          mean: vector,
          diagonal: fc.array(within(0.3, 3), { minLength: size, maxLength: size }),
          above: fc.array(within(-1, 1), { minLength: size * size, maxLength: size * size }),
          shape: within(0.5, 10),
          scale: within(0.1, 10),
        })
        .map(({ mean, diagonal, above, shape, scale }) => {
          const entries = diagonal.flatMap((own, row) => [
            own,
            ...above.slice(row * size, row * size + size - row - 1),
          ]);
          return conjugatePrior(mean, { size, entries }, shape, scale);
        }),
      rows: fc.array(
        fc.record({ x: vector, y: within(-10, 10), precision: within(0.1, 5), count: within(0.05, 3) }),
        { maxLength: MOST_ROWS },
      ),
      target: vector,
    });
  });
