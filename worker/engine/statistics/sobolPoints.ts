import { DomainError } from "../domainError.ts";
import { JOE_KUO } from "./sobolDirections.ts";

/** Most coordinates a point can have. */
export const MOST_DIMENSIONS = JOE_KUO.length + 1;

const DIGITS = 32;
/** 2^32. */
const WHOLE = 0x100000000;

/**
 * The first points of Sobol's sequence in the order of their binary index; point 0 is the origin. In each coordinate the first 2^k points hold one point
 * of every interval of length 2^-k.
 * @param count a power of two
 * @param dimensions 1 to MOST_DIMENSIONS
 * @returns coordinate j of point i at [i x dimensions + j], each from 0 up to but not including 1
 * @throws DomainError for another count or number of dimensions
 * Method: Sobol 1967 with the direction numbers of Joe & Kuo 2008.
 */
export function sobolPoints(count: number, dimensions: number): Float64Array {
  return fill(count, dimensions, () => 0, 0);
}

/**
 * The same points shifted digit by digit, by fixed digits of each coordinate, and set in the middle of their intervals: none lies at a corner, no coordinate
 * is 0 or 1, and each coordinate alone is a midpoint rule. Deterministic. For sums over hundreds of points in many dimensions; put what matters
 * most in the first dimensions, whose points lie most evenly.
 * Method: digital shift (Dick & Pillichshammer, Digital Nets and Sequences, 2010), its digits those of a mixed dimension number.
 */
export function shiftedSobolPoints(count: number, dimensions: number): Float64Array {
  // The digits below the points' own are left alone: they would push every point the same way.
  const own = WHOLE - WHOLE / count;
  return fill(count, dimensions, (dimension) => (mixed(dimension) & own) >>> 0, 0.5 / count);
}

function fill(
  count: number,
  dimensions: number,
  shiftOf: (dimension: number) => number,
  middle: number,
): Float64Array {
  requireSize(count, dimensions);
  const points = new Float64Array(count * dimensions);
  const digits = new Uint32Array(count);
  for (let dimension = 0; dimension < dimensions; dimension++) {
    const directions = directionsOf(dimension);
    const shift = shiftOf(dimension);
    for (let index = 1; index < count; index++) {
      const lowest = index & -index;
      digits[index] = digits[index - lowest]! ^ directions[31 - Math.clz32(lowest)]!;
    }
    for (let index = 0; index < count; index++)
      points[index * dimensions + dimension] = ((digits[index]! ^ shift) >>> 0) / WHOLE + middle;
  }
  return points;
}

/** Direction numbers as binary fractions, the first digit highest. */
function directionsOf(dimension: number): Uint32Array {
  const directions = new Uint32Array(DIGITS);
  const [coefficients, ...first] = dimension === 0 ? [0] : JOE_KUO[dimension - 1]!;
  const degree = first.length;
  for (let i = 0; i < DIGITS; i++) {
    if (degree === 0) directions[i] = 1 << (DIGITS - 1 - i);
    else if (i < degree) directions[i] = first[i]! << (DIGITS - 1 - i);
    else {
      let next = directions[i - degree]! ^ (directions[i - degree]! >>> degree);
      for (let back = 1; back < degree; back++)
        if ((coefficients! >> (degree - 1 - back)) & 1) next ^= directions[i - back]!;
      directions[i] = next;
    }
  }
  return directions;
}

/** Spreads a number over 32 digits: the finalizer of MurmurHash3 (Appleby, public domain) on multiples of the golden ratio. */
function mixed(dimension: number): number {
  let digits = Math.imul(dimension + 1, 0x9e3779b9);
  digits = Math.imul(digits ^ (digits >>> 16), 0x85ebca6b);
  digits = Math.imul(digits ^ (digits >>> 13), 0xc2b2ae35);
  return (digits ^ (digits >>> 16)) >>> 0;
}

function requireSize(count: number, dimensions: number): void {
  if (!(Number.isInteger(count) && count >= 1 && count <= WHOLE / 4 && (count & (count - 1)) === 0))
    throw new DomainError("out-of-domain", "count", count, "a power of two up to 2^30");
  if (!(Number.isInteger(dimensions) && dimensions >= 1 && dimensions <= MOST_DIMENSIONS))
    throw new DomainError(
      "out-of-domain",
      "dimensions",
      dimensions,
      `a whole number from 1 to ${MOST_DIMENSIONS}`,
    );
}
