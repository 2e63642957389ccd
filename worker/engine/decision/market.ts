import type { Attributes } from "../bicycle.ts";
import { log } from "../statistics/elementary/log.ts";
import type { Comparable } from "../valuation/comparable.ts";
import { learnFromSales, type ReadComparable, readComparables } from "../valuation/learnFromSales.ts";
import type { ValueBelief } from "../valuation/valueBelief.ts";
import { PRICED_CATEGORIES } from "../valuation/valueLayout.ts";
import type { Book } from "./book.ts";

/** What is believed of prices where the user buys and sells. */
export interface Market {
  /** After the user's own prices, at the table's price level. */
  readonly belief: ValueBelief;
  /** The user's own prices as they were read. */
  readonly sales: readonly ReadComparable[];
  /** Log of the user's price level over the table's. */
  readonly logPriceLevel: number;
}

/** Reads the user's prices and learns from them: once for a request. */
export function marketOf(
  comparables: readonly Comparable[],
  like: Attributes,
  priceLevel: number,
  book: Book,
): Market {
  const { haggling } = book.catalogue.defaults;
  const logPriceLevel = log(priceLevel);
  // A kind without a price stops the matter: then nothing is compared with it.
  const priced = PRICED_CATEGORIES.includes(like.category) ? comparables : [];
  const sales = readComparables(book.value, priced, {
    paidShare: { rides: 1 - haggling.rideable, notRiding: 1 - haggling.asFound },
    logPriceLevel,
    like,
  });
  return { belief: learnFromSales(book.value, sales), sales, logPriceLevel };
}
