import { describe, expect, test } from "vitest";
import { JOE_KUO } from "../../../worker/engine/statistics/sobolDirections.ts";
import {
  MOST_DIMENSIONS,
  shiftedSobolPoints,
  sobolPoints,
} from "../../../worker/engine/statistics/sobolPoints.ts";
import { normalQuantile } from "../../../worker/engine/statistics/standardNormal.ts";
import data from "./data.json" with { type: "json" };

const rowOf = (points: Float64Array, dimensions: number, index: number) => [
  ...points.subarray(index * dimensions, (index + 1) * dimensions),
];

describe("Sobol's points with the direction numbers of Joe & Kuo (see SOURCE.md)", () => {
  test("start as scipy's do in ten dimensions, in the order of the binary index", () => {
    const points = sobolPoints(8, 10);
    data.firstEight.forEach((row, index) => {
      expect(rowOf(points, 10, index)).toEqual(row);
    });
  });

  test("are scipy's in all 80 dimensions", () => {
    const points = sobolPoints(1024, MOST_DIMENSIONS);
    expect(MOST_DIMENSIONS).toBe(80);
    for (const { index, in1024ths } of data.of80)
      expect(rowOf(points, 80, index).map((x) => x * 1024)).toEqual(in1024ths);
  });

  test("rest on primitive polynomials, no two alike, and on odd numbers of the right size", () => {
    const polynomials = JOE_KUO.map(([inner, ...first]) => 2 ** first.length + 2 * inner! + 1);
    expect(new Set(polynomials).size).toBe(polynomials.length);
    JOE_KUO.forEach(([, ...first], row) => {
      expect(orderOfX(polynomials[row]!, first.length)).toBe(2 ** first.length - 1);
      first.forEach((m, i) => {
        expect(m % 2 === 1 && m < 2 ** (i + 1)).toBe(true);
      });
    });
  });

  test("have property A in 80 dimensions: the first digits of 80 direction numbers are independent", () => {
    expect(rankOfBinary(Array.from({ length: MOST_DIMENSIONS }, (_, j) => firstDigits(j)))).toBe(80);
  });

  test.each(data.genz)("integrate Genz's $kind with the error of scipy's points", (family) => {
    const points = sobolPoints(4096, 5);
    let sum = 0;
    for (let i = 0; i < 4096; i++) sum += GENZ[family.kind]!(rowOf(points, 5, i));
    const error = Math.abs(sum / 4096 / family.exact - 1);
    // The sum's own rounding shows in the fourth digit of an error of 10^-5.
    expect(error / family.relativeErrorOf4096).toBeCloseTo(1, 6);
  });
});

describe("the shifted points", () => {
  test("hold one point in the middle of every interval, in each of 80 coordinates", () => {
    const points = shiftedSobolPoints(256, 80);
    const middles = Array.from({ length: 256 }, (_, i) => (i + 0.5) / 256);
    for (let j = 0; j < 80; j++) {
      const coordinate = Array.from({ length: 256 }, (_, i) => points[i * 80 + j]!);
      expect(coordinate.sort((a, b) => a - b)).toEqual(middles);
    }
  });

  test("of two powers spread evenly in the plane of the first two: one in each box of area 1/256", () => {
    const points = shiftedSobolPoints(256, 80);
    for (let wide = 0; wide <= 8; wide++) {
      const boxes = new Set<number>();
      for (let i = 0; i < 256; i++)
        boxes.add(
          Math.floor(points[i * 80]! * 2 ** wide) * 256 + Math.floor(points[i * 80 + 1]! * 2 ** (8 - wide)),
        );
      expect(boxes.size).toBe(256);
    }
  });

  test("no two of the 80 coordinates go together more than in as many random points", () => {
    // 3160 pairs of 256 random points: the greatest correlation is about 0.23, the root mean square 0.0625.
    const { greatest, meanSquare } = correlations(shiftedSobolPoints(256, 80), 256, 80);
    expect(greatest).toBeLessThan(0.25);
    expect(Math.sqrt(meanSquare)).toBeLessThan(0.0625 / 2);
  });

  test("give the mean, deviation and chance of a loss of a sale less a repair", () => {
    const points = shiftedSobolPoints(1024, 2);
    const margins = Array.from({ length: 1024 }, (_, i) => {
      const price = Math.exp(5 + 0.3 * normalQuantile(points[2 * i]!));
      return price - Math.exp(4 + 0.5 * normalQuantile(points[2 * i + 1]!)) - 60;
    });
    const mean = margins.reduce((sum, margin) => sum + margin, 0) / 1024;
    const variance = margins.reduce((sum, margin) => sum + (margin - mean) ** 2, 0) / 1024;
    // Half a percent of the deviation, and 0.005 in the chance.
    expect(Math.abs(mean - 33.37648994799223)).toBeLessThan(0.005 * 57.9380521162087);
    expect(Math.abs(Math.sqrt(variance) - 57.9380521162087)).toBeLessThan(0.01 * 57.9380521162087);
    expect(Math.abs(margins.filter((margin) => margin < 0).length / 1024 - 0.2691982044408573)).toBeLessThan(
      0.005,
    );
  });

  test("refuse a size that the sequence does not have", () => {
    expect(() => sobolPoints(100, 2)).toThrow("count requires a power of two");
    expect(() => shiftedSobolPoints(64, 81)).toThrow("dimensions requires a whole number from 1 to 80");
  });
});

const { c, w } = data;
const dot = (x: readonly number[]) => x.reduce((sum, xi, i) => sum + c[i]! * xi, 0);
const over = (x: readonly number[], term: (away: number, ci: number) => number) =>
  x.reduce((sum, xi, i) => sum + term(xi - w[i]!, c[i]!), 0);

const GENZ: Readonly<Record<string, (x: readonly number[]) => number>> = {
  oscillatory: (x) => Math.cos(2 * Math.PI * w[0]! + dot(x)),
  productPeak: (x) => Math.exp(-over(x, (away, ci) => Math.log(ci ** -2 + away ** 2))),
  cornerPeak: (x) => (1 + dot(x)) ** -6,
  gaussian: (x) => Math.exp(-over(x, (away, ci) => (ci * away) ** 2)),
  continuous: (x) => Math.exp(-over(x, (away, ci) => ci * Math.abs(away))),
  discontinuous: (x) => (x[0]! > w[0]! || x[1]! > w[1]! ? 0 : Math.exp(dot(x))),
};

/** Least n above 0 with x^n = 1 modulo a polynomial over the field of two, its coefficients as binary digits. */
function orderOfX(polynomial: number, degree: number): number {
  let power = 1;
  for (let n = 1; ; n++) {
    power *= 2;
    if (power >= 2 ** degree) power ^= polynomial;
    if (power === 1 || n > 2 ** degree) return n;
  }
}

/** First binary digit of each of 80 direction numbers m / 2^k of a dimension, as the digits of one number; recurrence of Sobol 1967. */
function firstDigits(dimension: number): bigint {
  const [inner, ...first] = dimension === 0 ? [0] : JOE_KUO[dimension - 1]!;
  const m = first.map(BigInt);
  while (m.length < 80) {
    const k = m.length;
    if (dimension === 0) m.push(1n);
    else {
      let next = m[k - first.length]! ^ (m[k - first.length]! << BigInt(first.length));
      for (let back = 1; back < first.length; back++)
        if ((inner! >> (first.length - 1 - back)) & 1) next ^= m[k - back]! << BigInt(back);
      m.push(next);
    }
  }
  return m.reduce((digits, mk, k) => digits | (((mk >> BigInt(k)) & 1n) << BigInt(k)), 0n);
}

/** Rank over the field of two. */
function rankOfBinary(rows: readonly bigint[]): number {
  const pivots: bigint[] = [];
  for (const row of rows) {
    let rest = row;
    for (const pivot of pivots) if ((rest ^ pivot) < rest) rest ^= pivot;
    if (rest !== 0n) pivots.push(rest);
    pivots.sort((a, b) => (a < b ? 1 : -1));
  }
  return pivots.length;
}

function correlations(points: Float64Array, count: number, dimensions: number) {
  let greatest = 0;
  let squares = 0;
  for (let a = 0; a < dimensions; a++) {
    for (let b = 0; b < a; b++) {
      let sum = 0;
      for (let i = 0; i < count; i++)
        sum += (points[i * dimensions + a]! - 0.5) * (points[i * dimensions + b]! - 0.5);
      const correlation = (12 * sum) / count;
      greatest = Math.max(greatest, Math.abs(correlation));
      squares += correlation ** 2;
    }
  }
  return { greatest, meanSquare: squares / ((dimensions * (dimensions - 1)) / 2) };
}
