import { type HighCumulants, threePointCumulants } from "../statistics/scaledBeta.ts";
import type { Ledger } from "./ledger.ts";
import { priceRange } from "./partPrice.ts";
import type { WorkPlan } from "./workPlan.ts";

/**
 * How the money of a plan is shaped beyond its variance: third and fourth cumulants of what is bought, each price on its own about its three points. The
 * user's own prices are certain, parts at hand are not bought; deliveries are many alike and count as normal.
 */
export function priceShape({ tasks }: WorkPlan, { bench: { attributes } }: Ledger): HighCumulants {
  let third = 0;
  let fourth = 0;
  for (const { purchases } of tasks) {
    for (const { part, quantity, atHand, buyPrice } of purchases) {
      if (buyPrice.variance === 0) continue;
      const { low, typical, high } = priceRange(part, attributes.componentTier);
      const one = threePointCumulants({ optimistic: low, likely: typical, pessimistic: high });
      third += (quantity - atHand) ** 3 * one.third;
      fourth += (quantity - atHand) ** 4 * one.fourth;
    }
  }
  return { third, fourth };
}
