import type { WeekFigures } from "./saleWeek.ts";

/** Where a path of prices stands: what Newton's step needs to know of it. */
export interface PathState {
  /** Weeks reached. */
  readonly end: number;
  readonly figures: readonly WeekFigures[];
  /** Week x node. */
  readonly reach: Float64Array;
  readonly carryingOn: Float64Array;
  /** Second derivative of the worth by each week's own price. */
  readonly curvature: Float64Array;
}

/**
 * Newton's step for all prices at once, towards the path where every slope of the worth vanishes; null where the worth is not concave there.
 * The worth's slope by the price of week t is the sum over nodes of reach(t) x G(t), G = gain' + left' x (carrying on after t); by that of an earlier week s too
 * it is the same sum with the factor left'(s) / left(s), since the price of week s changes the chance to be unsold in week t and nothing else of it.
 */
export function newtonStep({ end, figures, reach, carryingOn, curvature }: PathState): Float64Array | null {
  const nodes = figures[0]!.gain.length;
  const step = new Float64Array(end);
  const matrix = new Float64Array(end * end);
  for (let week = 0; week < end; week++) {
    const { gainSlope, leftSlope } = figures[week]!;
    const here = week * nodes;
    for (let node = 0; node < nodes; node++) {
      const pull =
        reach[here + node]! * (gainSlope[node]! + leftSlope[node]! * carryingOn[here + nodes + node]!);
      step[week]! += pull;
      for (let earlier = 0; earlier < week; earlier++) {
        const before = figures[earlier]!;
        const left = before.left[node]!;
        if (left > 0) matrix[week * end + earlier]! -= (pull * before.leftSlope[node]!) / left;
      }
    }
    matrix[week * end + week] = -curvature[week]!;
  }
  return solvePositive(matrix, step) ? step : null;
}

/**
 * Solves a positive definite system in place, by Cholesky; false where it is not positive definite.
 * @param matrix lower triangle by rows
 * @param values right-hand side, then the solution
 */
function solvePositive(matrix: Float64Array, values: Float64Array): boolean {
  const size = values.length;
  for (let row = 0; row < size; row++) {
    for (let column = 0; column <= row; column++) {
      let sum = matrix[row * size + column]!;
      for (let k = 0; k < column; k++) sum -= matrix[row * size + k]! * matrix[column * size + k]!;
      if (row > column) matrix[row * size + column] = sum / matrix[column * size + column]!;
      else if (sum > 0) matrix[row * size + row] = Math.sqrt(sum);
      else return false;
    }
  }
  for (let row = 0; row < size; row++) {
    for (let k = 0; k < row; k++) values[row]! -= matrix[row * size + k]! * values[k]!;
    values[row]! /= matrix[row * size + row]!;
  }
  for (let row = size - 1; row >= 0; row--) {
    for (let k = row + 1; k < size; k++) values[row]! -= matrix[k * size + row]! * values[k]!;
    values[row]! /= matrix[row * size + row]!;
  }
  return true;
}
