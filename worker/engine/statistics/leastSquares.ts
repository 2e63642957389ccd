import { DomainError } from "../domainError.ts";
import { squared } from "./elementary/powers.ts";
import { householder } from "./householder.ts";
import { rowStart, solveTransposed, solveUpper, type UpperTriangle } from "./upperTriangle.ts";

/** Coefficients of a linear regression with what is needed to judge and to predict with them. */
export interface LeastSquaresFit {
  readonly coefficients: Float64Array;
  readonly standardErrors: Float64Array;
  /** sqrt(RSS / (rows - columns)), of a row of weight 1. */
  readonly residualSd: number;
  readonly residualSumOfSquares: number;
  readonly degreesOfFreedom: number;
  /** R of the weighted design: the square root of the information matrix. */
  readonly triangle: UpperTriangle;
}

/** Smallest share of its norm that may be left of a column once those before it are taken out. */
const INDEPENDENT = 1e-13;

/**
 * Ordinary or weighted least squares: the b that minimises the sum of weight x (y - x'b)^2.
 * @param rows the design, all rows of one length, more rows than columns
 * @param y one response for each row
 * @param weights inverse variances up to a factor, above 0; all 1 where left out
 * @throws DomainError for sizes that do not fit, or columns that depend on one another
 * Method: Householder QR, never the normal equations, which square the condition number.
 */
export function leastSquares(
  rows: readonly ArrayLike<number>[],
  y: ArrayLike<number>,
  weights?: ArrayLike<number>,
): LeastSquaresFit {
  const size = rows[0]?.length ?? 0;
  requireSizes(rows, y, size);
  const root = (row: number) => (weights === undefined ? 1 : Math.sqrt(weights[row]!));
  const columns = Array.from({ length: size }, (_, column) =>
    Float64Array.from(rows, (row, index) => root(index) * row[column]!),
  );
  const response = Float64Array.from(y, (value, index) => root(index) * value);
  const { triangle, rotated, residualSumOfSquares } = householder(columns, response);
  requireIndependent(triangle);
  const coefficients = solveUpper(triangle, rotated);
  const degreesOfFreedom = rows.length - size;
  const residualSd = Math.sqrt(residualSumOfSquares / degreesOfFreedom);
  const standardErrors = coefficients.map((_, column) => residualSd * unitError(triangle, column));
  return { coefficients, standardErrors, residualSd, residualSumOfSquares, degreesOfFreedom, triangle };
}

/**
 * Leverage x'(X'X)^-1 x of a row: how far it lies from the rows of the fit; its mean over them is columns / rows.
 * Give a weighted row, multiplied by the root of its weight, for the leverage in a weighted fit.
 */
export function leverage(triangle: UpperTriangle, row: ArrayLike<number>): number {
  let sum = 0;
  for (const value of solveTransposed(triangle, row)) sum += value * value;
  return sum;
}

function unitError(triangle: UpperTriangle, column: number): number {
  const unit = new Float64Array(triangle.size);
  unit[column] = 1;
  return Math.sqrt(leverage(triangle, unit));
}

function requireSizes(rows: readonly ArrayLike<number>[], y: ArrayLike<number>, size: number): void {
  const odd = rows.findIndex((row) => row.length !== size);
  if (odd >= 0) throw new DomainError("out-of-domain", `rows[${odd}]`, rows[odd]!.length, `${size} columns`);
  if (size === 0 || rows.length <= size) {
    throw new DomainError("out-of-domain", "rows", rows.length, `more rows than columns (${size})`);
  }
  if (y.length !== rows.length) {
    throw new DomainError("out-of-domain", "y", y.length, `as many entries as rows (${rows.length})`);
  }
}

/** A column of R has the norm of the design's column; its diagonal entry is what the columns before leave of it. */
function requireIndependent({ size, entries }: UpperTriangle): void {
  for (let column = 0; column < size; column++) {
    let square = 0;
    for (let row = 0; row <= column; row++) square += squared(entries[rowStart(size, row) + column - row]!);
    if (entries[rowStart(size, column)]! > INDEPENDENT * Math.sqrt(square)) continue;
    const value = "one that depends on those before it";
    throw new DomainError("out-of-domain", `column ${column}`, value, "columns independent of one another");
  }
}
