import type { Tier } from "../bicycle.ts";
import type { Money } from "../quantity.ts";

export type PartId = string;

/** Something to measure or look at on the bike before a part is ordered, so that it fits. */
export interface PartSize {
  /** In words, with its unit. */
  readonly what: string;
  /** Id of the check in whose course it is found, where there is one. */
  readonly check?: string;
}

export interface PriceRange {
  readonly low: Money;
  readonly typical: Money;
  readonly high: Money;
}

/** A part, consumable dose or outside service, with invented demo prices for four tiers, new and (where sensible) used. */
export interface Part {
  readonly id: PartId;
  readonly name: string;
  readonly kind: "part" | "consumable" | "service";
  /** What one of it is: each, pair, m, set, dose, job. */
  readonly unit: string;
  /** What must be known to order one that fits; absent where any does. */
  readonly sizes?: readonly PartSize[];
  /** How it is bought for a resale bike: condition, and tiers below the bike's own. `tierCap` is the best tier ever bought. */
  readonly buy: { readonly state: "new" | "used"; readonly tiersBelow: 0 | 1; readonly tierCap?: Tier };
  readonly prices: {
    readonly new: Readonly<Record<Tier, PriceRange>>;
    readonly used: Readonly<Record<Tier, PriceRange>> | null;
  };
  readonly note?: string;
}

/** A special tool that not every workshop has. Invented prices. */
export interface Tool {
  readonly id: string;
  readonly name: string;
  readonly buy: Money;
  readonly borrow: Money;
}
