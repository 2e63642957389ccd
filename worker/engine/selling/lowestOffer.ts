import type { Money } from "../quantity.ts";
import { monotoneRoot } from "../statistics/monotoneRoot.ts";
import { OffersOfWeek, type PlanUnderWay } from "./offersOfWeek.ts";

/** Offers are looked at down to this share of the price asked. */
const DOWN_TO = 0.05;
const TOLERANCE = 1e-7;

/**
 * The lowest offer to accept in a week: what is left of it after fees is just what carrying on is worth once it was heard. A lower one makes a lower going
 * rate likelier and carrying on worth less, but by less than what it is lower itself. Not above the price asked.
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
  if (gain(low) >= 0) return low;
  return monotoneRoot(gain, low, high, TOLERANCE);
}
