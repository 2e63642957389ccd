import { bestNear, bestOnScale } from "./bestPrice.ts";
import { PathSearch, type Pick } from "./pathSearch.ts";
import type { PathProblem, PricePath, Search } from "./pricePath.ts";

/** Steps after which the search is ended in any case. */
const MOST_STEPS = 100;
/** A step that adds a smaller share of the worth ends the search: Newton's next one would add about the square of it. */
const NEGLIGIBLE = { whole: 1e-9, near: 1e-4 };

/** The path that neither a price moved by itself nor all moved together betters: sweeps and Newton's steps in turn. */
export function pathFrom(problem: PathProblem, { start, last = "whole" }: Search): PricePath {
  const { weeks, range } = problem;
  const whole: Pick = (worth, now) => bestOnScale(worth, now, range);
  const near: Pick = (worth, now) => bestNear(worth, now, range);
  const middle = Math.sqrt(range.lowest * range.highest);
  const search = new PathSearch(problem, start ?? new Float64Array(weeks).fill(middle));
  const adds = (before: number) => search.worth - before > NEGLIGIBLE[last] * Math.abs(search.worth);
  if (start === undefined) search.sweep(whole);
  for (let step = 0; step < MOST_STEPS; step++) {
    const before = search.worth;
    if (!search.newton()) search.sweep(near);
    if (adds(before)) continue;
    if (last === "near") break;
    const settled = search.worth;
    search.sweep(whole);
    if (!adds(settled)) break;
  }
  return search.path();
}
