import { exp } from "../../statistics/elementary/exp.ts";
import { type PostedSale, type Posting, postedSale } from "./posting.ts";
import { optimalPath, type PricePath, type Search } from "./pricePath.ts";

/** A posting with its best path. */
export interface PlannedPosting extends LikePath {
  readonly sale: PostedSale;
  readonly path: PricePath;
}

/** The best path of a like posting, perhaps at another level of prices. */
export interface LikePath {
  readonly path: Pick<PricePath, "prices">;
  /** Log of what buyers would pay for it on average. */
  readonly centre: number;
}

/**
 * The best path of a posting, looked for from one that comes down evenly through what a buyer may be ready to pay: most best paths lie near it.
 * @param fineness divides the step between going rates: below 1 for a rough answer
 * @param like whose prices are begun with instead, brought to this level
 */
export function bestPath(
  posting: Posting,
  fineness = 1,
  search: Omit<Search, "start"> = { last: "whole" },
  like: LikePath | null = null,
): PlannedPosting {
  const sale = postedSale(posting, fineness);
  const { rates, willingness } = sale;
  const centre = willingness.logCentre + weightedSum(rates.weights, (node) => rates.logRates[node]!);
  const start = like?.path.prices.map((price) => price * exp(centre - like.centre));
  const from = start ?? evenlyDown(sale, posting, centre);
  return { sale, centre, path: optimalPath(sale, { ...search, start: inRange(from, sale, posting) }) };
}

/** First and last price of a path that comes down evenly, in spreads of what one buyer of whom nothing is known would pay: read off best paths. */
const FROM = 1.65;
const TO = -0.9;

function evenlyDown(
  { rates, willingness, weeks }: PostedSale,
  { season }: Posting,
  centre: number,
): Float64Array {
  const { logRates, weights } = rates;
  const middle = centre - willingness.logCentre;
  const square = weightedSum(weights, (node) => (logRates[node]! - middle) * (logRates[node]! - middle));
  const spread = Math.sqrt(square + willingness.logSd * willingness.logSd);
  const prices = new Float64Array(weeks);
  for (let week = 0; week < weeks; week++) {
    const score = FROM + ((TO - FROM) * (week + 0.5)) / weeks;
    prices[week] = exp(centre + season[week]!.logRate + score * spread);
  }
  return prices;
}

/** By how much prices to begin with stay above a fallback that is known, in spreads among buyers. */
const ABOVE_FALLBACK = 0.25;

function inRange(
  prices: Float64Array,
  { range, willingness }: PostedSale,
  { fallback, terms }: Posting,
): Float64Array {
  const asGood = ((fallback.amount ?? 0) + terms.fee.fixed) / (1 - terms.fee.rate);
  const lowest = Math.max(range.lowest, asGood * exp(ABOVE_FALLBACK * willingness.logSd));
  return prices.map((price) => Math.min(range.highest, Math.max(lowest, price)));
}

function weightedSum(weights: Float64Array, value: (node: number) => number): number {
  return weights.reduce((sum, weight, node) => sum + weight * value(node), 0);
}
