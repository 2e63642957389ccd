import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { updated } from "../../../worker/engine/statistics/bayes.ts";

const chance = fc.double({ min: 0, max: 1, noNaN: true });

describe("Bayes's rule", () => {
  test("by hand: a test of 0.9 and 0.2 for something that is there in 1 of 4", () => {
    const { chance, weights } = updated(Float64Array.of(0.25, 0.75), [0.9, 0.2]);
    expect(chance).toBeCloseTo(0.375, 12);
    expect([...weights]).toEqual([0.6, 0.4].map((one) => expect.closeTo(one, 12)));
  });

  test("averages back to what was believed, over a sign and its absence", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(chance, chance), { minLength: 1, maxLength: 16 }), (states) => {
        const whole = states.reduce((sum, [one]) => sum + one, 0) || 1;
        const weights = Float64Array.from(states, ([one]) => one / whole);
        const seen = updated(
          weights,
          states.map(([, likelihood]) => likelihood),
        );
        const not = updated(
          weights,
          states.map(([, likelihood]) => 1 - likelihood),
        );
        weights.forEach((one, z) => {
          expect(seen.chance * seen.weights[z]! + not.chance * not.weights[z]!).toBeCloseTo(one, 9);
        });
      }),
    );
  });

  test("leaves everything as it was where what was seen cannot be", () => {
    expect(updated(Float64Array.of(0.5, 0.5), [0, 0])).toEqual({
      chance: 0,
      weights: Float64Array.of(0.5, 0.5),
    });
  });
});
