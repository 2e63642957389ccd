import type { Candidate } from "./candidate.ts";
import { BUDGETS, type BudgetName, type Budgets, type Overrun } from "./comparison.ts";

/**
 * Which budgets the courses taken in any case overrun, by how much, and which of them would have to be set free. Nothing else can make a set
 * impossible: whatever is not locked may be left, and leaving uses nothing.
 */
export function overrunsOf(
  candidates: readonly Candidate[],
  budgets: Budgets,
  currency: string,
): readonly Overrun[] {
  const locked = candidates.filter((candidate) => candidate.locked);
  return BUDGETS.flatMap((budget, place): Overrun[] => {
    const given = budgets[budget];
    if (given === null) return [];
    const uses = locked.map(({ options }) => options[0]!.use[place]!);
    const needs = uses.reduce((sum, use) => sum + use, 0);
    const short = needs - given;
    if (short <= 0) return [];
    const freeing = locked.filter((_, index) => uses[index]! >= short).map(({ id }) => id);
    const remedy =
      locked.length === 1
        ? "set it free"
        : freeing.length > 0
          ? "set one of them free"
          : "set more than one of them free";
    return [
      {
        budget,
        given,
        needs,
        short,
        freeing,
        explanation: `${told(budget, given, needs, currency)}: ${remedy}, or allow ${amount(budget, short, currency)} more.`,
      },
    ];
  });
}

function told(budget: BudgetName, given: number, needs: number, currency: string): string {
  return `The courses taken in any case need ${amount(budget, needs, currency)}, and there are ${amount(budget, given, currency)}`;
}

function amount(budget: BudgetName, value: number, currency: string): string {
  switch (budget) {
    case "hours":
      return `${rounded(value)} hours`;
    case "cash":
      return `${currency} ${rounded(value)}`;
    case "slots":
      return `${value} ${value === 1 ? "place" : "places"}`;
  }
}

/** To a tenth, upwards: what is allowed more must be enough. */
function rounded(value: number): string {
  return (Math.ceil(value * 10 - 1e-6) / 10).toFixed(1);
}
