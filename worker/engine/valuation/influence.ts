import type { Money, Probability } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { solveTransposed, solveUpper } from "../statistics/upperTriangle.ts";
import { tailsOf } from "./goingRate.ts";
import type { ReadComparable } from "./learnFromSales.ts";
import { goingRate, targetRow } from "./prediction.ts";
import type { ValueEntries } from "./rowEntries.ts";
import type { SaleDescription } from "./saleDescription.ts";
import { type ValueBand, valueBand } from "./valueBand.ts";
import { denseRow, MORE_SALES, medianCovariance, medianVariance, type ValueBelief } from "./valueBelief.ts";
import { withoutCircumstances } from "./valueRow.ts";

/** What one comparable does to the estimate of a bike. */
export interface Influence {
  /** Median without it, all others kept. */
  readonly before: Money;
  /** Median with it. */
  readonly after: Money;
  /** Share of its log price in the log of the median; those of all comparables and of the demo sales sum to 1. */
  readonly weight: number;
  /** What this bike would fetch if it sold as that one did, differences in description taken off. */
  readonly says: Money;
  /** How far its price lies from what all else says, in its own standard deviations. */
  readonly distance: number;
}

/**
 * How each comparable moves the median of a bike: the estimate without it, in closed form from the fit with it.
 * m - m(-i) = V x_i e_i / (1 - h_i), h the leverage (Cook 1977; the same holds with a conjugate prior, whose rows are rows like others).
 */
export function influences(
  belief: ValueBelief,
  sales: readonly ReadComparable[],
  bike: SaleDescription,
): readonly Influence[] {
  if (sales.length === 0) return [];
  const { regression, coefficients, variance } = belief;
  const { row, limit } = targetRow(belief, bike);
  const logMedian = limit + dotRow(row, coefficients);
  const after = exp(logMedian);
  const pullOf = pullsOn(belief, denseRow(limit === 0 ? row : withoutCircumstances(row), regression.size));
  const pulls = new Map<Float64Array, Pull>();
  return sales.map(({ x, y, precision, count }) => {
    let known = pulls.get(x);
    if (known === undefined) {
      known = pullOf(x);
      pulls.set(x, known);
    }
    const weight = precision * count;
    const miss = y - known.expected;
    const left = 1 - weight * known.leverage;
    const pull = weight * known.covariance;
    return {
      before: exp(logMedian - (pull * miss) / left),
      after,
      weight: pull,
      says: exp(logMedian + miss),
      // Of the miss with it left out: miss / left, with variance (1 / precision) / left where it counts in full.
      distance: miss / Math.sqrt((variance / precision) * left),
    };
  });
}

/** What a description has to do with the bike in question: shared by all comparables described alike. */
interface Pull {
  /** x'm. */
  readonly expected: number;
  /** x'V x. */
  readonly leverage: number;
  /** Of the target with x: target'V x. */
  readonly covariance: number;
}

/** How any row pulls on a target: by V where it is at hand, else by solving with R. */
function pullsOn(belief: ValueBelief, target: Float64Array): (x: Float64Array) => Pull {
  const { regression, coefficients, covariance } = belief;
  const rooted = solveTransposed(regression, target);
  if (covariance === null)
    return (x) => {
      const own = solveTransposed(regression, x);
      return { expected: dot(x, coefficients), leverage: dot(own, own), covariance: dot(rooted, own) };
    };
  const pulling = solveUpper(regression, rooted);
  return (x) => {
    const row = sparse(x);
    const [expected, pull] = [dotRow(row, coefficients), dotRow(row, pulling)];
    return { expected, leverage: medianVariance(belief, row), covariance: pull };
  };
}

/** A row without its noughts. */
function sparse(x: Float64Array): ValueEntries {
  const columns: number[] = [];
  const values: number[] = [];
  for (let column = 0; column < x.length; column++) {
    if (x[column] === 0) continue;
    columns.push(column);
    values.push(x[column]!);
  }
  return { columns, values };
}

function dotRow({ columns, values }: ValueEntries, of: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < columns.length; i++) sum += values[i]! * of[columns[i]!]!;
  return sum;
}

/**
 * The band of a bike now, and with more comparables of its description that sold for just what was expected. They change the variance of the
 * median alone: V' = V - V x x'V k / (1 + k x'V x), k their number times the precision of one (Sherman & Morrison 1950). Sales as expected tell nothing
 * new of the scatter, which is kept, but known from more sales.
 */
export function withMoreSales(
  belief: ValueBelief,
  bike: SaleDescription,
  count: number,
): { readonly now: ValueBand; readonly after: ValueBand } {
  const { layout, coefficients, betweenModels, tails, tailsThen } = belief;
  const { row, limit, spread } = targetRow(belief, bike);
  const known = limit === 0 ? row : withoutCircumstances(row);
  const like = without(row, layout.sameModel);
  const weight = count / (spread * spread * (1 + betweenModels));
  const before = medianVariance(belief, known);
  const shared = medianCovariance(belief, known, like);
  const settled = (weight * shared * shared) / (1 + weight * medianVariance(belief, like));
  const logMedian = limit + dotRow(row, coefficients);
  const then = count === MORE_SALES ? tailsThen : tailsOf(tails.degreesOfFreedom + count);
  return {
    now: valueBand(goingRate(belief, logMedian, spread, before)),
    after: valueBand(
      goingRate({ variance: belief.variance, tails: then }, logMedian, spread, before - settled),
    ),
  };
}

function without({ columns, values }: ValueEntries, column: number): ValueEntries {
  return {
    columns: columns.filter((one) => one !== column),
    values: values.filter((_, index) => columns[index] !== column),
  };
}

/** Share of a log median that rests on sales of one's own, 0 to 1. */
export function ownShare(influences: readonly Influence[]): Probability {
  const sum = influences.reduce((total, { weight }) => total + weight, 0);
  return Math.min(1, Math.max(0, sum));
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let index = 0; index < a.length; index++) sum += a[index]! * b[index]!;
  return sum;
}
