import { bestAmong } from "./bestPrice.ts";
import { PathSearch, type Pick } from "./pathSearch.ts";
import type { PathProblem, PricePath } from "./pricePath.ts";

/** Prices so many places up and down the list are tried for a week. */
const REACH = 2;
/** Sweeps after which the search is ended in any case; it needs three or four. */
const MOST_SWEEPS = 50;

/**
 * The best path on a list of prices near a path: each price moved to the nearest of the list, then week by week to the best of its neighbours there until
 * no single move adds to the worth.
 * @param written the prices there are, rising, in the terms of the problem
 */
export function writtenPath(problem: PathProblem, near: Float64Array, written: readonly number[]): PricePath {
  const start = near.map((price) => written[nearest(written, price)]!);
  const search = new PathSearch(problem, start);
  const pick: Pick = (worth, now) => {
    const place = nearest(written, now);
    return bestAmong(worth, now, written.slice(Math.max(0, place - REACH), place + REACH + 1));
  };
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    const before = search.worth;
    search.sweep(pick);
    if (search.worth <= before) break;
  }
  return search.path();
}

/** Place of the list's price nearest to one. */
function nearest(written: readonly number[], price: number): number {
  const above = written.findIndex((one) => one >= price);
  if (above < 0) return written.length - 1;
  return above > 0 && price - written[above - 1]! < written[above]! - price ? above - 1 : above;
}
