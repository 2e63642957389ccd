import type { Situation } from "./situation.ts";

/**
 * Whether a price is asked that lies far below the value as found, with no document of where the bike comes from. That raises the question of
 * ownership before it raises the margin. A gift is not an asking price.
 */
export function isSuspiciouslyCheap({ settled, pricing, book, bench, notRidingChance }: Situation): boolean {
  const { price, paid } = settled.purchase;
  if (paid || price === 0 || bench.standing.has("ownership:document")) return false;
  const asFound =
    notRidingChance * Math.exp(pricing.asFoundNotRiding.logMedian) +
    (1 - notRidingChance) * Math.exp(pricing.asFoundRiding.logMedian);
  return price < book.catalogue.defaults.suspiciousBelow * asFound;
}
