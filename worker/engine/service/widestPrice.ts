import { type ScaledBeta, threePointBeta, timesAndMoved } from "../statistics/scaledBeta.ts";
import type { Ledger } from "./ledger.ts";
import { priceRange } from "./partPrice.ts";
import type { Task } from "./task.ts";

/**
 * Of what some tasks buy, the cost that varies most, about its three points; null where none varies. The user's own prices are certain, and parts at hand are
 * not bought.
 */
export function widestPrice(
  tasks: readonly Pick<Task, "purchases">[],
  { bench: { attributes } }: Ledger,
): ScaledBeta | null {
  let widest: ScaledBeta | null = null;
  for (const { purchases } of tasks) {
    for (const { part, quantity, atHand, buyPrice } of purchases) {
      if (buyPrice.variance === 0 || quantity === atHand) continue;
      const { low, typical, high } = priceRange(part, attributes.componentTier);
      if ((quantity - atHand) * (high - low) <= (widest?.width ?? 0)) continue;
      const one = threePointBeta({ optimistic: low, likely: typical, pessimistic: high })!;
      widest = timesAndMoved(one, quantity - atHand, 0);
    }
  }
  return widest;
}
