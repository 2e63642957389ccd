import { netBenefitOf, type Worth } from "../../../worker/engine/decision/choice.ts";
import { weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { type Candidate, candidateOf } from "../../../worker/engine/portfolio/candidate.ts";
import type { Budgets, SubmittedFind } from "../../../worker/engine/portfolio/comparison.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { CASES, requestOf } from "../workedCases/workedCase.ts";

export const UNLIMITED: Budgets = { hours: null, cash: null, slots: null };

/** The worked cases as finds that stand beside each other, each in one season and at one goal. */
export const SHED: readonly SubmittedFind[] = CASES.map((one) => {
  const request = requestOf(one);
  return {
    id: one.id,
    course: null,
    request: { ...request, workshop: { ...request.workshop, hourlyGoal: 10, month: 5 } },
  };
});

/** So many finds: the worked cases over and over, each at another price and distance. */
export function shedOf(count: number): readonly SubmittedFind[] {
  return Array.from({ length: count }, (_, index) => {
    const one = SHED[index % SHED.length]!;
    const purchase = { price: 5 + ((index * 7) % 41), travelMinutes: (index * 13) % 37, paid: false };
    const find = { ...one.request.find, purchase };
    return { ...one, id: `${one.id} ${index}`, request: { ...one.request, find } };
  });
}

/** The candidates among some finds. */
export function candidatesOf(finds: readonly SubmittedFind[], worth: Worth = netBenefitOf): Candidate[] {
  return finds.flatMap((find) => candidateOf(find, weighFind(find.request, BOOK), worth) ?? []);
}

export const CANDIDATES = candidatesOf(SHED);

/** The highest total of any choice within the budgets, by trying them all; -Infinity where none fits. */
export function bestByTrying(candidates: readonly Candidate[], { hours, cash, slots }: Budgets): number {
  const limits = [hours, cash, slots].map((given) => (given ?? Infinity) + 1e-9);
  const best = (from: number, left: readonly number[]): number => {
    const candidate = candidates[from];
    if (candidate === undefined) return 0;
    let most = -Infinity;
    for (const { value, use } of candidate.options) {
      const rest = left.map((given, budget) => given - use[budget]!);
      if (rest.every((given) => given >= 0)) most = Math.max(most, value + best(from + 1, rest));
    }
    return most;
  };
  return best(0, limits);
}
