import type { Money } from "../quantity.ts";
import { normalCdf } from "../statistics/standardNormal.ts";

/** What is assumed of whoever makes an offer below the price asked. */
export interface OfferModel {
  /** Log of the median buyer's willingness, money in hand. */
  readonly logMedian: number;
  readonly logSd: number;
  /** Mean by which the logarithm of a first offer lies below that of what the buyer would pay. */
  readonly openingBelow: number;
}

/**
 * An offer is a buyer whose willingness is below the price asked, log-normal like any buyer's, and who opens below it by an exponential share of their own. So the
 * log of willingness, u, given the offer x, has the density of a normal moved down by s^2 / g, between the log offer and the log price asked:
 * f(u, x) = phi((u - m) / s) / s x exp(-(u - x) / g) / g for x <= u <= a. Its integral over u is closed.
 */
export interface OfferNews {
  /** Log of the density of the offer. */
  readonly logLikelihood: number;
  /** Chance that this buyer would pay an amount between the offer and the price asked. */
  readonly chanceTaken: (amount: Money) => number;
}

/** What an offer says if the median buyer's willingness is such and such. @param asked money in hand, above the offer */
export function offerNews(
  { logMedian, logSd, openingBelow }: OfferModel,
  offer: Money,
  asked: Money,
): OfferNews {
  const centre = logMedian - (logSd * logSd) / openingBelow;
  // Between two points far out on the same side the difference of upper tails keeps its digits.
  const above = (amount: Money) => normalCdf((centre - Math.log(amount)) / logSd);
  const beyond = above(asked);
  const between = Math.max(above(offer) - beyond, Number.MIN_VALUE);
  const tilt =
    (Math.log(offer) - logMedian) / openingBelow + (logSd * logSd) / (2 * openingBelow * openingBelow);
  return {
    logLikelihood: tilt + Math.log(between) - Math.log(openingBelow),
    chanceTaken: (amount) => Math.min(1, Math.max(0, (above(amount) - beyond) / between)),
  };
}
