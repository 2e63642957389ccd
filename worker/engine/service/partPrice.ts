import { TIERS, type Tier } from "../bicycle.ts";
import type { Money } from "../quantity.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { pertMean, pertSd } from "../statistics/pert.ts";
import type { Moments } from "./moments.ts";
import type { Part, PartId, PriceRange } from "./part.ts";

/**
 * Price range of one piece as it is bought for a resale bike: wear parts new and one tier below the bike, never below entry;
 * others at the bike's own tier, new or used as the part's row says.
 */
export function priceRange(part: Part, tier: Tier): PriceRange {
  const { state, tiersBelow, tierCap } = part.buy;
  let place = Math.max(0, TIERS.indexOf(tier) - tiersBelow);
  if (tierCap !== undefined) place = Math.min(place, TIERS.indexOf(tierCap));
  const bought = TIERS[place]!;
  return (state === "used" ? part.prices.used : null)?.[bought] ?? part.prices.new[bought];
}

/**
 * Expected price of one piece and its variance; the user's own price is taken as certain.
 * @param table the table's price at the tier, where it is at hand
 */
export function expectedPrice(
  part: Part,
  tier: Tier,
  own: ReadonlyMap<PartId, Money>,
  table: Moments = rangeMoments(priceRange(part, tier)),
): Moments {
  const ownPrice = own.get(part.id);
  return ownPrice === undefined ? table : { mean: ownPrice, variance: 0 };
}

/** Expected prices at every tier. */
export function pricesByTier(part: Part): Readonly<Record<Tier, Moments>> {
  const prices = TIERS.map((tier) => [tier, rangeMoments(priceRange(part, tier))]);
  return Object.fromEntries(prices) as Record<Tier, Moments>;
}

/** Moments of a three-point price by the PERT rule. */
export function rangeMoments({ low, typical, high }: PriceRange): Moments {
  const estimate = { optimistic: low, likely: typical, pessimistic: high };
  return { mean: pertMean(estimate), variance: squared(pertSd(estimate)) };
}
