import { chooseInGroups } from "../optimization/chooseInGroups.ts";
import type { MultipleChoiceProblem, MultipleChoiceSolution } from "../optimization/multipleChoice.ts";
import type { Money } from "../quantity.ts";
import type { Candidate } from "./candidate.ts";
import { inCanonicalOrder } from "./canonicalOrder.ts";
import type { Budgets, Selection } from "./comparison.ts";
import { hoursTogether } from "./hoursTogether.ts";
import { meritOrder } from "./meritOrder.ts";
import { nextIn } from "./nextIn.ts";
import { overrunsOf } from "./overruns.ts";
import { setTotal } from "./setTotal.ts";
import { isLeft } from "./taken.ts";

/**
 * Nodes of the search: enough to prove the best of two hundred finds nearly always, in a fraction of a second; where it does not, the best found is told
 * with what another could gain at most. Choosing anew starts from the set at hand and gets fewer: what it finds is never too much.
 */
export const NODES = { set: 8_000, oneMore: 1_000 };

/**
 * The set of finds and courses with the highest total worth that the budgets allow in expectation: a multiple-choice knapsack, solved to proven
 * optimality (Kellerer, Pferschy & Pisinger 2004, chapters 9 and 11). The answer does not depend on the order of the candidates.
 * @param currency for sentences
 */
export function selectSet(candidates: readonly Candidate[], budgets: Budgets, currency: string): Selection {
  if (candidates.length === 0) return NOTHING_TO_CHOOSE;
  const ordered = inCanonicalOrder(candidates);
  const limits = [budgets.hours, budgets.cash, budgets.slots].map((given) => given ?? Infinity);
  const problem = { groups: ordered.map(({ options }) => options), budgets: limits };
  const solution = chooseInGroups(problem, { nodeLimit: NODES.set });
  if (solution === null) return nothingFits(ordered, budgets, currency);

  const taken = ordered.map((candidate, group) => ({
    candidate,
    option: candidate.options[solution.choice[group]!]!,
  }));
  const order = meritOrder(taken);
  const hours = hoursTogether(
    taken.flatMap(({ option }) => (isLeft(option) ? [] : [option.course])),
    ordered[0]!.find.settled.workshop,
  );
  return {
    chosen: order.filter(({ chosen }) => chosen).map(({ id, course }) => ({ id, course })),
    total: setTotal(taken, solution.used, hours),
    chanceHoursOverrun: budgets.hours === null ? 0 : hours.chanceAbove(budgets.hours),
    shadowPrices: {
      hour: gainOfOneMore(problem, solution, 0),
      cash: gainOfOneMore(problem, solution, 1),
      slot: gainOfOneMore(problem, solution, 2),
    },
    nextIn: nextIn(taken, limits, solution),
    proven: solution.proven,
    gap: solution.proven ? 0 : solution.bound - solution.value,
    meritOrder: order,
    overruns: [],
  };
}

/** By choosing anew from the set at hand, so that more never brings less. */
function gainOfOneMore(
  { groups, budgets }: MultipleChoiceProblem,
  { choice, value }: MultipleChoiceSolution,
  budget: number,
): Money {
  if (budgets[budget] === Infinity) return 0;
  const raised = budgets.map((given, place) => (place === budget ? given + 1 : given));
  const better = chooseInGroups({ groups, budgets: raised }, { nodeLimit: NODES.oneMore, start: choice });
  return Math.max(0, (better?.value ?? value) - value);
}

const NOTHING_TO_CHOOSE: Selection = {
  chosen: [],
  total: setTotal([], [0, 0, 0], hoursTogether([], { hourlyGoal: 0, speedFactor: 1, speedSpread: 0 })),
  chanceHoursOverrun: 0,
  shadowPrices: { hour: 0, cash: 0, slot: 0 },
  nextIn: null,
  proven: true,
  gap: 0,
  meritOrder: [],
  overruns: [],
};

function nothingFits(ordered: readonly Candidate[], budgets: Budgets, currency: string): Selection {
  return {
    chosen: [],
    total: null,
    chanceHoursOverrun: null,
    shadowPrices: null,
    nextIn: null,
    proven: true,
    gap: 0,
    meritOrder: meritOrder(ordered.map((candidate) => ({ candidate, option: null }))),
    overruns: overrunsOf(ordered, budgets, currency),
  };
}
