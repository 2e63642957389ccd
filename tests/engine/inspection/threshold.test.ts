import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { borderline, levelAt } from "../../../worker/engine/inspection/threshold.ts";

const RISING = [
  { level: "good", from: 0, below: 2 },
  { level: "poor", from: 2, below: 4 },
  { level: "bad", from: 4, below: null },
];
const ROTOR = [
  { level: "worn", from: 0, below: 1.5 },
  { level: "near", from: 1.5, below: 1.6 },
  { level: "ok", from: 1.6, below: null },
];
const rising = (level: string) => ["good", "poor", "bad"].indexOf(level);
const rotor = (level: string) => ["ok", "near", "worn"].indexOf(level);

describe("limits", () => {
  test("a limit belongs to the level above it", () => {
    expect(["good", "poor", "poor", "bad"]).toEqual(
      [1.999, 2, 3.999, 4].map((value) => levelAt(RISING, value)),
    );
  });

  test("a value that no limit holds is a fault of the table, not a level", () => {
    expect(() => levelAt(RISING, -1)).toThrow(/requires a level for every value/);
  });

  test("a value is borderline exactly while another level lies within one reading error", () => {
    const errors = fc.integer({ min: 1, max: 80 }).map((n) => n / 100);
    const values = fc.integer({ min: 0, max: 600 }).map((n) => n / 100);
    fc.assert(
      fc.property(values, errors, (value, error) => {
        const within = [2, 4].some((limit) => Math.abs(value - limit) <= error + 1e-12);
        expect(borderline(RISING, value, error, rising) !== null).toBe(within);
      }),
    );
  });

  test("the level of the value is always one of the two in question, where only one limit is near", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6, noNaN: true }), (value) => {
        const pair = borderline(RISING, value, 0.9, rising);
        if (pair !== null) expect(pair).toContain(levelAt(RISING, value));
      }),
    );
  });

  test("the milder level stands first, whichever way the limits run", () => {
    expect(borderline(RISING, 3.9, 0.5, rising)).toEqual(["poor", "bad"]);
    expect(borderline(ROTOR, 1.48, 0.05, rotor)).toEqual(["near", "worn"]);
  });

  test("midway between two limits the worse one counts", () => {
    expect(borderline(ROTOR, 1.55, 0.05, rotor)).toEqual(["near", "worn"]);
  });

  test("an exact reading, a count, is never borderline", () => {
    expect(borderline(RISING, 2, 0, rising)).toBeNull();
  });
});
