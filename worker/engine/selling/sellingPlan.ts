import type { CheckId } from "../inspection/check.ts";
import type { Money, Probability } from "../quantity.ts";
import type { WholeState } from "./demand/sellingTables.ts";
import type { FallbackKind } from "./demand/wholeSale.ts";

/** 10, 50 and 90 % points. */
export interface Points {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** One week of the plan. */
export interface PlannedWeek {
  /** From 1, the week it is listed in. */
  readonly week: number;
  /** What to ask, a figure people write. */
  readonly price: Money;
  /** Chance that it is sold by the end of this week. */
  readonly chanceSold: Probability;
  /** Lowest offer, money in hand, that is worth more this week than carrying on after hearing it. */
  readonly lowestOffer: Money;
}

export const OFFER_ANSWERS = ["accept", "counter", "wait"] as const;

/** What to answer an offer that came. */
export interface OfferAnswer {
  readonly answer: (typeof OFFER_ANSWERS)[number];
  /** What to ask that buyer; null unless the answer is to counter. */
  readonly counter: Money | null;
  /** Chance that they pay it; null unless the answer is to counter. */
  readonly counterChance: Probability | null;
  /** What carrying on is worth after hearing it, at the plan's prices or lower ones, whichever are worth more then. */
  readonly carryingOn: Money;
  readonly reason: string;
  /** The going rate, before haggling, as the offer and the weeks without a sale leave it. */
  readonly goingRate: Points;
}

/** The terms that the plan was made for, defaults filled in. */
export interface MarketTerms {
  /** Interested buyers a week where the seasons are averaged. */
  readonly arrivalsPerWeek: number;
  /** Weeks after which it goes for the fallback in any case. */
  readonly weeks: number;
  readonly storagePerWeek: Money;
  /** Share that the buyer talks off the asking price. */
  readonly haggling: Probability;
  readonly fee: { readonly rate: Probability; readonly fixed: Money };
  /** Month it is listed in, 1 to 12; null: the seasons averaged. */
  readonly month: number | null;
}

/** What stands in the way of calling the bicycle rideable. */
export interface SoldAs {
  readonly state: WholeState;
  /** False: it may only be advertised as not roadworthy. */
  readonly roadworthy: boolean;
  /** Checks at a level that stops riding, as it stands. */
  readonly blocking: readonly CheckId[];
  /** Checks to be made before anyone rides. */
  readonly owed: readonly CheckId[];
}

/** How to sell one bicycle: what to ask, when to come down, what to accept. */
export interface SellingPlan {
  readonly currency: string;
  readonly dataVersion: string;
  readonly demoData: true;
  readonly unconverted: boolean;
  /** Null where the value was given alone. */
  readonly soldAs: SoldAs | null;
  /** Going rate before haggling in the month of listing. */
  readonly value: Points;
  readonly market: MarketTerms;
  readonly listPrice: Money;
  /** Week by week until it goes for the fallback. */
  readonly path: readonly PlannedWeek[];
  /** After haggling, after fees where they are given; the fallback counted where it has not sold. */
  readonly expectedTakings: Money;
  readonly takings: Points;
  /** Weeks until it is gone, by sale or fallback. */
  readonly expectedWeeks: number;
  readonly weeks: Points;
  /** Chance that it goes for the fallback. */
  readonly chanceUnsold: Probability;
  /** Expected takings less storage, discounted: what the plan makes as large as can be. */
  readonly worth: Money;
  /** What asking figures that people write takes off that. */
  readonly roundingCost: Money;
  readonly fallback: { readonly kind: FallbackKind; readonly amount: Money };
  readonly offer: OfferAnswer | null;
  /** Null where no month is given or none is worth waiting for. */
  readonly holdUntil: { readonly month: number; readonly gain: Money } | null;
}
