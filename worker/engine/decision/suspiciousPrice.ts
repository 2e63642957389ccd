import { stands } from "../service/bench.ts";
import type { LevelMatch } from "../service/operation.ts";
import { exp } from "../statistics/elementary/exp.ts";
import type { Situation } from "./situation.ts";

const DOCUMENT: LevelMatch = { check: "ownership", levels: ["document"] };

/**
 * Whether a price is asked that lies far below the value as found, with no document of where the bike comes from. That raises the question of
 * ownership before it raises the margin. A gift is not an asking price.
 */
export function isSuspiciouslyCheap({ settled, pricing, book, bench, notRidingChance }: Situation): boolean {
  const { price, paid } = settled.purchase;
  if (paid || price === 0 || stands(bench, DOCUMENT)) return false;
  const asFound =
    notRidingChance * exp(pricing.asFoundNotRiding.logMedian) +
    (1 - notRidingChance) * exp(pricing.asFoundRiding.logMedian);
  return price < book.catalogue.defaults.suspiciousBelow * asFound;
}
