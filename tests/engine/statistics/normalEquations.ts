import type {
  ConjugateRegression,
  RegressionRow,
} from "../../../worker/engine/statistics/conjugateRegression.ts";

/** A normal-inverse-gamma posterior as textbooks write it. */
export interface TextbookPosterior {
  readonly mean: readonly number[];
  /** V: covariance of the coefficients for s^2 = 1, full. */
  readonly covariance: readonly (readonly number[])[];
  readonly shape: number;
  readonly scale: number;
}

/**
 * The textbook's way, as a rival to the engine's: V^-1 = V0^-1 + X'WX, m = V (V0^-1 m0 + X'Wy), a = a0 + n/2,
 * b = b0 + (y'Wy + m0'V0^-1 m0 - m'V^-1 m)/2. Squares the condition number: for well-conditioned problems only.
 */
export function normalEquations(
  prior: ConjugateRegression,
  rows: readonly RegressionRow[],
): TextbookPosterior {
  const { size } = prior;
  const root = fullTriangle(prior);
  const precision = root.map((_, i) =>
    root.map((_, j) => root.reduce((sum, row) => sum + row[i]! * row[j]!, 0)),
  );
  const moment = root.map((_, i) => root.reduce((sum, row, k) => sum + row[i]! * prior.rotated[k]!, 0));
  let square = prior.rotated.reduce((sum, value) => sum + value * value, 0);
  let { shape } = prior;
  for (const { x, y, precision: own, count = 1 } of rows) {
    const weight = own * count;
    for (let i = 0; i < size; i++) {
      if (x[i] === 0) continue;
      moment[i]! += weight * x[i]! * y;
      for (let j = 0; j < size; j++) precision[i]![j]! += weight * x[i]! * x[j]!;
    }
    square += weight * y * y;
    shape += count / 2;
  }
  const covariance = inverse(precision);
  const mean = covariance.map((row) => row.reduce((sum, value, j) => sum + value * moment[j]!, 0));
  const explained = mean.reduce((sum, value, i) => sum + value * moment[i]!, 0);
  return { mean, covariance, shape, scale: prior.scale + (square - explained) / 2 };
}

/** R with its noughts, from the packed rows. */
function fullTriangle({ size, entries }: ConjugateRegression): number[][] {
  let at = 0;
  return Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => (j < i ? 0 : entries[at++]!)),
  );
}

/** Gauss and Jordan, pivots sought in the column. */
function inverse(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length;
  const work = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let row = column + 1; row < size; row++)
      if (Math.abs(work[row]![column]!) > Math.abs(work[best]![column]!)) best = row;
    [work[column], work[best]] = [work[best]!, work[column]!];
    const pivot = work[column]!;
    const divisor = pivot[column]!;
    for (let j = 0; j < 2 * size; j++) pivot[j]! /= divisor;
    for (let row = 0; row < size; row++) {
      const factor = work[row]![column]!;
      if (row === column || factor === 0) continue;
      for (let j = column; j < 2 * size; j++) work[row]![j]! -= factor * pivot[j]!;
    }
  }
  return work.map((row) => row.slice(size));
}
