import type { Attributes } from "../../bicycle.ts";
import type { Money, Probability } from "../../quantity.ts";
import type { PriceStep } from "./priceGrid.ts";

/** States a bicycle is sold whole in. */
export const WHOLE_STATES = ["asFound", "madeSafe", "restored"] as const;
export type WholeState = (typeof WHOLE_STATES)[number];

/** What is assumed of buyers and of waiting where a request does not say. */
export interface SellingTables {
  /** Interested buyers a week for a kind of middling demand, in a middle size, that rides, the seasons averaged. */
  readonly arrivalsPerWeek: number;
  /** What multiplies them. */
  readonly byCategory: Readonly<Record<string, number>>;
  readonly bySize: Readonly<Record<Attributes["sizeClass"], number>>;
  readonly byState: Readonly<Record<WholeState, number>>;
  /** By month, January first; on average 1. */
  readonly byMonth: readonly number[];
  /** The asking price, as a share of the going rate, that the median buyer takes; and the standard deviation of its logarithm among buyers. */
  readonly willingness: { readonly centre: number; readonly logSd: number };
  /** Weeks after which it goes for the fallback. */
  readonly weeks: number;
  /** What a week on the floor costs, at price level 1. */
  readonly storagePerWeek: Money;
  readonly interestPerYear: Probability;
  /** What a quick sale brings in hand, as a share of what the going rate leaves after the usual haggling. */
  readonly quickSale: Probability;
  readonly priceSteps: readonly PriceStep[];
  readonly offers: {
    /** By how much, as a mean of the logarithm, a first offer lies below what that buyer would pay. */
    readonly openingBelow: number;
    /** A counter that is less likely to be taken is not worth making. */
    readonly leastChance: Probability;
  };
  /** Waiting for another month must add more than this share of what the plan is worth. */
  readonly holdGain: Probability;
}
