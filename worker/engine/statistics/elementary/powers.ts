/** x^2. A runtime may take `x ** 2` through a power function that errs in the last digit, or not: the product is exactly specified. */
export function squared(x: number): number {
  return x * x;
}

/** x^3, see squared. */
export function cubed(x: number): number {
  return x * x * x;
}

/** sqrt(x^2 + y^2) for numbers whose squares neither overflow nor vanish. */
export function hypot(x: number, y: number): number {
  return Math.sqrt(x * x + y * y);
}
