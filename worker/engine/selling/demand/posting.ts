import type { Money, Probability } from "../../quantity.ts";
import { exp } from "../../statistics/elementary/exp.ts";
import { log } from "../../statistics/elementary/log.ts";
import { type Arrivals, poissonBuyers, type SeasonWeek, type Willingness } from "./arrivals.ts";
import { type GoingRates, goingRates, type RateCurve } from "./goingRates.ts";
import { postedWeeks, type SaleTerms } from "./postedWeeks.ts";
import type { PathProblem } from "./pricePath.ts";
import type { SellingTables } from "./sellingTables.ts";

/** What is done where it has not sold: a share of the going rate by a quick sale, or an amount that does not hang on it. Money in hand. */
export type Fallback =
  | { readonly share: Probability; readonly amount: null }
  | { readonly share: null; readonly amount: Money };

/** A bicycle put up for sale at prices still to be set. Money is in hand: after haggling. */
export interface Posting {
  /** Going rate before haggling, in the first week. */
  readonly curves: readonly RateCurve[];
  /** Share that is usually talked off: what the going rate counts on. */
  readonly usualHaggling: Probability;
  readonly willingness: SellingTables["willingness"];
  /** One more than the weeks it is put up for. */
  readonly season: readonly SeasonWeek[];
  readonly terms: SaleTerms;
  readonly fallback: Fallback;
}

/** The posting as a search for prices, with what it is made of. */
export interface PostedSale extends PathProblem {
  readonly rates: GoingRates;
  readonly arrivals: Arrivals;
  readonly willingness: Willingness;
}

/** Going rates less likely than this need not be reached by the range of prices. */
const UNLIKELY: Probability = 1e-3;
/** Prices are looked for from so many spreads among buyers below the least likely centre to so many above the highest. */
const SPREADS = { below: 4, above: 4 };
/** Room above a fallback of a given amount, in which a price that beats it is found. */
const ABOVE_FALLBACK = 1.5;

/** @param fineness divides the step between going rates: below 1 for a rough answer */
export function postedSale(posting: Posting, fineness = 1): PostedSale {
  const { curves, usualHaggling, season, terms, fallback } = posting;
  const { centre, logSd } = posting.willingness;
  const willingness = { logCentre: log(centre * (1 - usualHaggling)), logSd };
  const rates = goingRates(curves, logSd, fineness);
  const arrivals = poissonBuyers(rates, willingness, season);
  const brings = fallbackBrings(fallback, rates, season);
  return {
    weeks: season.length - 1,
    weights: rates.weights,
    sale: postedWeeks(arrivals, terms),
    fallback: brings,
    range: priceRange(rates, willingness, season, fallback.amount ?? 0, terms),
    rates,
    arrivals,
    willingness,
  };
}

/** Week x node. */
function fallbackBrings(
  { share, amount }: Fallback,
  { logRates }: GoingRates,
  season: readonly SeasonWeek[],
): Float64Array {
  const nodes = logRates.length;
  const brings = new Float64Array(season.length * nodes);
  if (share === null) return brings.fill(amount);
  const first = logRates.map((rate) => share * exp(rate));
  for (let week = 0, at = 0; week < season.length; week++) {
    const factor = exp(season[week]!.logRate);
    for (let node = 0; node < nodes; node++, at++) brings[at] = factor * first[node]!;
  }
  return brings;
}

function priceRange(
  { logRates, weights }: GoingRates,
  { logCentre, logSd }: Willingness,
  season: readonly SeasonWeek[],
  fallback: Money,
  { fee }: SaleTerms,
): PathProblem["range"] {
  const likely = logRates.filter((_, node) => weights[node]! >= UNLIKELY);
  const seasonal = season.map(({ logRate }) => logRate);
  const lowest = Math.min(...likely) + Math.min(...seasonal) + logCentre - SPREADS.below * logSd;
  const highest = Math.max(...likely) + Math.max(...seasonal) + logCentre + SPREADS.above * logSd;
  // A price must bring more than the fallback, after the fee.
  const above = (ABOVE_FALLBACK * (fallback + fee.fixed)) / (1 - fee.rate);
  return { lowest: exp(lowest), highest: Math.max(exp(highest), above) };
}
