import {
  type ConjugateRegression,
  conjugatePrior,
  expectedCoefficients,
} from "../statistics/conjugateRegression.ts";
import { log } from "../statistics/elementary/log.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { inverseOfGram, rowStart, solveTransposed } from "../statistics/upperTriangle.ts";
import { type Tails, tailsOf } from "./goingRate.ts";
import type { ValueEntries } from "./rowEntries.ts";
import type { ValueLayout } from "./valueLayout.ts";
import type { FittedModel, ValuePrior } from "./valueTables.ts";

/** Further sales that the user might look for: what they would do to a band is told with it. */
export const MORE_SALES = 3;

/** What is believed of prices after some sales: all that a prediction needs. */
export interface ValueBelief {
  readonly layout: ValueLayout;
  readonly regression: ConjugateRegression;
  readonly coefficients: Float64Array;
  /** Variance of log price within a model of ordinary spread: b / a. */
  readonly variance: number;
  readonly betweenModels: number;
  readonly tails: Tails;
  /** The tails after MORE_SALES more sales. */
  readonly tailsThen: Tails;
  /** Largest leverage of a demo sale. */
  readonly largestLeverage: number;
  /** Inverse of the information, full, row by row; null where it is cheaper to solve with R. */
  readonly covariance: Float64Array | null;
}

/**
 * The belief before any sale of one's own: the demo sales at the weight of a few, and the level of one's own market loose about theirs.
 * Shape and scale are those of that many sales, so that t keeps twelve degrees of freedom or what the table says.
 */
export function initialBelief(layout: ValueLayout, fitted: FittedModel, prior: ValuePrior): ValueBelief {
  const { betweenModels, demoSalesCount } = prior;
  const variance = withinModels(fitted, prior);
  const mean = new Float64Array(layout.names.length);
  fitted.columns.forEach(({ coefficient }, column) => {
    mean[layout.demo.start + column] = coefficient;
  });
  mean[layout.asked] = log(prior.asked.factor);
  const triangle = priorTriangle(layout, fitted, prior, Math.sqrt(variance));
  const shape = demoSalesCount / 2;
  return beliefIn(conjugatePrior(mean, triangle, shape, shape * variance), {
    layout,
    betweenModels,
    largestLeverage: fitted.largestLeverage,
    covariance: inverseOfGram(triangle),
  });
}

/** A regression made ready for predicting. */
export function beliefIn(
  regression: ConjugateRegression,
  rest: Pick<ValueBelief, "layout" | "betweenModels" | "largestLeverage" | "covariance">,
): ValueBelief {
  return {
    ...rest,
    regression,
    coefficients: expectedCoefficients(regression),
    variance: regression.scale / regression.shape,
    tails: tailsOf(2 * regression.shape),
    tailsThen: tailsOf(2 * regression.shape + MORE_SALES),
  };
}

/** What the demo sales' scatter leaves within a model: they are of different models, so theirs holds both. */
export function withinModels(
  { residualSd }: Pick<FittedModel, "residualSd">,
  { betweenModels }: Pick<ValuePrior, "betweenModels">,
): number {
  return squared(residualSd) / (1 + betweenModels);
}

/** x'V x: variance of the log of the median in units of the variance within a model. */
export function medianVariance(belief: ValueBelief, row: ValueEntries): number {
  return belief.covariance === null ? solved(belief, row) : summed(belief.covariance, belief, row);
}

function solved({ regression }: ValueBelief, row: ValueEntries): number {
  let sum = 0;
  for (const value of solveTransposed(regression, denseRow(row, regression.size))) sum += value * value;
  return sum;
}

function summed(
  covariance: Float64Array,
  { coefficients }: ValueBelief,
  { columns, values }: ValueEntries,
): number {
  const size = coefficients.length;
  let sum = 0;
  for (let i = 0; i < columns.length; i++) {
    const start = columns[i]! * size;
    let inner = covariance[start + columns[i]!]! * values[i]!;
    for (let j = 0; j < i; j++) inner += 2 * covariance[start + columns[j]!]! * values[j]!;
    sum += inner * values[i]!;
  }
  return sum;
}

/** x'V z: covariance of the logs of two medians in the same units. */
export function medianCovariance(belief: ValueBelief, one: ValueEntries, other: ValueEntries): number {
  const { covariance, regression } = belief;
  const { size } = regression;
  let sum = 0;
  if (covariance === null) {
    const [a, b] = [one, other].map((row) => solveTransposed(regression, denseRow(row, size)));
    for (let index = 0; index < size; index++) sum += a![index]! * b![index]!;
    return sum;
  }
  for (let i = 0; i < one.columns.length; i++) {
    const start = one.columns[i]! * size;
    let inner = 0;
    for (let j = 0; j < other.columns.length; j++)
      inner += covariance[start + other.columns[j]!]! * other.values[j]!;
    sum += inner * one.values[i]!;
  }
  return sum;
}

/** A row with its noughts. */
export function denseRow({ columns, values }: ValueEntries, size: number): Float64Array {
  const row = new Float64Array(size);
  columns.forEach((column, index) => {
    row[column]! += values[index]!;
  });
  return row;
}

/** The table's root information with that of the columns that no demo sale fills: each independent, by its own spread. */
function priorTriangle(layout: ValueLayout, fitted: FittedModel, prior: ValuePrior, sd: number) {
  const { demo, names } = layout;
  const size = names.length;
  const entries = new Float64Array((size * (size + 1)) / 2);
  for (let row = 0; row < demo.size; row++) {
    const from = rowStart(demo.size, row);
    const to = rowStart(size, demo.start + row);
    for (let column = 0; column < demo.size - row; column++)
      entries[to + column] = fitted.squareRootInformation[from + column]!;
  }
  const own = (column: number, ownSd: number) => {
    entries[rowStart(size, column)] = sd / ownSd;
  };
  for (const column of Object.values(layout.marketOfCategory)) own(column, prior.marketOfCategorySd);
  own(layout.market, prior.marketSd);
  own(layout.asked, prior.asked.sd);
  own(layout.sameModel, sd * Math.sqrt(prior.betweenModels));
  return { size, entries };
}
