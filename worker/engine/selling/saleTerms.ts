import type { Book } from "../decision/book.ts";
import type { Posting } from "./demand/posting.ts";
import { seasonWeeks } from "./demand/season.ts";
import { type FallbackKind, usualFallback, weeklyInterest } from "./demand/wholeSale.ts";
import type { Goods } from "./goods.ts";
import type { MarketTerms } from "./sellingPlan.ts";
import type { SellingRequest } from "./sellingRequest.ts";

/** A sale with every term settled. */
export interface SettledSale {
  readonly goods: Goods;
  readonly market: MarketTerms;
  readonly fallback: { readonly kind: FallbackKind; readonly terms: Posting["fallback"] };
  /** Interest as a continuous rate a week. */
  readonly discountPerWeek: number;
}

/** Fills the terms of a request from the tables. */
export function settleSale(goods: Goods, { market }: SellingRequest, book: Book): SettledSale {
  const { selling } = book.catalogue;
  const fee = goods.fee ?? { rate: 0, fixed: 0 };
  return {
    goods,
    market: {
      arrivalsPerWeek: market.arrivalsPerWeek ?? selling.arrivalsPerWeek * goods.demand,
      weeks: market.weeks ?? selling.weeks,
      storagePerWeek: market.storagePerWeek ?? selling.storagePerWeek * goods.priceLevel,
      haggling: market.haggling ?? goods.usualHaggling,
      fee: { rate: market.fee?.rate ?? fee.rate, fixed: market.fee?.fixed ?? fee.fixed },
      month: market.month ?? goods.month,
    },
    fallback:
      market.fallback === undefined
        ? usualFallback(selling, goods.usualHaggling, goods.band.p50, goods.parts)
        : { kind: "given", terms: { share: null, amount: market.fallback } },
    discountPerWeek: weeklyInterest(selling),
  };
}

/**
 * The sale as it is put up, now or after months of keeping it back.
 * @param monthsHeld needs a month of listing
 */
export function postingOf(sale: SettledSale, book: Book, monthsHeld = 0): Posting {
  const { goods, market, fallback, discountPerWeek } = sale;
  const { fee, storagePerWeek } = market;
  return {
    curves: goods.curves,
    usualHaggling: goods.usualHaggling,
    willingness: book.catalogue.selling.willingness,
    season: seasonWeeks(goods.seasons, market.month, market.weeks, market.arrivalsPerWeek, monthsHeld),
    terms: { storagePerWeek, fee, discountPerWeek },
    fallback: fallback.terms,
  };
}
