import type { Tier } from "../bicycle.ts";
import type { Money } from "../quantity.ts";

export type PartId = string;

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
