import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chainElongation } from "../../../worker/engine/inspection/chainElongation.ts";
import { levelNeeded, rearSprockets } from "../../../worker/engine/inspection/neededLevel.ts";
import { SMALL_CHECKS, STEEL_TOURER } from "./smallTables.ts";

describe("chain elongation", () => {
  test("does not depend on how many pitches are measured", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 120 }),
        fc.double({ min: -0.9, max: 3, noNaN: true }),
        (n, percent) => {
          expect(chainElongation(n * 12.7 * (1 + percent / 100), n, 12.7, -1)).toBeCloseTo(percent, 9);
        },
      ),
    );
  });

  test("a chain shorter than new by more than one per cent was counted wrong", () => {
    expect(chainElongation(302, 24, 12.7, -1)).toBeCloseTo(-0.919, 3);
    expect(() => chainElongation(301, 24, 12.7, -1)).toThrow(/at least 301.8 mm.*count the pitches/);
  });
});

describe("the level from which a new chain is needed", () => {
  const chain = SMALL_CHECKS.find((one) => one.id === "chain")!;

  test("follows the count of sprockets, with a row for an unknown count", () => {
    expect([1, 7, 8, 9, 12, undefined].map((count) => levelNeeded(chain, count))).toEqual([
      "bad",
      "bad",
      "bad",
      "poor",
      "poor",
      "poor",
    ]);
  });

  test("does not exist for checks whose need is the same on every bike", () => {
    expect(levelNeeded(SMALL_CHECKS[0]!, 7)).toBeNull();
  });

  test("a count that no row holds is a fault of the table", () => {
    expect(() => levelNeeded(chain, 0)).toThrow(/a row for every count/);
  });

  test("a hub gear has one sprocket, a derailleur an unknown number until it is counted", () => {
    expect(rearSprockets({ ...STEEL_TOURER, drivetrain: "hub-gear" }, {})).toBe(1);
    expect(rearSprockets(STEEL_TOURER, {})).toBeUndefined();
    expect(rearSprockets(STEEL_TOURER, { rearSprockets: 6 })).toBe(6);
  });
});
