import type { PlannedWeek } from "../api/types.ts";

/** Weeks one after the other at one price. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** Asked in these weeks. */
  readonly price: number;
  /** Chance that it has sold by the end of them, 0 to 1. */
  readonly sold: number;
  /** Lowest offers to take in the first and in the last of them. */
  readonly lowest: readonly [first: number, last: number];
}

/** The weeks joined where the price stays. */
export function stretches(path: readonly PlannedWeek[]): readonly Stretch[] {
  const joined: Stretch[] = [];
  for (const { week, price, chanceSold, lowestOffer } of path) {
    const before = joined.at(-1);
    if (before?.price === price)
      joined[joined.length - 1] = {
        ...before,
        to: week,
        sold: chanceSold,
        lowest: [before.lowest[0], lowestOffer],
      };
    else joined.push({ from: week, to: week, price, sold: chanceSold, lowest: [lowestOffer, lowestOffer] });
  }
  return joined;
}

/** The first week by whose end at least half of all outcomes have sold; null where that never comes. */
export function halfSold(path: readonly PlannedWeek[]): number | null {
  return path.find(({ chanceSold }) => chanceSold >= 0.5)?.week ?? null;
}
