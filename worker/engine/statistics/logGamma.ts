import { log, log1p } from "./elementary/log.ts";

const SHIFT_TO = 10;
const HALF_LOG_TWO_PI = 0.5 * log(2 * Math.PI);
// Bernoulli numbers over 2k(2k - 1), Abramowitz & Stegun 6.1.40.
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156, -3617 / 122400];

/** Logarithm of the gamma function for x > 0, by recurrence up to 10 and Stirling's series from there (Abramowitz & Stegun 6.1.41). */
export function logGamma(x: number): number {
  let [shifted, product] = [x, 1];
  while (shifted < SHIFT_TO) {
    product *= shifted;
    shifted += 1;
  }
  return (shifted - 0.5) * log(shifted) - shifted + HALF_LOG_TWO_PI + stirlingRest(shifted) - log(product);
}

/** What Stirling's formula leaves out of log gamma at x >= 10. */
function stirlingRest(x: number): number {
  const inverseSquare = 1 / (x * x);
  let sum = 0;
  for (let k = STIRLING.length - 1; k >= 0; k--) sum = sum * inverseSquare + STIRLING[k]!;
  return sum / x;
}

/**
 * log gamma(x) - log gamma(x + b) for x > 0, b > 0, without the cancellation of two large logarithms.
 */
export function logGammaDrop(x: number, b: number): number {
  if (x < SHIFT_TO) return logGamma(x) - logGamma(x + b);
  return b - (x - 0.5) * log1p(b / x) - b * log(x + b) + (stirlingRest(x) - stirlingRest(x + b));
}
