import { expm1 } from "./expm1.ts";
import { log1p } from "./log.ts";

/**
 * Hyperbolic sine, accurate near 0, within a few units in the last place, the same digits in every runtime.
 * @param x any number; the largest results overflow
 */
export function sinh(x: number): number {
  const t = expm1(Math.abs(x));
  // At t = Infinity the fraction is 1.
  const size = 0.5 * (t + (t === Infinity ? 1 : t / (t + 1)));
  return x < 0 ? -size : x === 0 ? x : size;
}

/**
 * Inverse of the hyperbolic sine, accurate near 0, within a few units in the last place, the same digits in every runtime.
 * @param x any number up to 1e150 in size
 */
export function asinh(x: number): number {
  const size = Math.abs(x);
  const square = size * size;
  const result = log1p(size + square / (1 + Math.sqrt(1 + square)));
  return x < 0 ? -result : x === 0 ? x : result;
}
