import { pathFrom } from "./pathFrom.ts";
import type { PathProblem, PricePath } from "./pricePath.ts";

/** A smaller share of the worth is no reason to look again. */
const WORTH_A_LOOK = 1e-4;

/**
 * Whether another week to give up may be better. Not where carrying on is worth the fallback for every going rate in every week: then any path that gives up sooner
 * is bettered by going on.
 */
export function givingUpIsOpen({ weights, fallback, weeks }: PathProblem, path: PricePath): boolean {
  const { carryingOn, reach, end, worth } = path;
  if (end < weeks) return true;
  const nodes = weights.length;
  let most = 0;
  for (let week = 1; week < end; week++) {
    let better = 0;
    for (let at = week * nodes; at < (week + 1) * nodes; at++)
      better += reach[at]! * Math.max(0, fallback[at]! - carryingOn[at]!);
    most = Math.max(most, better);
  }
  return most > WORTH_A_LOOK * Math.abs(worth);
}

/** The best of a path and of those that give up after 1, 2, 4, 8, ... weeks or at the end alone, each planned for that; the best of them is looked over once more. */
export function bestEnd(problem: PathProblem, found: PricePath): PricePath {
  const { weeks } = problem;
  let best = found;
  for (let end = 1; ; end = Math.min(weeks, 2 * end)) {
    const path = pathFrom({ ...problem, weeks: end, toTheEnd: true }, { start: found.prices, last: "near" });
    if (path.worth > best.worth) best = path;
    if (end === weeks) break;
  }
  if (best === found) return found;
  const start = found.prices.slice();
  start.set(best.prices);
  const again = pathFrom(problem, { start });
  return again.worth >= found.worth ? again : found;
}
