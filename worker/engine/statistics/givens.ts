/** What a square-root information filter holds: R and Q'y, overwritten as rows are folded in. */
export interface SquareRootInformation {
  readonly size: number;
  /** Upper triangle R packed row by row, row i from its diagonal on; R'R is the information matrix. */
  readonly entries: Float64Array;
  /** Q'y: R times the coefficients. */
  readonly rotated: Float64Array;
}

/**
 * Folds one row of a regression into R and Q'y by Givens rotations and returns what of its response is left: its square is what the
 * row adds to the residual sum of squares. The normal equations, which square the condition number, are never formed. Noughts cost
 * nothing: a row that meets few rows of R is folded in quickly, so sparse columns belong first.
 * @param information overwritten
 * @param row the weighted row, `size` long; overwritten
 * @param response its weighted response
 * Source: Golub & Van Loan, Matrix Computations, section 5.1.8; Gentleman 1974 for the regression.
 */
export function foldRow(information: SquareRootInformation, row: Float64Array, response: number): number {
  const { size, entries, rotated } = information;
  let left = response;
  let start = 0;
  for (let pivot = 0; pivot < size; start += size - pivot, pivot++) {
    const incoming = row[pivot]!;
    if (incoming === 0) continue;
    const diagonal = entries[start]!;
    const length = norm(Math.abs(diagonal), Math.abs(incoming));
    const cosine = diagonal / length;
    const sine = incoming / length;
    entries[start] = length;
    for (let column = pivot + 1, at = start + 1; column < size; column++, at++) {
      const kept = entries[at]!;
      const folded = row[column]!;
      entries[at] = cosine * kept + sine * folded;
      row[column] = cosine * folded - sine * kept;
    }
    const before = rotated[pivot]!;
    rotated[pivot] = cosine * before + sine * left;
    left = cosine * left - sine * before;
  }
  return left;
}

/** sqrt(a^2 + b^2) without over- or underflow; Math.hypot takes ten times as long. */
function norm(a: number, b: number): number {
  const [large, small] = a > b ? [a, b] : [b, a];
  const ratio = small / large;
  return large * Math.sqrt(1 + ratio * ratio);
}
