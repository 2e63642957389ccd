/**
 * Factor times the quotient of two polynomials of one degree at x, both by Horner's rule in one pass.
 * @param upper numerator, lowest power first
 * @param lower denominator, as long
 */
export function rational(
  upper: readonly number[],
  lower: readonly number[],
  x: number,
  factor: number,
): number {
  let above = 0;
  let below = 0;
  for (let power = upper.length - 1; power >= 0; power--) {
    above = above * x + upper[power]!;
    below = below * x + lower[power]!;
  }
  return (factor * above) / below;
}
