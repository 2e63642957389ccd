import type { Hours, Money } from "../quantity.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import type { Branch } from "./branch.ts";
import type { Pace } from "./pace.ts";

/** What a course brings and takes on average: all that choosing needs. */
export interface Expectation {
  readonly margin: Money;
  readonly hours: Hours;
  /** E[margin] - goal x E[hours]. */
  readonly netBenefit: Money;
}

/** Means over a course's branches. */
export function expectationOf(branches: readonly Branch[], { hourlyGoal, speedFactor }: Pace): Expectation {
  let margin = 0;
  let minutes = 0;
  for (const { chance, price, share, outlay, minutes: work, otherMinutes } of branches) {
    margin += chance * ((price ? share * logNormalMean(price) : 0) - outlay.mean);
    minutes += chance * (speedFactor * work.mean + otherMinutes);
  }
  const hours = minutes / 60;
  return { margin, hours, netBenefit: margin - hourlyGoal * hours };
}
