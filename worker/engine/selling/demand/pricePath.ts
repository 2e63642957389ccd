import type { PriceRange } from "./bestPrice.ts";
import { bestEnd, givingUpIsOpen } from "./givingUp.ts";
import { pathFrom } from "./pathFrom.ts";
import { PathSearch } from "./pathSearch.ts";
import type { SaleWeeks } from "./saleWeek.ts";

/** A sale to be planned, over going rates known by weighted nodes. */
export interface PathProblem {
  readonly weeks: number;
  readonly weights: Float64Array;
  readonly sale: SaleWeeks;
  /** What the fallback brings at the start of each week, week x node. One row more than weeks. */
  readonly fallback: Float64Array;
  /** Prices to look at. */
  readonly range: PriceRange;
  /** The fallback is taken after the last week and not before. */
  readonly toTheEnd?: boolean;
}

/** Prices week by week, and what follows from them. */
export interface PricePath {
  /** For every week of the horizon; those from `end` on are not reached. */
  readonly prices: Float64Array;
  /** Weeks after which the fallback is taken, 1 to the horizon. */
  readonly end: number;
  /** Expected takings less storage, discounted, over the going rates. */
  readonly worth: number;
  /** By week x node: what being unsold at its start is worth. One row more than weeks. */
  readonly carryingOn: Float64Array;
  /** By week x node: weight of the node times the discounted chance to be unsold at the week's start. One row more than weeks. */
  readonly reach: Float64Array;
}

/** How a path is looked for. */
export interface Search {
  /** Prices to begin with, where a like plan is at hand. */
  readonly start?: Float64Array;
  /** Whether the path found is held against the whole range of prices at last; "near" for a figure that bears the rest of doubt. */
  readonly last?: "whole" | "near";
  /** Whether a path found to go on to the end is held against giving up sooner; "found" for a figure that bears the rest of doubt. */
  readonly end?: "searched" | "found";
}

/**
 * The path of prices, and the week to give up, that make the worth as large as can be.
 *
 * The only news before a sale is that it has not come yet, so a path fixed beforehand loses nothing by the going rate being uncertain. With one going
 * rate it is dynamic programming backwards, exact in one sweep. With several, the worth is, in the price of one week alone, a sum of that recursion over the
 * going rates, each weighed by its chance to be unsold by then: sweeps backwards over the whole range of prices in turn with Newton's steps for all
 * prices at once, until neither adds anything. Where some going rates would do better to give up sooner than others, other weeks to give up are tried too.
 */
export function optimalPath(problem: PathProblem, search: Search = {}): PricePath {
  const found = pathFrom(problem, search);
  if (search.end === "found" && found.end === problem.weeks) return found;
  return givingUpIsOpen(problem, found) ? bestEnd(problem, found) : found;
}

/** What given prices come to, with the best week to give up. */
export function pricedPath(problem: PathProblem, prices: Float64Array): PricePath {
  return new PathSearch(problem, prices).path();
}
