import type { KeptSale } from "../ownPrices/sale.ts";
import type { Value } from "./states.ts";

type Told = Value["comparables"][number];

/** One of the user's own sales with what it does to the estimate. */
export interface ComparableRow {
  readonly sale: KeptSale;
  /** The price before haggling that it stands for; an asking price is brought down by what adverts ask more. */
  readonly goingRate: number;
  /** What this bike would fetch if it sold as that one did. */
  readonly says: number;
  /** Median without it. */
  readonly before: number;
  /** Median with it. */
  readonly after: number;
  /** Share of the estimate. */
  readonly weight: number;
  readonly surprising: boolean;
}

/** The answer's rows with the sales they are about, the weightiest first. A sale that was removed since is left out. */
export function comparableRows(
  { comparables }: Pick<Value, "comparables">,
  sales: readonly KeptSale[],
): readonly ComparableRow[] {
  const kept = new Map(sales.map((sale) => [sale.id, sale]));
  return comparables
    .flatMap((told: Told) => {
      const sale = kept.get(told.id ?? "");
      return sale === undefined ? [] : [{ ...told, sale }];
    })
    .sort((a, b) => Math.abs(b.weight) - Math.abs(a.weight));
}
