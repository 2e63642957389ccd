import { squared } from "../statistics/elementary/powers.ts";
import { lateness } from "./failure.ts";
import type { Ledger } from "./ledger.ts";
import { type Moments, sum } from "./moments.ts";
import type { OpenEnd } from "./stopLimit.ts";
import type { Uncertainty, Way } from "./uncertainty.ts";

/**
 * A job with an open end whose failure is told apart: where it is given up it has taken all of its time, where it comes free less than on average. Each way
 * holds what its time is beside the mean and the variance that the plan counts. Anything else is returned as it is.
 */
export function withOwnTime(one: Uncertainty, { resources }: Ledger): Uncertainty {
  const openEnd = one.resource === null ? null : (resources[one.resource]!.task?.openEnd ?? null);
  if (openEnd === null) return one;
  return { ...one, ways: one.ways.map((way) => givenUp(way, openEnd)), otherwise: freed(openEnd) };
}

/** All the time until the limit; what follows no longer varies with it. */
function givenUp(way: Way, openEnd: OpenEnd): Way {
  const { limit, minutes: tried } = openEnd;
  const late = way.endsFrame ? 0 : lateness(way.minutes.mean, openEnd);
  const own = { mean: limit - tried.mean, variance: 0 - tried.variance - late };
  return { ...way, minutes: sum(way.minutes, own) };
}

/** The time given that it comes free, from the law of total expectation, beside the time on the whole. */
function freed({ limit, minutes: { mean, variance }, releaseChance }: OpenEnd): Moments {
  if (releaseChance <= 0) return { mean: 0, variance: 0 };
  const stuck = 1 - releaseChance;
  const own = (mean - stuck * limit) / releaseChance;
  const square = (variance + squared(mean) - stuck * squared(limit)) / releaseChance;
  return { mean: own - mean, variance: square - squared(own) - variance };
}
