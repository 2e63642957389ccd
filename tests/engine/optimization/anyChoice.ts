import fc from "fast-check";
import type {
  GroupOption,
  MultipleChoiceProblem,
} from "../../../worker/engine/optimization/multipleChoice.ts";

const MOST_BUDGETS = 4;
const wholeOrNot = (whole: fc.Arbitrary<number>, real: fc.Arbitrary<number>) => fc.oneof(whole, real);
const value = wholeOrNot(fc.integer({ min: -3, max: 6 }), fc.double({ min: -20, max: 100, noNaN: true }));
const use = wholeOrNot(fc.nat(4), fc.double({ min: 0, max: 15, noNaN: true }));
const budget = fc.oneof(
  { weight: 8, arbitrary: wholeOrNot(fc.nat(12), fc.double({ min: 0, max: 40, noNaN: true })) },
  { weight: 1, arbitrary: fc.constantFrom(0, Infinity) },
);

/** Small problems of every kind: ties, zero and endless budgets, negative values, groups that cannot be left, and some that nothing fits. */
export const anyChoice: fc.Arbitrary<MultipleChoiceProblem> = fc
  .record({
    budgets: fc.array(budget, { maxLength: MOST_BUDGETS }),
    leavable: fc.boolean(),
    groups: fc.array(
      fc.array(
        fc.record({ value, use: fc.array(use, { minLength: MOST_BUDGETS, maxLength: MOST_BUDGETS }) }),
        { minLength: 1, maxLength: 5 },
      ),
      { maxLength: 6 },
    ),
  })
  .map(({ budgets, groups, leavable }) => ({
    budgets,
    groups: groups.map((group) => {
      const options: GroupOption[] = group.map((option) => ({
        value: option.value,
        use: option.use.slice(0, budgets.length),
      }));
      return leavable ? [{ value: 0, use: budgets.map(() => 0) }, ...options] : options;
    }),
  }));

/** What a choice is worth, and whether it keeps to the budgets but for rounding. */
export function weighed({ groups, budgets }: MultipleChoiceProblem, choice: readonly number[]) {
  const taken = groups.map((group, place) => group[choice[place]!]!);
  const used = budgets.map((_, row) => taken.reduce((sum, option) => sum + option.use[row]!, 0));
  return {
    value: taken.reduce((sum, option) => sum + option.value, 0),
    used,
    fits: budgets.every((limit, row) => used[row]! <= limit * (1 + 1.001e-9)),
  };
}

/** The highest value of all combinations, one by one; -Infinity where none fits. */
export function bestByEnumeration(problem: MultipleChoiceProblem): number {
  let best = -Infinity;
  const choice: number[] = [];
  const visit = (place: number): void => {
    const group = problem.groups[place];
    if (!group) {
      const { value, fits } = weighed(problem, choice);
      if (fits) best = Math.max(best, value);
      return;
    }
    for (let option = 0; option < group.length; option++) {
      choice[place] = option;
      visit(place + 1);
    }
  };
  visit(0);
  return best;
}
