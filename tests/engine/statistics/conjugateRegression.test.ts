import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { randomNumbers } from "../../../data/scripts/randomNumbers.ts";
import {
  type ConjugateRegression,
  coefficientVariance,
  conjugatePrior,
  expectedCoefficients,
  flatPrior,
  learn,
  predictive,
  type RegressionRow,
} from "../../../worker/engine/statistics/conjugateRegression.ts";
import { leastSquares } from "../../../worker/engine/statistics/leastSquares.ts";
import { studentTQuantile } from "../../../worker/engine/statistics/studentT.ts";
import { anyRegression } from "./anyRegression.ts";
import { drawnFrom, standardNormals } from "./drawnFrom.ts";
import { normalEquations } from "./normalEquations.ts";

const SAME = 1e-10;
const SEED = { seed: 20261125, numRuns: 400 };

function near(found: number, value: number, tolerance = SAME): void {
  expect(Math.abs(found - value)).toBeLessThanOrEqual(tolerance * Math.max(1, Math.abs(value)));
}

/** Everything that is asked of a belief. */
function sameBelief(one: ConjugateRegression, other: ConjugateRegression, x: ArrayLike<number>): void {
  near(one.shape, other.shape);
  near(one.scale, other.scale);
  const means = expectedCoefficients(other);
  expectedCoefficients(one).forEach((value, column) => {
    near(value, means[column]!);
  });
  near(coefficientVariance(one, x), coefficientVariance(other, x));
  const [told, asked] = [predictive(one, x, 0.7), predictive(other, x, 0.7)];
  near(told.location, asked.location);
  near(told.scale, asked.scale);
  near(told.degreesOfFreedom, asked.degreesOfFreedom);
}

describe("conjugate regression", () => {
  test("learning row by row is learning all at once, in any order", () => {
    const shuffledToo = anyRegression.chain((problem) =>
      fc.tuple(
        fc.constant(problem),
        fc.shuffledSubarray([...problem.rows], { minLength: problem.rows.length }),
      ),
    );
    fc.assert(
      fc.property(shuffledToo, ([{ prior, rows, target }, shuffled]) => {
        const batch = learn(prior, rows);
        const oneByOne = shuffled.reduce((belief, row) => learn(belief, [row]), prior);
        sameBelief(oneByOne, batch, target);
        sameBelief(learn(prior, shuffled), batch, target);
      }),
      SEED,
    );
  });

  test("is the textbook's formula, worked with the normal equations", () => {
    fc.assert(
      fc.property(anyRegression, ({ prior, rows, target }) => {
        const belief = learn(prior, rows);
        const { mean, covariance, shape, scale } = normalEquations(prior, rows);
        near(belief.shape, shape);
        near(belief.scale, scale, 1e-8);
        expectedCoefficients(belief).forEach((value, column) => {
          near(value, mean[column]!, 1e-9);
        });
        const variance = target.reduce(
          (sum, own, i) => sum + own * target.reduce((inner, x, j) => inner + covariance[i]![j]! * x, 0),
          0,
        );
        near(coefficientVariance(belief, target), variance, 1e-9);
        const told = predictive(belief, target, 2);
        near(told.scale, Math.sqrt((scale / shape) * (0.5 + variance)), 1e-8);
      }),
      SEED,
    );
  });

  test("with nothing believed beforehand is weighted least squares", () => {
    fc.assert(
      fc.property(anyRegression, ({ size, rows }) => {
        // Rows that pin every column, so that the fit is well-conditioned whatever else was drawn.
        const pins = Array.from({ length: size + 1 }, (_, at) => ({
          x: Array.from({ length: size }, (_, column) => (column === at % size ? 3 + at : 0.5)),
          y: at - 2,
          precision: 1,
        }));
        const all: readonly RegressionRow[] = [...pins, ...rows.map(({ count: _, ...row }) => row)];
        const belief = learn(flatPrior(size), all);
        const fit = leastSquares(
          all.map(({ x }) => x),
          all.map(({ y }) => y),
          all.map(({ precision }) => precision),
        );
        expectedCoefficients(belief).forEach((value, column) => {
          near(value, fit.coefficients[column]!, 1e-9);
        });
        near(belief.scale, fit.residualSumOfSquares / 2, 1e-9);
        expect(2 * belief.shape).toBeCloseTo(fit.degreesOfFreedom, 12);
      }),
      SEED,
    );
  });

  test("a row that counts twice is that row twice; one that counts half, twice, is that row", () => {
    fc.assert(
      fc.property(anyRegression, ({ prior, rows, target }) => {
        const once = rows.map((row) => ({ ...row, count: 1 }));
        const double = rows.map((row) => ({ ...row, count: 2 }));
        const half = rows.map((row) => ({ ...row, count: 0.5 }));
        sameBelief(learn(prior, double), learn(prior, [...once, ...once]), target);
        sameBelief(learn(prior, [...half, ...half]), learn(prior, once), target);
      }),
      SEED,
    );
  });

  test("leaves the belief before as it was, and learns nothing from no rows", () => {
    fc.assert(
      fc.property(anyRegression, ({ prior, rows, target }) => {
        const before = structuredClone(prior);
        learn(prior, rows);
        expect(prior).toEqual(before);
        sameBelief(learn(prior, []), prior, target);
      }),
      SEED,
    );
  });

  test("keeps the mean it was given", () => {
    const prior = conjugatePrior([1, -2, 3], { size: 3, entries: [2, 1, -1, 3, 4, 5] }, 2, 1);
    expect([...expectedCoefficients(prior)]).toEqual([1, -2, 3]);
  });

  test("four predictive intervals in five hold the next response, where the prior is true", () => {
    const DRAWS = 4000;
    const random = randomNumbers(71);
    const normal = standardNormals(random);
    const prior = conjugatePrior([1, -2, 0.5], { size: 3, entries: [1, 0.5, 0, 2, -1, 1.5] }, 3, 2);
    let inside = 0;
    for (let draw = 0; draw < DRAWS; draw++) {
      const { coefficients, sd } = drawnFrom(prior, random, normal);
      const response = (x: readonly number[], precision: number) =>
        x.reduce((sum, value, column) => sum + value * coefficients[column]!, 0) +
        (sd * normal()) / Math.sqrt(precision);
      const rows = Array.from({ length: draw % 6 }, () => {
        const x = [1, normal(), normal()];
        const precision = 0.25 + 2 * random();
        return { x, y: response(x, precision), precision };
      });
      const x = [1, 2 * normal(), normal()];
      const { location, scale, degreesOfFreedom } = predictive(learn(prior, rows), x, 0.5);
      const reach = scale * studentTQuantile(0.9, degreesOfFreedom);
      if (Math.abs(response(x, 0.5) - location) <= reach) inside += 1;
    }
    // Four standard errors of a share of 4,000 draws.
    expect(Math.abs(inside / DRAWS - 0.8)).toBeLessThan(4 * Math.sqrt((0.8 * 0.2) / DRAWS));
  });
});

describe("what is refused, by name", () => {
  const triangle = { size: 2, entries: [1, 0, 1] };
  const prior = conjugatePrior([0, 0], triangle, 1, 1);
  const row: RegressionRow = { x: [1, 2], y: 3, precision: 1 };

  test.each([
    [0, 1, "shape requires a number above 0, got 0"],
    [Number.NaN, 1, "shape requires a number above 0, got NaN"],
    [1, -1, "scale requires a number above 0, got -1"],
  ])("a prior of shape %d and scale %d", (shape, scale, message) => {
    expect(() => conjugatePrior([0, 0], triangle, shape, scale)).toThrow(message);
  });

  test.each<readonly [Partial<RegressionRow>, string]>([
    [{ x: [1] }, "x requires 2 columns, got 1"],
    [{ y: Number.NaN }, "y requires a finite number, got NaN"],
    [{ y: Number.POSITIVE_INFINITY }, "y requires a finite number, got Infinity"],
    [{ precision: 0 }, "precision requires a number above 0, got 0"],
    [{ precision: Number.POSITIVE_INFINITY }, "precision requires a number above 0, got Infinity"],
    [{ count: -1 }, "count requires a number above 0, got -1"],
  ])("a row with %j", (spoilt, message) => {
    expect(() => learn(prior, [{ ...row, ...spoilt }])).toThrow(message);
  });

  test("an entry of a row that is no finite number", () => {
    expect(() => learn(prior, [{ ...row, x: [1, Number.NaN] }])).toThrow(
      "x[1] requires a finite number, got NaN",
    );
  });

  test("coefficients that nothing has determined", () => {
    expect(() => expectedCoefficients(learn(flatPrior(2), [row]))).toThrow("diagonal entry 1 requires");
  });
});
