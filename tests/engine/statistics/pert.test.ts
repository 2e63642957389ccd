import { expect, test } from "vitest";
import { pertMean, pertSd, requireThreePoint } from "../../../worker/engine/statistics/pert.ts";

test("three equal points are a fixed time", () => {
  const fixed = { optimistic: 5, likely: 5, pessimistic: 5 };
  expect([pertMean(fixed), pertSd(fixed)]).toEqual([5, 0]);
});

test("points out of order are refused by name", () => {
  expect(() => requireThreePoint({ optimistic: 5, likely: 4, pessimistic: 9 }, "minutes")).toThrow(
    "minutes requires 0 <= optimistic <= likely <= pessimistic, got 5, 4, 9",
  );
  expect(() => requireThreePoint({ optimistic: 1, likely: 2, pessimistic: Number.NaN }, "minutes")).toThrow(
    "minutes",
  );
  expect(() => requireThreePoint({ optimistic: 0, likely: 2, pessimistic: 2 }, "minutes")).not.toThrow();
});
