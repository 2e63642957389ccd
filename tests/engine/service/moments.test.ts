import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Moments, NOTHING, sum, times, withChance } from "../../../worker/engine/service/moments.ts";

const SEED = 20261125;
const chance = fc.double({ min: 0, max: 1, noNaN: true });

/** A cost that takes one of a few values, each with its chance. */
type Lottery = readonly (readonly [chance: number, value: number])[];

const lottery: fc.Arbitrary<Lottery> = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: -50, max: 200 })), {
    minLength: 1,
    maxLength: 4,
  })
  .map((rows) => {
    const all = rows.reduce((total, [weight]) => total + weight, 0);
    return rows.map(([weight, value]) => [weight / all, value] as const);
  });

/** Mean and variance by adding up over every outcome. */
function momentsOf(outcomes: Lottery): Moments {
  const mean = outcomes.reduce((total, [p, value]) => total + p * value, 0);
  const variance = outcomes.reduce((total, [p, value]) => total + p * (value - mean) ** 2, 0);
  return { mean, variance };
}

function expectSame(found: Moments, wanted: Moments): void {
  expect(found.mean).toBeCloseTo(wanted.mean, 8);
  expect(found.variance).toBeCloseTo(wanted.variance, 6);
}

describe("means and variances", () => {
  test("of a sum are those of every pair of outcomes of two independent costs", () => {
    fc.assert(
      fc.property(lottery, lottery, (one, other) => {
        const joint = one.flatMap(([p, a]) => other.map(([q, b]) => [p * q, a + b] as const));
        expectSame(sum(momentsOf(one), momentsOf(other)), momentsOf(joint));
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(sum()).toEqual(NOTHING);
  });

  test("of a multiple of one cost: twice the same price spreads twice as wide, not sqrt(2) times", () => {
    fc.assert(
      fc.property(lottery, fc.integer({ min: 0, max: 6 }), (one, factor) => {
        const many = one.map(([p, value]) => [p, factor * value] as const);
        expectSame(times(momentsOf(one), factor), momentsOf(many));
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("of a cost that comes with a chance follow the law of total variance", () => {
    fc.assert(
      fc.property(lottery, chance, (one, p) => {
        const maybe: Lottery = [[1 - p, 0], ...one.map(([q, value]) => [p * q, value] as const)];
        expectSame(withChance(momentsOf(one), p), momentsOf(maybe));
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("by hand: a cost of 40, sure of its amount, with a chance of 0.25 has mean 10 and variance 300", () => {
    expect(withChance({ mean: 40, variance: 0 }, 0.25)).toEqual({ mean: 10, variance: 300 });
  });

  test("a chance of 0 leaves nothing, a chance of 1 the cost itself", () => {
    const cost = { mean: 7, variance: 3 };
    expect(withChance(cost, 0)).toEqual(NOTHING);
    expect(withChance(cost, 1)).toEqual(cost);
  });
});
