import { monotoneRoot } from "../../statistics/monotoneRoot.ts";

/** A function of a price with its slope: `at` works both out, `value` and `slope` hold them. */
export interface PriceFunction {
  readonly value: number;
  readonly slope: number;
  readonly at: (price: number) => void;
}

/** Where prices are looked for. */
export interface PriceRange {
  readonly lowest: number;
  readonly highest: number;
}

/** Steps of the scale of prices that a whole look takes, evenly spaced in the logarithm. */
const SCALE = 24;
/** A smaller share of the price ends the search: the value is flat there, so it is far more exact. */
const TOLERANCE = 1e-8;
/** Share of the price by which the guess of the sweep before is expected to be off. */
const FIRST_STEP = 1e-3;

/** The price with the highest value on a scale over the range, refined where its slope vanishes; the price that stands, where none is better. */
export function bestOnScale(f: PriceFunction, now: number, { lowest, highest }: PriceRange): number {
  const step = Math.log(highest / lowest) / SCALE;
  const price = (index: number) => lowest * Math.exp(step * Math.min(SCALE, Math.max(0, index)));
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let index = 0; index <= SCALE; index++) {
    f.at(price(index));
    if (f.value > most) [best, most] = [index, f.value];
  }
  return bestAmong(f, now, [topBetween(f, price(best - 1), price(best + 1))]);
}

/** The price near a guess at which the slope falls through 0; an end of the range where it does not before it. */
export function bestNear(f: PriceFunction, guess: number, { lowest, highest }: PriceRange): number {
  f.at(guess);
  const uphill = f.slope > 0;
  const end = uphill ? highest : lowest;
  let near = guess;
  for (let width = guess * FIRST_STEP; ; width *= 4) {
    const far = uphill ? Math.min(end, guess + width) : Math.max(end, guess - width);
    f.at(far);
    if (f.slope > 0 !== uphill) return topBetween(f, Math.min(near, far), Math.max(near, far));
    if (far === end) return end;
    near = far;
  }
}

/** Of some prices and the one that stands, the one with the highest value; the one that stands where none is better. */
export function bestAmong(f: PriceFunction, now: number, others: readonly number[]): number {
  f.at(now);
  let best = now;
  let most = f.value;
  for (const price of others) {
    f.at(price);
    if (f.value > most) [best, most] = [price, f.value];
  }
  return best;
}

/** Where the slope falls through 0 between two prices; an end where it does not. */
function topBetween(f: PriceFunction, low: number, high: number): number {
  const falling = (price: number) => {
    f.at(price);
    return -f.slope;
  };
  if (falling(low) >= 0) return low;
  if (falling(high) <= 0) return high;
  return monotoneRoot(falling, low, high, TOLERANCE);
}
