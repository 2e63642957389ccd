import { DomainError } from "../domainError.ts";

/** An upper triangular matrix of a given size, packed row by row: row i holds columns i to size - 1. */
export interface UpperTriangle {
  readonly size: number;
  readonly entries: ArrayLike<number>;
}

/** Where row `row` starts in the packed entries, so that entry (row, column) is at start + column - row. */
export function rowStart(size: number, row: number): number {
  return row * size - (row * (row - 1)) / 2;
}

/**
 * Solves R x = b by back substitution.
 * @throws DomainError where a diagonal entry is 0: the columns depend on one another
 */
export function solveUpper({ size, entries }: UpperTriangle, b: ArrayLike<number>): Float64Array {
  const x = new Float64Array(b);
  for (let row = size - 1; row >= 0; row--) {
    const start = rowStart(size, row);
    let sum = x[row]!;
    for (let column = row + 1; column < size; column++) sum -= entries[start + column - row]! * x[column]!;
    x[row] = sum / pivot(entries[start]!, row);
  }
  return x;
}

/**
 * Solves R' x = b by forward substitution, R' being the transpose.
 * @throws DomainError where a diagonal entry is 0
 */
export function solveTransposed({ size, entries }: UpperTriangle, b: ArrayLike<number>): Float64Array {
  const x = new Float64Array(b);
  for (let row = 0, start = 0; row < size; start += size - row, row++) {
    const diagonal = pivot(entries[start]!, row);
    if (x[row] === 0) continue;
    const value = x[row]! / diagonal;
    x[row] = value;
    for (let column = row + 1, at = start + 1; column < size; column++, at++) {
      x[column] = x[column]! - entries[at]! * value;
    }
  }
  return x;
}

/**
 * (R'R)^-1 as a full symmetric matrix, row by row: the covariance of least-squares coefficients for unit residual variance.
 * Formed from the inverse of R, so that R'R itself, which squares the condition number, is never built.
 */
export function inverseOfGram(triangle: UpperTriangle): Float64Array {
  const { size } = triangle;
  const columns = Array.from({ length: size }, (_, index) => {
    const unit = new Float64Array(size);
    unit[index] = 1;
    return solveTransposed(triangle, unit);
  });
  const gram = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      // Column k of the inverse transpose is 0 above k.
      let sum = 0;
      for (let k = i; k < size; k++) sum += columns[i]![k]! * columns[j]![k]!;
      gram[i * size + j] = sum;
      gram[j * size + i] = sum;
    }
  }
  return gram;
}

function pivot(value: number, row: number): number {
  if (value !== 0) return value;
  throw new DomainError("out-of-domain", `diagonal entry ${row}`, value, "a number other than 0");
}
