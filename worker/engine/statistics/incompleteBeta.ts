import { DomainError } from "../domainError.ts";
import { exp } from "./elementary/exp.ts";
import { log, log1p } from "./elementary/log.ts";
import { logGamma, logGammaDrop } from "./logGamma.ts";

const MOST_TERMS = 10_000;
const TINY = 1e-300;

/**
 * Regularised incomplete beta function I_x(a, b): the chance that a beta(a, b) stays at or below x.
 * @param x 0 to 1
 * @param complement 1 - x, given apart where x is so near 1 that the difference would lose digits
 * @param logBeta log of the complete beta function of a and b, where it is at hand
 * @throws DomainError unless a > 0, b > 0, 0 <= x <= 1
 * Method: continued fraction (Abramowitz & Stegun 26.5.8) by Lentz's method, on the side where it converges fast.
 */
export function incompleteBeta(
  x: number,
  a: number,
  b: number,
  complement: number = 1 - x,
  logBeta: number | null = null,
): number {
  if (!(a > 0)) throw new DomainError("out-of-domain", "a", a, "a number above 0");
  if (!(b > 0)) throw new DomainError("out-of-domain", "b", b, "a number above 0");
  if (!(x >= 0 && x <= 1)) throw new DomainError("out-of-domain", "x", x, "a number from 0 to 1");
  if (x === 0 || complement === 0) return x === 0 ? 0 : 1;
  const ofBoth = logBeta ?? logBetaFunction(a, b);
  return x < (a + 1) / (a + b + 2)
    ? lowerSide(x, complement, a, b, ofBoth)
    : 1 - lowerSide(complement, x, b, a, ofBoth);
}

/** Logarithm of the beta function for a > 0, b > 0. */
export function logBetaFunction(a: number, b: number): number {
  return a >= b ? logGamma(b) + logGammaDrop(a, b) : logGamma(a) + logGammaDrop(b, a);
}

function lowerSide(x: number, complement: number, a: number, b: number, logBeta: number): number {
  const logX = complement < 0.5 ? log1p(-complement) : log(x);
  const logComplement = x < 0.5 ? log1p(-x) : log(complement);
  return exp(a * logX + b * logComplement - logBeta) / (a * fraction(x, a, b));
}

/** The continued fraction's denominator, so that I_x = front / (a x this). */
function fraction(x: number, a: number, b: number): number {
  let value = 1;
  let [c, d] = [1, 0];
  for (let term = 1; term <= MOST_TERMS; term++) {
    const m = term >> 1;
    const coefficient =
      term % 2 === 0
        ? (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
        : (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nonZero(1 + coefficient * d);
    c = nonZero(1 + coefficient / c);
    value *= c * d;
    if (Math.abs(c * d - 1) < 2 * Number.EPSILON) break;
  }
  return value;
}

function nonZero(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}
