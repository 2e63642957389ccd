import type { Ledger } from "./ledger.ts";
import { type Moments, sum, sumOver } from "./moments.ts";
import type { Resource } from "./resource.ts";
import { dealOut, type Purchase, reuseGivenUp, spentOn, wantsOrder } from "./stock.ts";

/** What the tasks of a plan buy and cost once what is at hand is dealt out to them. */
export interface PlanCosts<Task> {
  readonly tasks: readonly Task[];
  /** With the deliveries where something is short after all. */
  readonly resources: ReadonlySet<number>;
  /** Parts at hand count what they would be worth unused. */
  readonly money: Moments;
  /** Money still to be paid. */
  readonly cash: Moments;
}

/**
 * Money of a plan. While a plan is chosen each task may count on all that is at hand; here it is dealt out in working order, each piece once.
 * @param tasks in working order
 */
export function planCosts<Task extends { readonly purchases: readonly Purchase[] }>(
  tasks: readonly Task[],
  resources: ReadonlySet<number>,
  ledger: Ledger,
): PlanCosts<Task> {
  const { stock } = ledger.bench;
  if (stock.size === 0) {
    const money = sumOver(usedOf(resources, ledger), (resource) => resource.money);
    return { tasks, resources, money, cash: money };
  }
  const lists = dealOut(
    stock,
    tasks.map(({ purchases }) => purchases),
  );
  const bought = lists.flat();
  const all = wantsOrder(bought) ? new Set([...resources, ledger.ordersIndex()]) : resources;
  const besides = usedOf(all, ledger).filter(({ task }) => task === null);
  const money = sum(
    spentOn(bought),
    sumOver(besides, (resource) => resource.money),
  );
  return {
    tasks: tasks.map((task, at) => ({ ...task, purchases: lists[at]! })),
    resources: all,
    money,
    cash: { ...money, mean: money.mean - reuseGivenUp(bought) },
  };
}

/** Resources by index, in the order in which they were made. */
export function usedOf(resources: ReadonlySet<number>, { resources: all }: Ledger): readonly Resource[] {
  return [...resources].sort((a, b) => a - b).map((index) => all[index]!);
}
