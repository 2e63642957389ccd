import type { PathProblem } from "../../../worker/engine/selling/demand/pricePath.ts";

/** Independent offers of one kind. */
export interface Offers {
  /** Chance of an offer below x. */
  readonly below: (x: number) => number;
  /** E[X; X >= x]. */
  readonly above: (x: number) => number;
  readonly density: (x: number) => number;
  /** Where offers lie, roughly. */
  readonly range: { readonly lowest: number; readonly highest: number };
}

/**
 * One offer a week, accepted if it is at least the price set: then it is paid itself. Refused, the next week is worth a factor less and a cost was paid for the
 * offer.
 */
export function oneOfferAWeek(
  offers: Offers,
  weeks: number,
  { factor = 1, cost = 0 }: { readonly factor?: number; readonly cost?: number } = {},
): PathProblem {
  return {
    weeks,
    weights: Float64Array.of(1),
    fallback: new Float64Array(weeks + 1),
    range: offers.range,
    sale: {
      at: (_, price, { gain, gainSlope, left, leftSlope }) => {
        gain[0] = offers.above(price) - cost;
        gainSlope[0] = -price * offers.density(price);
        left[0] = offers.below(price) * factor;
        leftSlope[0] = offers.density(price) * factor;
      },
    },
  };
}

export const UNIFORM: Offers = {
  below: (x) => Math.min(1, Math.max(0, x)),
  above: (x) => (1 - Math.min(1, Math.max(0, x)) ** 2) / 2,
  density: (x) => (x >= 0 && x <= 1 ? 1 : 0),
  range: { lowest: 1e-9, highest: 1 },
};

export function exponential(mean: number): Offers {
  return {
    below: (x) => -Math.expm1(-x / mean),
    above: (x) => (x + mean) * Math.exp(-x / mean),
    density: (x) => Math.exp(-x / mean) / mean,
    range: { lowest: 1e-9 * mean, highest: 20 * mean },
  };
}
