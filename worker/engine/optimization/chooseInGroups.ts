import { DomainError } from "../domainError.ts";
import { branchAndBound } from "./branchAndBound.ts";
import { type ChoiceTables, choiceTables } from "./choiceTables.ts";
import { type Incumbent, offer } from "./incumbent.ts";
import { lagrangianBound } from "./lagrangianBound.ts";
import type { GroupOption, MultipleChoiceProblem, MultipleChoiceSolution } from "./multipleChoice.ts";
import { allOpen } from "./openGroups.ts";
import { zeroPrices } from "./priceBasis.ts";
import { scratchFor } from "./scratch.ts";
import { dominatorOf, undominatedOptions } from "./undominated.ts";

export interface ChoiceLimits {
  /** Nodes of the search after which the best found is told; it goes on beyond them only while nothing that fits is known. */
  readonly nodeLimit: number;
  /** A choice known to fit, option index by group: what is told is never worth less. One that does not fit is passed over. */
  readonly start?: readonly number[];
}

/**
 * One option in each group, of the highest total value that the budgets allow: branch and bound on Lagrangian bounds, which are those of the linear
 * relaxation. Deterministic given the order of groups and options; of choices worth the same the first found stays. A budget may be gone over by 1e-9 of
 * it, and totals count as equal within 1e-9 of all values at stake: that is rounding.
 * @returns null where no choice fits the budgets
 * @throws DomainError for an empty group, uses that do not answer to the budgets, figures negative or not finite where they must be
 * Source: Nemhauser & Wolsey 1988, chapters II.3 and II.4; Kellerer, Pferschy & Pisinger 2004, chapters 9 and 11.
 */
export function chooseInGroups(
  problem: MultipleChoiceProblem,
  { nodeLimit, start }: ChoiceLimits,
): MultipleChoiceSolution | null {
  const tables = choiceTables(problem);
  const incumbent: Incumbent = { choice: new Int32Array(problem.groups.length), value: -Infinity };
  if (start) offer(tables, incumbent, knownChoice(problem, tables, start));
  const open = allOpen(tables);
  const basis = zeroPrices(tables);
  const scratch = scratchFor(tables);
  const relaxed = lagrangianBound(tables, open, basis, -Infinity, scratch);
  const prices = problem.budgets.map(() => 0);
  tables.budgets.forEach((budget, row) => {
    prices[budget] = basis.prices[row]! / tables.unit[row]!;
  });
  const search =
    relaxed === -Infinity
      ? { nodes: 1, openBound: -Infinity }
      : branchAndBound(tables, open, basis, incumbent, nodeLimit, scratch);
  const proven = search.openBound <= incumbent.value + tables.tie;
  if (incumbent.value === -Infinity) return null;
  const choice = Array.from(incumbent.choice, (option) => tables.index[option]!);
  const value = totalOf(problem, choice, (option) => option.value);
  return {
    choice,
    value,
    used: problem.budgets.map((_, budget) => totalOf(problem, choice, ({ use }) => use[budget]!)),
    bound: proven ? value : Math.max(value, Math.min(search.openBound, relaxed)),
    proven,
    prices,
    nodes: search.nodes,
  };
}

/** A known choice in the tables' options, a dominated one replaced by what dominates it. */
function knownChoice(
  { groups }: MultipleChoiceProblem,
  { first, index }: ChoiceTables,
  start: readonly number[],
): Int32Array {
  if (start.length !== groups.length) {
    throw new DomainError("out-of-domain", "start", start, "one option for each group");
  }
  return Int32Array.from(groups, (group, place) => {
    const option = start[place]!;
    if (!group[option])
      throw new DomainError("out-of-domain", `start of group ${place}`, option, "one of its options");
    const wanted = dominatorOf(group, undominatedOptions(group), option);
    return index.indexOf(wanted, first[place]);
  });
}

function totalOf(
  { groups }: MultipleChoiceProblem,
  choice: readonly number[],
  amount: (option: GroupOption) => number,
): number {
  return groups.reduce((sum, group, place) => sum + amount(group[choice[place]!]!), 0);
}
