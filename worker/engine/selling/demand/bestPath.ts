import { exp } from "../../statistics/elementary/exp.ts";
import { type PostedSale, type Posting, postedSale } from "./posting.ts";
import { optimalPath, type PricePath, type Search } from "./pricePath.ts";

/** A posting with its best path. */
export interface PlannedPosting {
  readonly sale: PostedSale;
  readonly path: PricePath;
}

/**
 * The best path of a posting, looked for from one that comes down evenly through what a buyer may be ready to pay: most best paths lie near it.
 * @param fineness divides the step between going rates: below 1 for a rough answer
 */
export function bestPath(
  posting: Posting,
  fineness = 1,
  search: Omit<Search, "start"> = { last: "whole" },
): PlannedPosting {
  const sale = postedSale(posting, fineness);
  return { sale, path: optimalPath(sale, { ...search, start: evenlyDown(sale, posting) }) };
}

/** First and last price of a path that comes down evenly, in spreads of what one buyer of whom nothing is known would pay: read off best paths. */
const FROM = 1.65;
const TO = -0.9;
/** And by how much it stays above a fallback that is known. */
const ABOVE_FALLBACK = 0.15;

function evenlyDown(
  { rates, willingness, weeks, range }: PostedSale,
  { season, fallback, terms }: Posting,
): Float64Array {
  const { logRates, weights } = rates;
  const middle = weightedSum(weights, (node) => logRates[node]!);
  const square = weightedSum(weights, (node) => (logRates[node]! - middle) * (logRates[node]! - middle));
  const spread = Math.sqrt(square + willingness.logSd * willingness.logSd);
  const asGood = ((fallback.amount ?? 0) + terms.fee.fixed) / (1 - terms.fee.rate);
  const lowest = Math.max(range.lowest, asGood * exp(ABOVE_FALLBACK * spread));
  const prices = new Float64Array(weeks);
  for (let week = 0; week < weeks; week++) {
    const score = FROM + ((TO - FROM) * (week + 0.5)) / weeks;
    const price = exp(middle + willingness.logCentre + season[week]!.logRate + score * spread);
    prices[week] = Math.min(range.highest, Math.max(lowest, price));
  }
  return prices;
}

function weightedSum(weights: Float64Array, value: (node: number) => number): number {
  return weights.reduce((sum, weight, node) => sum + weight * value(node), 0);
}
