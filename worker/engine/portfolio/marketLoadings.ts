import { targetRow } from "../valuation/prediction.ts";
import type { ValueRow } from "../valuation/rowEntries.ts";
import { medianCovariance, type ValueBelief } from "../valuation/valueBelief.ts";
import type { Taken } from "./taken.ts";

/**
 * How strongly each sale moves with what is not known of the market as a whole: loadings a such that a_i a_j is about the covariance of the log medians of two
 * sales in the regression. One factor by the centroid method: row sum over the root of the grand total, off the diagonal (Thurstone 1931). A sale
 * alone has nothing to move with.
 */
export function marketLoadings(taken: readonly Taken[]): readonly number[] {
  const sales = taken.map(saleOf);
  const sums = sales.map((one, i) =>
    sales.reduce((sum, other, j) => (i === j ? sum : sum + covariance(one, other)), 0),
  );
  const total = sums.reduce((sum, row) => sum + Math.max(0, row), 0);
  if (total === 0) return sums;
  // n equal covariances c give row sums (n - 1) c and a total of n (n - 1) c: every loading must come out as the root of c.
  const size = sales.length;
  const scale = Math.sqrt(size / ((size - 1) * total));
  return sums.map((row) => Math.max(0, row) * scale);
}

interface Sale {
  readonly row: ValueRow;
  readonly belief: ValueBelief;
}

/** The find as the regression prices it in its course. Condition matters little to what two finds share: the least will do. */
function saleOf({ candidate: { find }, option: { course } }: Taken): Sale {
  const { pricing, settled } = find.situation;
  const { belief } = settled.market;
  const rideable = course.course === "restore" || course.course === "make-safe";
  const sale = rideable
    ? pricing.rideableSale(0, { polished: course.course === "restore" || pricing.polished, repainted: false })
    : pricing.asFoundSale(false);
  return { row: targetRow(belief, sale).row, belief };
}

function covariance(one: Sale, other: Sale): number {
  return one.belief.variance * medianCovariance(one.belief, one.row, other.row);
}
