import type { SellingPlan } from "../api/types.ts";
import { fallbackWords, weeksWords } from "./sellingFacts.ts";
import { buyersWords, costWords, percentWords } from "./sellingSheet.ts";

/** What stands in for each term that is left empty, and how the others are counted. */
export interface MarketHints {
  readonly weeks: string;
  readonly storagePerWeek: string;
  readonly arrivalsPerWeek: string;
  readonly haggling: string;
  readonly fallback: string;
}

/**
 * The hints below the terms. The figures are those the last plan was made with; a term that the user set himself gets
 * none, for nobody knows then what would stand in.
 * @param set the terms that are the user's own
 */
export function marketHints(
  plan: SellingPlan | null,
  set: Readonly<Partial<Record<keyof MarketHints, number>>>,
): MarketHints {
  const hint = (term: keyof MarketHints, told: (plan: SellingPlan) => string, more: string) =>
    plan === null || set[term] !== undefined ? more : `Left empty: ${told(plan)}. ${more}`.trim();
  return {
    weeks: hint("weeks", ({ market }) => weeksWords(market.weeks), ""),
    storagePerWeek: hint(
      "storagePerWeek",
      ({ market, currency }) => `${costWords(market.storagePerWeek, currency)} a week`,
      "Rent, and the place on the floor.",
    ),
    arrivalsPerWeek: hint(
      "arrivalsPerWeek",
      ({ market }) => buyersWords(market.arrivalsPerWeek),
      "Who would buy it at some price.",
    ),
    haggling: hint("haggling", ({ market }) => percentWords(market.haggling), "Off what you ask."),
    fallback: hint(
      "fallback",
      ({ fallback, currency }) => fallbackWords(fallback, currency),
      "A quick sale, or its parts.",
    ),
  };
}

/** Texts of the panel with the terms of selling, beside the names of its fields. */
export const MARKET_FACTS =
  "Kept in this browser. Left empty, an invented figure of the demo data stands in; it is named below each field.";
export const MARKET_WEEKS = "weeks";
export const MARKET_A_WEEK = "a week";
export const MARKET_MONTH = "Month it is put up for sale";
export const MARKET_NO_MONTH = "Not known: an average";

/** "As appraised: May". */
export function asAppraised(month: string | undefined): string {
  return `As appraised: ${month}`;
}
