import { exp } from "../../statistics/elementary/exp.ts";
import { log } from "../../statistics/elementary/log.ts";
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
const SCALE = 20;
/** A smaller share of the price ends the search: the value is flat there, and Newton's steps for all prices together do the rest. */
const TOLERANCE = 1e-5;
/** Share of the price by which the guess of the sweep before is expected to be off. */
const FIRST_STEP = 1e-3;

/** The price that stands, where none on a scale over the range is better; else the best of the scale, refined to where the slope vanishes beside it. */
export function bestOnScale(f: PriceFunction, now: number, { lowest, highest }: PriceRange): number {
  const step = log(highest / lowest) / SCALE;
  const price = (index: number) => lowest * exp(step * Math.min(SCALE, Math.max(0, index)));
  f.at(now);
  let most = f.value;
  let best = Number.NaN;
  for (let index = 0; index <= SCALE; index++) {
    f.at(price(index));
    if (f.value > most) [best, most] = [index, f.value];
  }
  if (Number.isNaN(best)) return now;
  return bestAmong(f, price(best), [topBetween(f, price(best - 1), price(best + 1))]);
}

/** The price uphill of a guess at which the slope falls through 0, or the end of the range; the guess, where neither is better. */
export function bestNear(f: PriceFunction, guess: number, { lowest, highest }: PriceRange): number {
  f.at(guess);
  const uphill = f.slope > 0;
  const end = uphill ? highest : lowest;
  let near = guess;
  for (let width = guess * FIRST_STEP; ; width *= 4) {
    const far = uphill ? Math.min(end, guess + width) : Math.max(end, guess - width);
    f.at(far);
    if (f.slope > 0 !== uphill)
      return bestAmong(f, guess, [topBetween(f, Math.min(near, far), Math.max(near, far))]);
    if (far === end) return bestAmong(f, guess, [end]);
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
