/** Value of a polynomial at x by Horner's rule; coefficients lowest power first. */
export function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (let power = coefficients.length - 1; power >= 0; power--) value = value * x + coefficients[power]!;
  return value;
}
