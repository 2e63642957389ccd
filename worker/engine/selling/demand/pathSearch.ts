import type { PriceFunction } from "./bestPrice.ts";
import { newtonStep } from "./newtonStep.ts";
import type { PathProblem, PricePath } from "./pricePath.ts";
import { figuresByWeek, type WeekFigures } from "./saleWeek.ts";
import { WeekObjective } from "./weekObjective.ts";

/** Share of a price by which it is moved to see how its slope bends. */
const BEND = 1e-4;
/** Times a step that overshoots is halved before it is given up. */
const HALVINGS = 4;

/** How a sweep sets the price of a week: from what the worth is as a function of it, and the price that stands. */
export type Pick = (worth: PriceFunction, now: number) => number;

/** The search for the best path: its prices so far, with what follows from them kept up to date. */
export class PathSearch {
  worth: number;
  #prices: Float64Array;
  #end: number;
  readonly #problem: PathProblem;
  readonly #nodes: number;
  readonly #figures: readonly WeekFigures[];
  readonly #carryingOn: Float64Array;
  readonly #reach: Float64Array;
  readonly #objective: WeekObjective;

  constructor(problem: PathProblem, prices: Float64Array) {
    const { weeks, weights, sale } = problem;
    const nodes = weights.length;
    this.#problem = problem;
    this.#nodes = nodes;
    this.#prices = prices.slice(0, weeks);
    this.#end = weeks;
    this.#figures = figuresByWeek(weeks, nodes);
    this.#carryingOn = new Float64Array((weeks + 1) * nodes);
    this.#reach = new Float64Array((weeks + 1) * nodes);
    this.#reach.set(weights);
    this.#objective = new WeekObjective(sale, nodes, this.#reach, this.#carryingOn);
    this.worth = this.#follow();
  }

  path(): PricePath {
    return {
      prices: this.#prices,
      end: this.#end,
      worth: this.worth,
      carryingOn: this.#carryingOn,
      reach: this.#reach,
    };
  }

  /** Sets the prices from the last week to the first, each as the others stand, by a rule that never picks one of less value. */
  sweep(pick: Pick): void {
    const { weeks } = this.#problem;
    this.#giveUpAt(weeks);
    for (let week = weeks - 1; week >= 0; week--) {
      this.#prices[week] = pick(this.#about(week), this.#prices[week]!);
      this.#look(week);
      this.#lookBack(week);
    }
    this.worth = this.#follow();
  }

  /** Moves all prices at once by Newton's step, halved until the worth does not fall; false where that finds nothing better. */
  newton(): boolean {
    const before = { prices: this.#prices, worth: this.worth };
    const step = newtonStep({
      end: this.#end,
      figures: this.#figures,
      reach: this.#reach,
      carryingOn: this.#carryingOn,
      curvature: this.#curvature(),
    });
    if (step === null) return false;
    const { lowest, highest } = this.#problem.range;
    for (let halving = 0, share = 1; halving <= HALVINGS; halving++, share /= 2) {
      this.#prices = before.prices.map((price, week) =>
        Math.min(highest, Math.max(lowest, price + share * (step[week] ?? 0))),
      );
      this.worth = this.#follow();
      if (this.worth >= before.worth) return true;
    }
    this.#prices = before.prices;
    this.worth = this.#follow();
    return false;
  }

  #about(week: number): WeekObjective {
    this.#objective.week = week;
    return this.#objective;
  }

  #curvature(): Float64Array {
    const bends = new Float64Array(this.#end);
    for (let week = 0; week < bends.length; week++) {
      const objective = this.#about(week);
      const price = this.#prices[week]!;
      objective.at(price * (1 + BEND));
      bends[week] = (objective.slope - this.#slope(week)) / (BEND * price);
    }
    return bends;
  }

  /** Slope of the worth by the price of a week, from the figures at hand. */
  #slope(week: number): number {
    const { gainSlope, leftSlope } = this.#figures[week]!;
    const nodes = this.#nodes;
    let slope = 0;
    for (let node = 0, at = week * nodes; node < nodes; node++, at++)
      slope += this.#reach[at]! * (gainSlope[node]! + leftSlope[node]! * this.#carryingOn[at + nodes]!);
    return slope;
  }

  /** All that follows from the prices. */
  #follow(): number {
    const { weeks, weights } = this.#problem;
    const nodes = this.#nodes;
    for (let week = 0; week < weeks; week++) {
      this.#look(week);
      const { left } = this.#figures[week]!;
      for (let node = 0, at = week * nodes; node < nodes; node++, at++)
        this.#reach[at + nodes] = this.#reach[at]! * left[node]!;
    }
    this.#giveUpAt(weeks);
    for (let week = weeks - 1; week >= 0; week--) this.#lookBack(week);
    return weights.reduce((sum, weight, node) => sum + weight * this.#carryingOn[node]!, 0);
  }

  #look(week: number): void {
    this.#problem.sale.at(week, this.#prices[week]!, this.#figures[week]!);
  }

  /** What being unsold at the week's start is worth, node by node; gives up there where the fallback is worth more over those that are left. */
  #lookBack(week: number): void {
    const { fallback } = this.#problem;
    const { gain, left } = this.#figures[week]!;
    const nodes = this.#nodes;
    const carryingOn = this.#carryingOn;
    let added = 0;
    for (let node = 0, at = week * nodes; node < nodes; node++, at++) {
      carryingOn[at] = gain[node]! + left[node]! * carryingOn[at + nodes]!;
      added += this.#reach[at]! * (carryingOn[at]! - fallback[at]!);
    }
    if (week === 0 || this.#problem.toTheEnd || added >= 0) return;
    this.#giveUpAt(week);
  }

  /** The fallback is taken at the start of this week. */
  #giveUpAt(week: number): void {
    const start = week * this.#nodes;
    this.#end = week;
    this.#carryingOn.set(this.#problem.fallback.subarray(start, start + this.#nodes), start);
  }
}
