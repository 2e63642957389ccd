import type { Money } from "../quantity.ts";
import { monotoneRoot } from "../statistics/monotoneRoot.ts";
import { hearOffer, type PlanUnderWay } from "./heardOffer.ts";

/** Offers are looked at down to this share of the price asked. */
const DOWN_TO = 0.05;
const TOLERANCE = 1e-7;

/**
 * The lowest offer to accept in a week: what is left of it after fees is just what carrying on is worth once it was heard. A lower one makes a lower going rate likelier and
 * carrying on worth less, but less so than by what it is lower itself. Not above the price asked.
 * @param week from 0
 * @param received what is left of an amount after fees
 * @returns money in hand
 */
export function lowestOffer(plan: PlanUnderWay, week: number, received: (amount: Money) => Money): Money {
  const asked = plan.path.prices[week]!;
  const gain = (logOffer: number) => {
    const offer = Math.exp(logOffer);
    return received(offer) - hearOffer(plan, week, offer).carryingOn;
  };
  const high = Math.log(asked * (1 - TOLERANCE));
  const low = Math.log(asked * DOWN_TO);
  if (gain(high) <= 0) return asked;
  if (gain(low) >= 0) return Math.exp(low);
  return Math.exp(monotoneRoot(gain, low, high, TOLERANCE));
}
