import type { SaleState } from "../listing/saleStates.ts";
import type { Value } from "./states.ts";

/** One step from the plain bike to this one, in money. */
export interface Step {
  /** A driver of the answer; "state": the state it is sold in; "rest": steps too small to show. */
  readonly term: string;
  readonly factor: number;
  /** Price before the step. */
  readonly from: number;
  /** Price after it. */
  readonly to: number;
}

/** Steps below half a unit of the currency would show as nothing. */
const LEAST = 0.5;

/**
 * How the price of the plain bike becomes that of this one. The drivers multiply the reference price to the median of the
 * bike fully restored; a last step leads to the median of the state it is sold in. Each step is the product so far times
 * its factor less 1, so that the steps sum to the median less the reference price.
 * @returns the steps in order, those of less than half a unit of money joined into one; the last ends at the median
 */
export function waterfall(value: Value, state: SaleState): readonly Step[] {
  const { referencePrice, drivers } = value;
  const end = value[state]?.p50;
  if (end === undefined) return [];
  const whole = drivers.reduce((product, { factor }) => product * factor, referencePrice);
  const all = walk(referencePrice, [...drivers, { term: "state", factor: end / whole }]);
  const shown = all.filter(isTold);
  const rest = all.filter((step) => !isTold(step)).reduce((product, { factor }) => product * factor, 1);
  if (rest === 1) return all;
  const last = shown.findIndex(({ term }) => term === "state");
  const at = last < 0 ? shown.length : last;
  return walk(referencePrice, shown.toSpliced(at, 0, { term: "rest", factor: rest, from: 0, to: 0 }));
}

/** Whether a step is large enough to be told. */
export function isTold({ from, to }: Step): boolean {
  return Math.abs(to - from) >= LEAST;
}

function walk(start: number, factors: readonly { readonly term: string; readonly factor: number }[]): Step[] {
  let from = start;
  return factors.map(({ term, factor }) => {
    const step = { term, factor, from, to: from * factor };
    from = step.to;
    return step;
  });
}
