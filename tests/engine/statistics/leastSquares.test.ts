import { describe, expect, test } from "vitest";
import { leastSquares, leverage } from "../../../worker/engine/statistics/leastSquares.ts";
import {
  inverseOfGram,
  solveTransposed,
  solveUpper,
} from "../../../worker/engine/statistics/upperTriangle.ts";

const ROWS = [
  [1, 2, 1],
  [1, 3, -1],
  [1, 5, 4],
  [1, 7, 0],
  [1, 8, 2.5],
];
const Y = [3, 1, 9, 4, 8];

describe("least squares", () => {
  test("leaves residuals at right angles to every column", () => {
    const { coefficients, residualSumOfSquares } = leastSquares(ROWS, Y);
    const residuals = ROWS.map((row, i) => Y[i]! - row.reduce((sum, x, j) => sum + x * coefficients[j]!, 0));
    for (let column = 0; column < 3; column++) {
      expect(ROWS.reduce((sum, row, i) => sum + row[column]! * residuals[i]!, 0)).toBeCloseTo(0, 12);
    }
    expect(residuals.reduce((sum, r) => sum + r * r, 0)).toBeCloseTo(residualSumOfSquares, 12);
  });

  test("a row of weight two is that row twice", () => {
    const weighted = leastSquares(ROWS, Y, [1, 2, 1, 1, 1]);
    const twice = leastSquares([...ROWS, ROWS[1]!], [...Y, Y[1]!]);
    weighted.coefficients.forEach((value, i) => {
      expect(value).toBeCloseTo(twice.coefficients[i]!, 12);
    });
    expect(weighted.residualSumOfSquares).toBeCloseTo(twice.residualSumOfSquares, 12);
  });

  test("the leverages of the fit's own rows sum to the number of columns", () => {
    const { triangle } = leastSquares(ROWS, Y);
    expect(ROWS.reduce((sum, row) => sum + leverage(triangle, row), 0)).toBeCloseTo(3, 12);
  });

  test("a scale of 1e150 in one column costs no digit", () => {
    const plain = leastSquares(ROWS, Y);
    const scaled = leastSquares(
      ROWS.map(([a, b, c]) => [a!, b! * 1e150, c! * 1e-150]),
      Y,
    );
    expect(scaled.coefficients[1]! * 1e150).toBeCloseTo(plain.coefficients[1]!, 12);
    expect(scaled.standardErrors[2]! * 1e-150).toBeCloseTo(plain.standardErrors[2]!, 12);
  });

  test("columns that depend on one another, too few rows and ragged rows are refused by name", () => {
    const dependent = ROWS.map(([a, b]) => [a!, b!, 2 * a! + b!]);
    expect(() => leastSquares(dependent, Y)).toThrow("column 2 requires columns independent of one another");
    expect(() => leastSquares(ROWS.slice(0, 3), Y.slice(0, 3))).toThrow(
      "rows requires more rows than columns (3)",
    );
    expect(() => leastSquares([...ROWS, [1]], [...Y, 1])).toThrow("rows[5] requires 3 columns, got 1");
    expect(() => leastSquares(ROWS, [1])).toThrow("y requires as many entries as rows (5), got 1");
  });
});

describe("upper triangle", () => {
  // R = [[2, 1, -1], [0, 3, 4], [0, 0, 5]]
  const triangle = { size: 3, entries: [2, 1, -1, 3, 4, 5] };

  test("solves with it and with its transpose undo the product", () => {
    expect([...solveUpper(triangle, [1, 18, 15])]).toEqual([1, 2, 3]);
    expect([...solveTransposed(triangle, [2, 7, 22])]).toEqual([1, 2, 3]);
  });

  test("the inverse of its gram matrix is that", () => {
    const gram = [4, 2, -2, 2, 10, 11, -2, 11, 42];
    const inverse = inverseOfGram(triangle);
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        const entry = [0, 1, 2].reduce((sum, k) => sum + gram[3 * i + k]! * inverse[3 * k + j]!, 0);
        expect(entry).toBeCloseTo(i === j ? 1 : 0, 12);
      }
    }
  });

  test("one without full rank is refused", () => {
    expect(() => solveUpper({ size: 2, entries: [1, 1, 0] }, [1, 1])).toThrow("diagonal entry 1 requires");
  });
});
