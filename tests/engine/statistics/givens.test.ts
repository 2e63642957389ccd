import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { foldRow } from "../../../worker/engine/statistics/givens.ts";
import { leastSquares } from "../../../worker/engine/statistics/leastSquares.ts";
import { anyRegression } from "./anyRegression.ts";

function nothing(size: number) {
  return {
    size,
    entries: new Float64Array((size * (size + 1)) / 2),
    rotated: new Float64Array(size),
  };
}

/** R'R, R'(Q'y) and the squared length of Q'y, which no rotation may change but by the row's own part. */
function products({ size, entries, rotated }: ReturnType<typeof nothing>) {
  const at = (row: number, column: number) =>
    column < row ? 0 : entries[row * size - (row * (row - 1)) / 2 + column - row]!;
  const rows = Array.from({ length: size }, (_, row) => row);
  return {
    gram: rows.map((i) => rows.map((j) => rows.reduce((sum, k) => sum + at(k, i) * at(k, j), 0))),
    moment: rows.map((i) => rows.reduce((sum, k) => sum + at(k, i) * rotated[k]!, 0)),
    square: rotated.reduce((sum, value) => sum + value * value, 0),
  };
}

describe("folding a row in by rotations", () => {
  test("adds x x' to R'R, x y to R'(Q'y), and splits y^2 between Q'y and what is left", () => {
    fc.assert(
      fc.property(anyRegression, ({ size, rows }) => {
        const information = nothing(size);
        for (const { x, y } of rows) {
          const before = products(information);
          const left = foldRow(information, Float64Array.from(x), y);
          const after = products(information);
          x.forEach((one, i) => {
            x.forEach((other, j) => {
              expect(after.gram[i]![j]! - before.gram[i]![j]!).toBeCloseTo(one * other, 9);
            });
            expect(after.moment[i]! - before.moment[i]!).toBeCloseTo(one * y, 9);
          });
          expect(after.square + left * left - before.square).toBeCloseTo(y * y, 9);
        }
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  test("leaves R with a diagonal that is not negative, from the first row on", () => {
    const information = nothing(2);
    foldRow(information, Float64Array.of(-3, 1), 2);
    expect([...information.entries]).toEqual([3, -1, 0]);
    expect([...information.rotated]).toEqual([-2, 0]);
  });

  test("what is left of the responses sums to the residual squares of least squares", () => {
    const rows = [
      [1, 2],
      [1, 3],
      [1, 5],
      [1, 8],
    ];
    const y = [3, 1, 9, 8];
    const information = nothing(2);
    const left = rows.reduce(
      (sum, row, index) => sum + foldRow(information, Float64Array.from(row), y[index]!) ** 2,
      0,
    );
    expect(left).toBeCloseTo(leastSquares(rows, y).residualSumOfSquares, 12);
  });

  test("a row of noughts changes nothing, and its response is left whole", () => {
    const information = nothing(2);
    foldRow(information, Float64Array.of(1, 2), 3);
    const before = structuredClone(information);
    expect(foldRow(information, new Float64Array(2), 5)).toBe(5);
    expect(information).toEqual(before);
  });

  test("entries of 1e200 and 1e-200 neither overflow nor vanish", () => {
    const information = nothing(1);
    foldRow(information, Float64Array.of(3e200), 0);
    foldRow(information, Float64Array.of(4e200), 0);
    expect(information.entries[0]! / 5e200).toBeCloseTo(1, 14);
    const small = nothing(1);
    foldRow(small, Float64Array.of(3e-200), 0);
    foldRow(small, Float64Array.of(4e-200), 0);
    expect(small.entries[0]! / 5e-200).toBeCloseTo(1, 14);
  });
});
