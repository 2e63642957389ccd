import type { Attributes } from "../../bicycle.ts";
import type { Money, Probability } from "../../quantity.ts";
import { log1p } from "../../statistics/elementary/log.ts";
import { bestPath, type LikePath } from "./bestPath.ts";
import type { RateCurve } from "./goingRates.ts";
import type { Fallback, Posting } from "./posting.ts";
import { saleEndings } from "./saleForecast.ts";
import { type Seasons, seasonWeeks, WEEKS_A_YEAR } from "./season.ts";
import type { SellingTables, WholeState } from "./sellingTables.ts";

/** What multiplies the table's interested buyers for a bicycle. */
export function demandOf(
  { byCategory, bySize, byState }: SellingTables,
  { category, sizeClass }: Pick<Attributes, "category" | "sizeClass">,
  state: WholeState,
): number {
  return byCategory[category]! * bySize[sizeClass] * byState[state];
}

export const FALLBACKS = ["given", "quick-sale", "parts"] as const;
/** What is done where it has not sold: what the request says it brings, a quick sale below the going rate, or breaking it for parts. */
export type FallbackKind = (typeof FALLBACKS)[number];

/**
 * A quick sale, or breaking it where that leaves more than a quick sale at the middle going rate.
 * @param parts what breaking leaves after its minutes; null where that is not open or not known
 */
export function usualFallback(
  { quickSale }: SellingTables,
  usualHaggling: Probability,
  middle: Money,
  parts: Money | null,
): { readonly kind: FallbackKind; readonly terms: Fallback } {
  const share = quickSale * (1 - usualHaggling);
  return parts !== null && parts > share * middle
    ? { kind: "parts", terms: { share: null, amount: parts } }
    : { kind: "quick-sale", terms: { share, amount: null } };
}

/** Interest as a continuous rate a week. */
export function weeklyInterest({ interestPerYear }: SellingTables): number {
  return log1p(interestPerYear) / WEEKS_A_YEAR;
}

/** A whole bicycle sold on the table's terms. */
export interface WholeSale {
  readonly curves: readonly RateCurve[];
  readonly usualHaggling: Probability;
  /** See demandOf. */
  readonly demand: number;
  readonly seasons: Seasons;
  readonly month: number | null;
  readonly priceLevel: number;
  readonly fee: Posting["terms"]["fee"];
  readonly fallback: Fallback;
}

/** Going rates this far apart still tell the weeks to a day and the takings to a thousandth. */
const ROUGH = 0.6;

/** What comes of a sale on average. */
export interface ExpectedSale {
  /** Until it is gone, by sale or fallback. */
  readonly weeks: number;
  /** After haggling and the fee, the fallback counted where it comes to that. */
  readonly takings: Money;
}

/**
 * What comes of a bicycle put up for sale at the prices that are best for it, on the terms of the tables.
 * @param like the posting of a bike much like it, with which the search begins
 */
export function expectedSale(
  sold: WholeSale,
  tables: SellingTables,
  like: LikePath | null,
): { readonly sale: ExpectedSale; readonly like: LikePath } {
  const { curves, usualHaggling, fallback, fee } = sold;
  const arrivals = tables.arrivalsPerWeek * sold.demand;
  const posting: Posting = {
    curves,
    usualHaggling,
    fallback,
    willingness: tables.willingness,
    season: seasonWeeks(sold.seasons, sold.month, tables.weeks, arrivals),
    terms: {
      storagePerWeek: tables.storagePerWeek * sold.priceLevel,
      fee,
      discountPerWeek: weeklyInterest(tables),
    },
  };
  const planned = bestPath(posting, ROUGH, { last: "near", end: "found" }, like);
  const { sale, path } = planned;
  const { arrivals: buyers, weights } = sale;
  const prices = path.prices.slice(0, path.end);
  const { chances, unsold, expectedWeeks } = saleEndings({ arrivals: buyers, weights, prices });
  let takings = 0;
  for (let week = 0; week < prices.length; week++)
    takings += chances[week]! * (prices[week]! * (1 - fee.rate) - fee.fixed);
  for (let node = 0, at = path.end * unsold.length; node < unsold.length; node++, at++)
    takings += unsold[node]! * sale.fallback[at]!;
  return { sale: { weeks: expectedWeeks, takings }, like: planned };
}
