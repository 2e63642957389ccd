import type { Money } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { monotoneRoot } from "../statistics/monotoneRoot.ts";
import { OffersOfWeek, type PlanUnderWay } from "./offersOfWeek.ts";

/** Offers are looked at down to this share of the price asked. */
const DOWN_TO = 0.001;
/** Evenly spaced in the logarithm. */
const STEPS = 40;
const TOLERANCE = 1e-7;

/**
 * The lowest offer to accept in a week: what is left of it after fees is just what carrying on is worth once it was heard, and every higher one leaves more. A
 * lower one makes a lower going rate likelier and carrying on worth less, but as a rule by less than what it is lower itself. Not above the price asked.
 * @param week from 0
 * @param received what is left of an amount after fees
 * @returns money in hand
 */
export function lowestOffer(plan: PlanUnderWay, week: number, received: (amount: Money) => Money): Money {
  const offers = new OffersOfWeek(plan, week);
  const { asked } = offers;
  const gain = (offer: Money) => received(offer) - offers.hear(offer).carryingOn;
  const [low, high] = [asked * DOWN_TO, asked * (1 - TOLERANCE)];
  if (gain(high) <= 0) return asked;
  // From the top down: where next to nothing is known of the going rate, one far below may say so low a rate that it would be enough again.
  const step = exp(log(low / high) / STEPS);
  for (let above = high, index = 0; index < STEPS; index++) {
    const offer = above * step;
    if (gain(offer) < 0) return monotoneRoot(gain, offer, above, TOLERANCE);
    above = offer;
  }
  return low;
}
