import type { Minutes, Money, MoneyPerHour } from "../quantity.ts";
import type { PartId, PriceRange } from "./part.ts";

/** The user's workshop as far as work and its cost depend on it, with every default filled in. */
export interface Workshop {
  /** What one more hour must earn. */
  readonly hourlyGoal: MoneyPerHour;
  /** 1 is a practised hobbyist; 1.2 takes a fifth longer. */
  readonly speedFactor: number;
  /** Standard deviation of the logarithm of the common speed factor. */
  readonly speedSpread: number;
  readonly skill: 1 | 2 | 3 | 4;
  /** Special tools at hand; null means all. */
  readonly tools: ReadonlySet<string> | null;
  /** The user's own prices; each replaces the table's range. */
  readonly partPrices: ReadonlyMap<PartId, Money>;
  readonly deliveryPerOrder: PriceRange;
  /** Replaces the operations of selling where given. */
  readonly sellingMinutes: Minutes | null;
}
