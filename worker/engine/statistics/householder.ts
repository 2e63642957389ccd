import { exponentOf } from "./elementary/exponent.ts";
import { squared } from "./elementary/powers.ts";
import { powerOfTwo } from "./elementary/powersOfTwo.ts";
import { rowStart, type UpperTriangle } from "./upperTriangle.ts";

/** Result of an orthogonal reduction of [X | y]: R, Q'y, and what of y lies outside the span of X. */
export interface OrthogonalReduction {
  readonly triangle: UpperTriangle;
  /** First `size` entries of Q'y. */
  readonly rotated: Float64Array;
  /** Sum of squared residuals. */
  readonly residualSumOfSquares: number;
}

/**
 * QR factor of a matrix by Householder reflections, applied to y on the way. The diagonal of R comes out positive.
 * Columns are first scaled by powers of two to norms between sqrt(1/2) and sqrt(2), which costs no digit and keeps squares in range.
 * @param columns the matrix by columns, at least as many rows as columns; overwritten
 * @param y as long as a column; overwritten
 * Source: Golub & Van Loan, Matrix Computations, algorithm 5.2.1.
 */
export function householder(columns: readonly Float64Array[], y: Float64Array): OrthogonalReduction {
  const size = columns.length;
  const scales = columns.map(scaleToOne);
  const entries = new Float64Array((size * (size + 1)) / 2);
  for (let k = 0; k < size; k++) {
    const pivot = columns[k]!;
    const diagonal = reflector(pivot, k);
    const later = columns.slice(k + 1);
    for (const column of later) reflect(pivot, column, k);
    reflect(pivot, y, k);
    // A reflection leaves the diagonal with the opposite sign of the pivot: turn the row so that it is positive.
    const sign = diagonal < 0 ? -1 : 1;
    const start = rowStart(size, k);
    entries[start] = sign * diagonal * scales[k]!;
    later.forEach((column, index) => {
      entries[start + index + 1] = sign * column[k]! * scales[k + 1 + index]!;
    });
    y[k]! *= sign;
  }
  let residualSumOfSquares = 0;
  for (let row = size; row < y.length; row++) residualSumOfSquares += squared(y[row]!);
  return { triangle: { size, entries }, rotated: y.slice(0, size), residualSumOfSquares };
}

function scaleToOne(column: Float64Array): number {
  const length = norm(column, 0);
  if (length === 0) return 1;
  const scale = powerOfTwo(Math.min(1023, exponentOf(length)));
  for (let row = 0; row < column.length; row++) column[row]! /= scale;
  return scale;
}

/** Turns the part of the column from row k into the reflector v, scaled so that v'v = 2; returns R's diagonal entry. */
function reflector(column: Float64Array, k: number): number {
  const length = norm(column, k);
  if (length === 0) return 0;
  const diagonal = column[k]! > 0 ? -length : length;
  column[k]! -= diagonal;
  const scale = Math.sqrt(length * Math.abs(column[k]!));
  for (let row = k; row < column.length; row++) column[row]! /= scale;
  return diagonal;
}

function reflect(v: Float64Array, column: Float64Array, k: number): void {
  let sum = 0;
  for (let row = k; row < v.length; row++) sum += v[row]! * column[row]!;
  if (sum === 0) return;
  for (let row = k; row < v.length; row++) column[row]! -= sum * v[row]!;
}

function norm(column: Float64Array, from: number): number {
  let largest = 0;
  for (let row = from; row < column.length; row++) largest = Math.max(largest, Math.abs(column[row]!));
  if (largest === 0) return 0;
  let sum = 0;
  for (let row = from; row < column.length; row++) sum += squared(column[row]! / largest);
  return largest * Math.sqrt(sum);
}
