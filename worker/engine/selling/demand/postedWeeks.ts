import type { Money, Probability } from "../../quantity.ts";
import { exp } from "../../statistics/elementary/exp.ts";
import { type Arrivals, buyingRates } from "./arrivals.ts";
import type { SaleWeeks } from "./saleWeek.ts";

/** What a sale and the waiting for it cost. */
export interface SaleTerms {
  /** What a week on the floor costs. */
  readonly storagePerWeek: Money;
  /** Taken off the price at the sale. */
  readonly fee: { readonly rate: Probability; readonly fixed: Money };
  /** Interest forgone in a week, as a continuous rate. */
  readonly discountPerWeek: number;
}

/** Below it the closed forms lose digits, and the series has them all. */
const SMALL = 1e-4;

/**
 * Weeks in which a price stands and the first buyer who takes it ends the matter. With buyers who take it coming at the rate H a week, discount rate r,
 * storage c, x received at the price, u = H + r and A = (1 - exp(-u)) / u, the discounted weeks until it is sold or the week is over:
 * gain = (x H - c) A, left = exp(-u). Exact within the week, whatever its length.
 * @param length of a step in weeks
 */
export function postedWeeks(arrivals: Arrivals, terms: SaleTerms, length = 1): SaleWeeks {
  const { storagePerWeek, fee, discountPerWeek } = terms;
  const { nodes } = arrivals;
  const buying = buyingRates(nodes);
  const kept = 1 - fee.rate;
  const discount = discountPerWeek * length;
  const storage = storagePerWeek * length;
  return {
    at: (week, price, { gain, gainSlope, left, leftSlope }) => {
      arrivals.at(week, price, buying);
      const received = price * kept - fee.fixed;
      for (let node = 0; node < nodes; node++) {
        const rate = buying.rate[node]! * length;
        const slope = buying.slope[node]! * length;
        const u = rate + discount;
        const unsold = exp(-u);
        const waiting = u > SMALL ? (1 - unsold) / u : 1 - u / 2 + (u * u) / 6;
        const waitingSlope = u > SMALL ? (unsold - waiting) / u : -0.5 + u / 3;
        const flow = received * rate - storage;
        gain[node] = flow * waiting;
        gainSlope[node] = (kept * rate + received * slope) * waiting + flow * waitingSlope * slope;
        left[node] = unsold;
        leftSlope[node] = -unsold * slope;
      }
    },
  };
}
