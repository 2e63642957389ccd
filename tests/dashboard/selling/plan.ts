import type { SellingPlan } from "../../../dashboard/api/types.ts";

/** Eight weeks: €350, from week 4 €325, from week 6 €295. Invented figures, shaped as the API answers. */
const PRICES = [350, 350, 350, 325, 325, 295, 295, 295];
const SOLD = [0.16, 0.3, 0.41, 0.54, 0.64, 0.76, 0.84, 0.9];
const LOWEST = [301.2, 294, 287, 277.4, 266, 253, 238.9, 215];

/** Weeks at the prices given, the chances and lowest offers running on evenly. */
export function pathOf(prices: readonly number[]): SellingPlan["path"] {
  return prices.map((price, i) => ({
    week: i + 1,
    price,
    chanceSold: (0.9 * (i + 1)) / prices.length,
    lowestOffer: price * (0.86 - (0.2 * i) / prices.length),
  }));
}

/** A whole plan; what is given replaces the rest. */
export function plan(more: Partial<SellingPlan> = {}): SellingPlan {
  return {
    currency: "EUR",
    dataVersion: "fixture",
    demoData: true,
    unconverted: false,
    soldAs: { state: "restored", roadworthy: true, blocking: [], owed: [] },
    value: { p10: 265, p50: 322, p90: 390 },
    market: {
      arrivalsPerWeek: 1.6,
      weeks: 8,
      storagePerWeek: 2.5,
      haggling: 0.05,
      fee: { rate: 0, fixed: 0 },
      month: 4,
    },
    listPrice: 350,
    path: PRICES.map((price, i) => ({
      week: i + 1,
      price,
      chanceSold: SOLD[i] ?? 0,
      lowestOffer: LOWEST[i] ?? 0,
    })),
    expectedTakings: 302,
    takings: { p10: 190, p50: 309, p90: 333 },
    expectedWeeks: 3.86,
    weeks: { p10: 0.6, p50: 3.4, p90: 8 },
    chanceUnsold: 0.1,
    worth: 291,
    roundingCost: 1.3,
    fallback: { kind: "quick-sale", amount: 190 },
    offer: null,
    holdUntil: null,
    ...more,
  };
}
