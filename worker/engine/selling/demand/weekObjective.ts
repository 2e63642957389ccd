import type { PriceFunction } from "./bestPrice.ts";
import { type SaleWeeks, type WeekFigures, weekFigures } from "./saleWeek.ts";

/**
 * The part of a plan's worth that hangs on the price of one week, the prices of the other weeks held as they are: over the going rates, the sum of
 * reach x (gain + left x what being unsold is worth after that week).
 */
export class WeekObjective implements PriceFunction {
  value = 0;
  slope = 0;
  /** The week it is asked about. */
  week = 0;
  readonly #figures: WeekFigures;
  readonly #sale: SaleWeeks;
  readonly #nodes: number;
  readonly #reach: Float64Array;
  readonly #carryingOn: Float64Array;

  /** @param reach, carryingOn week x node, kept up to date by whoever asks */
  constructor(sale: SaleWeeks, nodes: number, reach: Float64Array, carryingOn: Float64Array) {
    this.#sale = sale;
    this.#nodes = nodes;
    this.#figures = weekFigures(nodes);
    this.#reach = reach;
    this.#carryingOn = carryingOn;
  }

  at(price: number): void {
    const { gain, gainSlope, left, leftSlope } = this.#figures;
    const nodes = this.#nodes;
    const reach = this.#reach;
    const here = this.week * nodes;
    const next = here + nodes;
    this.#sale.at(this.week, price, this.#figures);
    let value = 0;
    let slope = 0;
    for (let node = 0; node < nodes; node++) {
      const later = this.#carryingOn[next + node]!;
      value += reach[here + node]! * (gain[node]! + left[node]! * later);
      slope += reach[here + node]! * (gainSlope[node]! + leftSlope[node]! * later);
    }
    this.value = value;
    this.slope = slope;
  }
}
