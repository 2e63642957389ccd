import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { differencesFirst, distance } from "../../../dashboard/compare/differences.ts";
import type { Cell, Measure, MeasureRow } from "../../../dashboard/compare/measures.ts";

const cell = (value: number | null, low = value ?? 0, high = value ?? 0): Cell => ({
  strong: `${value}`,
  rest: "",
  value,
  low,
  high,
});
function row(id: string, cells: readonly (Cell | null)[]): MeasureRow {
  const measure: Measure = { id, label: id, sub: "", drawn: "words", cell: () => null };
  return { measure, cells };
}
const ids = (rows: readonly MeasureRow[]) => rows.map(({ measure }) => measure.id);

describe("how far apart figures lie", () => {
  test("is their spread over a scale that holds nought and every range", () => {
    expect(distance([cell(50), cell(100)])).toBeCloseTo(0.5);
    expect(distance([cell(-50), cell(50)])).toBeCloseTo(1);
    // 50 apart on a scale from -100 to 400.
    expect(distance([cell(50, -100, 120), cell(100, 60, 400)])).toBeCloseTo(0.1);
  });

  test("counts less the wider the ranges, and stays between 0 and 1 in any unit", () => {
    const figures = fc.array(
      fc.record({ value: fc.double({ min: -1e4, max: 1e4, noNaN: true }), half: fc.nat(1e4) }),
      {
        minLength: 2,
        maxLength: 6,
      },
    );
    fc.assert(
      fc.property(figures, fc.double({ min: 0.1, max: 100, noNaN: true }), (told, unit) => {
        const at = (wider: number, by = 1) =>
          distance(
            told.map(({ value, half }) =>
              cell(value * by, (value - half - wider) * by, (value + half + wider) * by),
            ),
          );
        expect(at(0)).toBeGreaterThanOrEqual(0);
        expect(at(0)).toBeLessThanOrEqual(1);
        expect(at(100)).toBeLessThanOrEqual(at(0));
        expect(at(0, unit)).toBeCloseTo(at(0), 9);
      }),
    );
  });

  test("is nought where all are nought, and unknown where fewer than two have a figure", () => {
    expect(distance([cell(0), cell(0)])).toBe(0);
    expect(distance([cell(3), null, cell(null)])).toBe(-1);
  });
});

describe("rows, differences first", () => {
  const near = row("near", [cell(9), cell(10)]);
  const far = row("far", [cell(1), cell(10)]);
  const words = row("words", [
    { ...cell(null), strong: "a" },
    { ...cell(null), strong: "b" },
  ]);
  const same = row("same", [cell(4), cell(4)]);

  test("the farthest apart come first, words after figures, what is the same last", () => {
    const ordered = differencesFirst([same, words, near, far]);
    expect(ids(ordered.apart)).toEqual(["far", "near", "words"]);
    expect(ids(ordered.same)).toEqual(["same"]);
  });

  test("what counts as the same is what is shown, whatever is not shown", () => {
    const alike = row("alike", [
      { ...cell(4.01), strong: "4 h" },
      { ...cell(4.02), strong: "4 h" },
    ]);
    expect(ids(differencesFirst([alike]).same)).toEqual(["alike"]);
  });

  test("a find without a figure makes no difference, and one figure alone is no agreement", () => {
    expect(ids(differencesFirst([row("two", [cell(4), null, cell(4)])]).same)).toEqual(["two"]);
    expect(ids(differencesFirst([row("one", [cell(4), null])]).apart)).toEqual(["one"]);
    expect(differencesFirst([row("none", [null, null])])).toEqual({ apart: [], same: [] });
  });
});
