import { DomainError } from "../domainError.ts";
import { foldRow, type SquareRootInformation } from "./givens.ts";
import { rowStart, solveTransposed, solveUpper, type UpperTriangle } from "./upperTriangle.ts";

/**
 * What is believed of a linear regression y = x'b + e, e ~ N(0, s^2 / weight): b given s^2 is normal with mean m and covariance s^2 V,
 * s^2 is inverse gamma (shape, scale). Kept as the root R of V^-1 and as R m, never as V.
 */
export interface ConjugateRegression extends SquareRootInformation {
  /** a. */
  readonly shape: number;
  /** b. */
  readonly scale: number;
}

/** One observation. */
export interface RegressionRow {
  readonly x: ArrayLike<number>;
  readonly y: number;
  /** Inverse variance in units of s^2, above 0. */
  readonly precision: number;
  /** How often the observation counts; 1 where left out. Down-weights an old one: its likelihood to this power. */
  readonly count?: number;
}

/** Student's t moved and scaled: location + scale x t. */
export interface ScaledStudentT {
  readonly location: number;
  readonly scale: number;
  readonly degreesOfFreedom: number;
}

/**
 * Nothing believed: R = 0, b = 0 and a = -k/2, so that what follows is ordinary least squares with n - k degrees of freedom.
 * (a = 0 would leave n of them.)
 */
export function flatPrior(size: number): ConjugateRegression {
  const entries = new Float64Array((size * (size + 1)) / 2);
  return { size, entries, rotated: new Float64Array(size), shape: -size / 2, scale: 0 };
}

/**
 * A belief from its mean, the root R of the inverse of V, and the shape and scale of s^2.
 * @throws DomainError where shape or scale are not above 0
 */
export function conjugatePrior(
  mean: ArrayLike<number>,
  triangle: UpperTriangle,
  shape: number,
  scale: number,
): ConjugateRegression {
  if (!(shape > 0)) throw new DomainError("out-of-domain", "shape", shape, "a number above 0");
  if (!(scale > 0)) throw new DomainError("out-of-domain", "scale", scale, "a number above 0");
  const { size } = triangle;
  const entries = new Float64Array(triangle.entries);
  const rotated = new Float64Array(size);
  for (let row = 0; row < size; row++) {
    const start = rowStart(size, row);
    let sum = 0;
    for (let column = row; column < size; column++) sum += entries[start + column - row]! * mean[column]!;
    rotated[row] = sum;
  }
  return { size, entries, rotated, shape, scale };
}

/**
 * The belief after more observations; the one before is left as it was. Folding in one at a time or all at once is the same up to rounding.
 * Normal-inverse-gamma conjugacy: R'R grows by count x precision x x', a by count / 2, b by half the squared remainder.
 * Rows that share one x (the same array) and precision are folded in once, as their mean: weight and scatter about it say all that they do.
 * @throws DomainError for a row of another length, a precision or count not above 0, a number that is not finite
 */
export function learn(belief: ConjugateRegression, rows: Iterable<RegressionRow>): ConjugateRegression {
  const { size } = belief;
  const information = { size, entries: belief.entries.slice(), rotated: belief.rotated.slice() };
  let { shape, scale } = belief;
  const weighted = new Float64Array(size);
  for (const { x, precision, count, mean, scatter } of gathered(size, rows)) {
    const root = Math.sqrt(precision * count);
    for (let column = 0; column < size; column++) weighted[column] = root * x[column]!;
    const left = foldRow(information, weighted, root * mean);
    shape += count / 2;
    scale += (left * left + precision * scatter) / 2;
  }
  return { ...information, shape, scale };
}

/** Observations at one x: how many, their mean, and the sum of squares about it. */
interface Gathered {
  readonly x: ArrayLike<number>;
  readonly precision: number;
  count: number;
  mean: number;
  scatter: number;
}

/** Weighted mean and scatter by x, one observation at a time (West 1979), so that nothing cancels. */
function gathered(size: number, rows: Iterable<RegressionRow>): Iterable<Gathered> {
  const byX = new Map<ArrayLike<number>, Gathered[]>();
  const all: Gathered[] = [];
  for (const { x, y, precision, count = 1 } of rows) {
    requireRow(size, x, y, precision, count);
    const same = byX.get(x);
    const found = same?.find((one) => one.precision === precision);
    if (found === undefined) {
      const first: Gathered = { x, precision, count, mean: y, scatter: 0 };
      all.push(first);
      if (same === undefined) byX.set(x, [first]);
      else same.push(first);
      continue;
    }
    const miss = y - found.mean;
    found.count += count;
    found.mean += (miss * count) / found.count;
    found.scatter += count * miss * (y - found.mean);
  }
  return all;
}

/** m: the expected coefficients. Throws DomainError where the observations leave one undetermined. */
export function expectedCoefficients(belief: ConjugateRegression): Float64Array {
  return solveUpper(belief, belief.rotated);
}

/** x'V x: variance of x'b in units of s^2. */
export function coefficientVariance(belief: ConjugateRegression, x: ArrayLike<number>): number {
  let sum = 0;
  for (const value of solveTransposed(belief, x)) sum += value * value;
  return sum;
}

/**
 * Predictive distribution of the next y at x: Student's t with 2a degrees of freedom, location x'm, scale^2 = b/a (1/precision + x'V x).
 * Its exponential has no mean: where a mean of exp(y) is wanted, take the log-normal of the same location and variance (matchingLogNormal).
 */
export function predictive(belief: ConjugateRegression, x: ArrayLike<number>, precision = 1): ScaledStudentT {
  const coefficients = expectedCoefficients(belief);
  let location = 0;
  for (let column = 0; column < belief.size; column++) location += x[column]! * coefficients[column]!;
  const { shape, scale } = belief;
  const variance = (scale / shape) * (1 / precision + coefficientVariance(belief, x));
  return { location, scale: Math.sqrt(variance), degreesOfFreedom: 2 * shape };
}

function requireRow(size: number, x: ArrayLike<number>, y: number, precision: number, count: number): void {
  if (x.length !== size) throw new DomainError("out-of-domain", "x", x.length, `${size} columns`);
  for (let column = 0; column < size; column++) {
    const value = x[column]!;
    if (!Number.isFinite(value))
      throw new DomainError("out-of-domain", `x[${column}]`, value, "a finite number");
  }
  if (!Number.isFinite(y)) throw new DomainError("out-of-domain", "y", y, "a finite number");
  if (!(precision > 0 && Number.isFinite(precision)))
    throw new DomainError("out-of-domain", "precision", precision, "a number above 0");
  if (!(count > 0 && Number.isFinite(count)))
    throw new DomainError("out-of-domain", "count", count, "a number above 0");
}
