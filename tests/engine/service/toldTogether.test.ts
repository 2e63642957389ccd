import { describe, expect, test } from "vitest";
import { toldTogether } from "../../../worker/engine/service/toldTogether.ts";
import { NO_WAY, type Uncertainty } from "../../../worker/engine/service/uncertainty.ts";

const ONE_CLASS = Float64Array.of(1);

function telling(of: string, chance: number, penalty: number, told: number): Uncertainty {
  const chances = Float64Array.of(chance);
  return {
    of,
    job: null,
    resource: null,
    opening: [],
    ways: [{ ...NO_WAY, rank: 1, chances, told, penalty }],
  };
}

const toldOf = (all: readonly Uncertainty[]) => all.map(({ ways }) => ways[0]!.told);

describe("what is told of several faults", () => {
  test("takes no more than is left where the price is level below: by hand", () => {
    // Nothing is left to lose beyond 0.05: one fault or both take 10.
    const loss = (penalty: number) => 10 * Math.min(1, penalty / 0.05);
    const both = [telling("a", 0.5, 0.05, 10), telling("b", 0.4, 0.1, 10)];
    // Some fault stands in 1 - 0.5 x 0.6 = 0.7 of the cases: 7 on average, where each alone would make 9.
    expect(toldOf(toldTogether(both, ONE_CLASS, loss))).toEqual([
      expect.closeTo((10 * 7) / 9, 12),
      expect.closeTo((10 * 7) / 9, 12),
    ]);
  });

  test("is the sum of what each takes where the price is a straight line, and of one fault what it takes", () => {
    const loss = (penalty: number) => 200 * penalty;
    const all = [telling("a", 0.5, 0.05, 10), telling("b", 0.4, 0.1, 20), telling("c", 1, 0.02, 4)];
    expect(toldOf(toldTogether(all, ONE_CLASS, loss))).toEqual(
      [10, 20, 4].map((told) => expect.closeTo(told, 12)),
    );
    const alone = [telling("a", 0.5, 0.05, 3)];
    expect(toldTogether(alone, ONE_CLASS, loss)).toBe(alone);
  });
});
