import fc from "fast-check";
import { curveOfBand } from "../../../worker/engine/selling/demand/goingRates.ts";
import { type PostedSale, type Posting, postedSale } from "../../../worker/engine/selling/demand/posting.ts";

/** What the tests vary of a sale; the seasons are flat. */
export interface Terms {
  readonly p50: number;
  /** p90 over p50, and p50 over p10. */
  readonly above: number;
  readonly below: number;
  readonly weeks: number;
  readonly arrivals: number;
  readonly storage: number;
  readonly quickSale: number;
  readonly fee: number;
}

export const anyTerms: fc.Arbitrary<Terms> = fc.record({
  p50: fc.double({ min: 40, max: 1500, noNaN: true }),
  above: fc.double({ min: 1, max: 1.8, noNaN: true }),
  below: fc.double({ min: 1, max: 1.8, noNaN: true }),
  weeks: fc.integer({ min: 1, max: 16 }),
  arrivals: fc.double({ min: 0.3, max: 8, noNaN: true }),
  storage: fc.double({ min: 0, max: 8, noNaN: true }),
  quickSale: fc.double({ min: 0, max: 0.8, noNaN: true }),
  fee: fc.double({ min: 0, max: 0.15, noNaN: true }),
});

/** A sale over these terms, 10 % usually talked off. */
export function posting(terms: Terms): Posting {
  const { p50, above, below, weeks, arrivals, storage, quickSale, fee } = terms;
  return {
    curves: [curveOfBand({ p10: p50 / below, p50, p90: p50 * above })],
    usualHaggling: 0.1,
    willingness: { centre: 0.85, logSd: 0.2 },
    season: Array.from({ length: weeks + 1 }, () => ({ arrivals, logRate: 0 })),
    terms: { storagePerWeek: storage, fee: { rate: fee, fixed: 0 }, discountPerWeek: 0.001 },
    fallback: { share: quickSale, amount: null },
  };
}

export function saleOf(terms: Terms): PostedSale {
  return postedSale(posting(terms));
}
