import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chooseInGroups } from "../../../worker/engine/optimization/chooseInGroups.ts";
import type { MultipleChoiceProblem } from "../../../worker/engine/optimization/multipleChoice.ts";
import { undominatedOptions } from "../../../worker/engine/optimization/undominated.ts";
import { anyChoice, bestByEnumeration, weighed } from "./anyChoice.ts";
import { seededChoice } from "./seededChoice.ts";

const ENOUGH = { nodeLimit: 100_000 };

/** What the prices promise at most: weak duality, worked out from the problem as it was given. */
function dualBound({ groups, budgets }: MultipleChoiceProblem, prices: readonly number[]): number {
  const cost = (use: readonly number[]) => use.reduce((sum, amount, row) => sum + prices[row]! * amount, 0);
  return (
    budgets.reduce((sum, limit, row) => sum + (prices[row] === 0 ? 0 : prices[row]! * limit), 0) +
    groups.reduce((sum, group) => sum + Math.max(...group.map(({ value, use }) => value - cost(use))), 0)
  );
}

describe("the choice of one option in each group", () => {
  test("is worth what the best of all combinations is worth", () => {
    fc.assert(
      fc.property(anyChoice, (problem) => {
        const best = bestByEnumeration(problem);
        const solution = chooseInGroups(problem, ENOUGH);
        if (best === -Infinity) {
          expect(solution).toBeNull();
          return;
        }
        const { value, used, fits } = weighed(problem, solution!.choice);
        expect(fits).toBe(true);
        expect(value).toBeCloseTo(best, 6);
        expect(solution).toMatchObject({ value, used, bound: value, proven: true });
        expect(dualBound(problem, solution!.prices)).toBeGreaterThan(best - 1e-6);
      }),
      { numRuns: 500, seed: 1 },
    );
  });

  test("is never less with more of a budget, nor is the bound", () => {
    fc.assert(
      fc.property(
        anyChoice,
        fc.array(fc.double({ min: 0, max: 8, noNaN: true }), { minLength: 4 }),
        (problem, more) => {
          const less = chooseInGroups(problem, ENOUGH);
          const budgets = problem.budgets.map((limit, row) => limit + more[row]!);
          const richer = chooseInGroups({ ...problem, budgets }, ENOUGH);
          if (less) expect(richer!.value).toBeGreaterThan(less.value - 1e-6);
        },
      ),
      { numRuns: 300, seed: 2 },
    );
  });

  test("takes no option that another of its group dominates, and of equal ones the first", () => {
    fc.assert(
      fc.property(anyChoice, (problem) => {
        const solution = chooseInGroups(problem, ENOUGH);
        solution?.choice.forEach((option, place) => {
          expect(undominatedOptions(problem.groups[place]!)).toContain(option);
        });
      }),
      { numRuns: 300, seed: 3 },
    );
  });

  test("is the same whatever the order of the groups", () => {
    for (let seed = 1; seed <= 30; seed++) {
      const problem = seededChoice(seed, 4 + (seed % 9), seed % 2 ? "loose" : "close");
      const one = chooseInGroups(problem, ENOUGH)!;
      const other = chooseInGroups({ ...problem, groups: problem.groups.toReversed() }, ENOUGH)!;
      expect(other.value).toBeCloseTo(one.value, 6);
      expect(other.choice.toReversed()).toEqual(one.choice);
    }
  });

  test("at a node limit fits, is told unproven, and its bound is not below the best", () => {
    let unproven = 0;
    for (let seed = 1; seed <= 30; seed++) {
      const problem = seededChoice(seed, 12, "close");
      const best = chooseInGroups(problem, ENOUGH)!;
      const early = chooseInGroups(problem, { nodeLimit: 1 + (seed % 5) })!;
      expect(weighed(problem, early.choice)).toMatchObject({ fits: true, value: early.value });
      expect(early.value).toBeLessThan(best.value + 1e-6);
      expect(early.bound).toBeGreaterThan(best.value - 1e-6);
      expect(early.bound).toBeGreaterThanOrEqual(early.value);
      if (!early.proven) unproven += 1;
    }
    expect(unproven).toBeGreaterThan(10);
  });

  test("is never worth less than the choice it starts from", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const problem = seededChoice(seed, 15, "close");
      const before = chooseInGroups(problem, ENOUGH)!;
      const richer = { ...problem, budgets: problem.budgets.map((limit) => limit * 1.01) };
      const after = chooseInGroups(richer, { nodeLimit: 1, start: before.choice })!;
      expect(after.value).toBeGreaterThanOrEqual(before.value);
    }
  });

  test("passes over a start that does not fit", () => {
    const groups = [
      [
        { value: 0, use: [0] },
        { value: 5, use: [2] },
      ],
    ];
    expect(chooseInGroups({ groups, budgets: [1] }, { ...ENOUGH, start: [1] })).toMatchObject({
      choice: [0],
      value: 0,
    });
  });

  test("fills a budget to the brim whatever rounding does", () => {
    const course = (hours: number) => [
      { value: 0, use: [0] },
      { value: 1, use: [hours] },
    ];
    expect(chooseInGroups({ groups: [2.5, 3, 2.5].map(course), budgets: [8] }, ENOUGH)!.value).toBe(3);
    expect(chooseInGroups({ groups: [0.1, 0.2].map(course), budgets: [0.3] }, ENOUGH)!.value).toBe(2);
  });

  test("prices an hour where there is none at what the first would bring", () => {
    const groups = [
      [
        { value: 0, use: [0] },
        { value: 30, use: [3] },
        { value: 44, use: [5] },
      ],
    ];
    expect(chooseInGroups({ groups, budgets: [0] }, ENOUGH)).toMatchObject({
      value: 0,
      prices: [10],
      proven: true,
    });
  });

  test("of no groups is worth nothing", () => {
    expect(chooseInGroups({ groups: [], budgets: [3] }, ENOUGH)).toMatchObject({
      choice: [],
      value: 0,
      used: [0],
      bound: 0,
    });
  });

  test.each([
    ["an empty group", { groups: [[]], budgets: [1] }, "group 0 requires at least one option"],
    [
      "a value that is no number",
      { groups: [[{ value: Number.NaN, use: [1] }]], budgets: [1] },
      "value in group 0",
    ],
    ["a negative use", { groups: [[{ value: 1, use: [-1] }]], budgets: [1] }, "use in group 0"],
    ["uses of another number", { groups: [[{ value: 1, use: [1, 2] }]], budgets: [1] }, "use in group 0"],
    ["a negative budget", { groups: [[{ value: 1, use: [1] }]], budgets: [-1] }, "budget 0 requires"],
    [
      "a budget that is no number",
      { groups: [[{ value: 1, use: [1] }]], budgets: [Number.NaN] },
      "budget 0 requires",
    ],
  ])("refuses %s", (_, problem, message) => {
    expect(() => chooseInGroups(problem, ENOUGH)).toThrow(message);
  });
});
