import { describe, expect, test } from "vitest";
import { chooseInGroups } from "../../../worker/engine/optimization/chooseInGroups.ts";
import type { MultipleChoiceProblem } from "../../../worker/engine/optimization/multipleChoice.ts";
import { multidimensional, multipleChoice } from "./instancesAtHand.ts";

const ENOUGH = { nodeLimit: 1_000_000 };
const SECONDS = 30_000;

/** The bound of the linear relaxation, by its prices. */
function relaxation({ groups, budgets }: MultipleChoiceProblem, prices: readonly number[]): number {
  return (
    budgets.reduce((sum, limit, row) => sum + prices[row]! * limit, 0) +
    groups.reduce(
      (sum, group) =>
        sum +
        Math.max(
          ...group.map(
            ({ value, use }) => value - use.reduce((cost, one, row) => cost + prices[row]! * one, 0),
          ),
        ),
      0,
    )
  );
}

describe.each([
  ["taken or left under several budgets", multidimensional()],
  ["one of each group under several budgets", multipleChoice()],
])("published knapsacks, %s (SOURCE.md)", (_, instances) => {
  test.skipIf(instances === null)(
    `their optima${instances ? "" : ": instances not at hand"}`,
    () => {
      for (const { id, problem, optimum } of instances!) {
        const solution = chooseInGroups(problem, ENOUGH)!;
        expect(solution.proven, id).toBe(true);
        expect(solution.value, id).toBeCloseTo(optimum, 6);
        solution.used.forEach((used, row) => {
          expect(used, id).toBeLessThanOrEqual(problem.budgets[row]!);
        });
      }
    },
    SECONDS,
  );

  test.skipIf(instances === null)(
    `their linear relaxations${instances ? "" : ": instances not at hand"}`,
    () => {
      for (const { id, problem, lpBound } of instances!) {
        if (lpBound === null) continue;
        const { prices } = chooseInGroups(problem, { nodeLimit: 1 })!;
        expect(Math.abs(relaxation(problem, prices) / lpBound - 1), id).toBeLessThan(1e-8);
      }
    },
  );
});

/** Petersen 1967, no. 1: small enough to stand here, so that one published optimum is always asked for. */
test("Petersen's first problem, optimum 3800", () => {
  const profit = [100, 600, 1200, 2400, 500, 2000];
  const weights = [
    [8, 12, 13, 64, 22, 41],
    [8, 12, 13, 75, 22, 41],
    [3, 6, 4, 18, 6, 4],
    [5, 10, 8, 32, 6, 12],
    [5, 13, 8, 42, 6, 20],
    [5, 13, 8, 48, 6, 20],
    [0, 0, 0, 0, 8, 0],
    [3, 0, 4, 0, 8, 0],
    [3, 2, 4, 0, 8, 4],
    [3, 2, 4, 8, 8, 4],
  ];
  const groups = profit.map((value, item) => [
    { value: 0, use: weights.map(() => 0) },
    { value, use: weights.map((row) => row[item]!) },
  ]);
  const solution = chooseInGroups({ groups, budgets: [80, 96, 20, 36, 44, 48, 10, 18, 22, 24] }, ENOUGH)!;
  expect(solution).toMatchObject({ value: 3800, choice: [0, 1, 1, 0, 0, 1], proven: true });
});
