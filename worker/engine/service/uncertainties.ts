import type { Check } from "../inspection/check.ts";
import { failingJobs } from "./failingJobs.ts";
import type { Ledger } from "./ledger.ts";
import { sum } from "./moments.ts";
import type { Resource } from "./resource.ts";
import { placesFor } from "./task.ts";
import { goingOn, NO_WAY, spentUntilEnd, type Uncertainty, type Way } from "./uncertainty.ts";
import { consequence, type UnseenStakes } from "./unseenConsequence.ts";
import type { UnseenFaults } from "./unseenFaults.ts";
import { isOpening } from "./workingOrder.ts";
import type { WorkPlan } from "./workPlan.ts";

/**
 * What is not known when a plan is made. Each level of each check not looked at brings its cheapest cure at the user's goal or, where that is cheaper and
 * allowed, a lower price; a level milder than an assumed one spares what only the assumed cure needed. Only what must be done is counted: optional work on
 * an unseen fault is not. Then the plan's own jobs that may fail. What can bring nothing is left out.
 */
export function uncertaintiesOf(
  plan: WorkPlan,
  unseen: readonly UnseenFaults[],
  classes: number,
  ledger: Ledger,
  stakes: UnseenStakes,
): readonly Uncertainty[] {
  const all = failingJobs(plan, ledger, classes);
  for (const one of unseen) {
    const ways = waysOf(one, plan, ledger, stakes);
    if (ways.length > 0)
      all.push({ of: one.check.id, ways, opening: openingOf(one.check, plan, ledger), job: null });
  }
  return all;
}

function waysOf(
  { check, position, chances: byRank }: UnseenFaults,
  plan: WorkPlan,
  ledger: Ledger,
  stakes: UnseenStakes,
): readonly Way[] {
  const assumed = ledger.bench.faults.find((fault) => fault.assumed && fault.check.id === check.id);
  const ways: Way[] = [];
  for (let rank = 0; rank < check.levels.length; rank++) {
    const chances = byRank[rank]!;
    if (chances === null) continue;
    const level = consequence(check, rank, position, assumed, plan, ledger, stakes);
    if (level.kind === "nothing") continue;
    if (level.kind === "condemned") ways.push({ ...NO_WAY, rank, chances, endsFrame: true });
    else if (level.kind === "told") ways.push({ ...NO_WAY, rank, chances, told: level.loss });
    else if (level.kind === "spared")
      ways.push({ ...NO_WAY, rank, chances, ...spared(level.resources, ledger) });
    else ways.push(...workWays(rank, chances, level.resources, ledger));
  }
  return ways;
}

/** The work, and the chance that it ends the frame as a way of its own. */
function workWays(
  rank: number,
  chances: Float64Array,
  resources: readonly number[],
  ledger: Ledger,
): readonly Way[] {
  const used = resources.map((index) => ledger.resources[index]!);
  const costs = used.map(goingOn);
  const survives = costs.reduce((all, { ends }) => all * (1 - ends), 1);
  const on: Way = {
    ...NO_WAY,
    rank,
    chances: survives === 1 ? chances : chances.map((chance) => chance * survives),
    money: sum(...costs.map(({ money }) => money)),
    minutes: sum(...costs.map(({ minutes }) => minutes)),
    resources,
  };
  if (survives === 1) return [on];
  const lost = chances.map((chance) => chance * (1 - survives));
  return [on, { ...NO_WAY, rank, chances: lost, endsFrame: true, ...spentUntilEnd(used) }];
}

/** Costs of the plan that an absent fault spares, below nought. */
function spared(
  resources: readonly number[],
  ledger: Ledger,
): Pick<Way, "money" | "minutes" | "sparesOpening"> {
  const total = { money: 0, minutes: 0 };
  const opening = { money: 0, minutes: 0 };
  const opened = new Set(resources.flatMap((index) => openedFor(ledger.resources[index]!, ledger)));
  for (const index of resources) {
    const { money, minutes, contingency } = ledger.resources[index]!;
    const own = {
      money: money.mean + contingency.money.mean,
      minutes: minutes.mean + contingency.minutes.mean,
    };
    const sums = opened.has(index) ? [total, opening] : [total];
    for (const sum of sums) {
      sum.money += own.money;
      sum.minutes += own.minutes;
    }
  }
  return {
    money: { mean: -total.money, variance: 0 },
    minutes: { mean: -total.minutes, variance: 0 },
    sparesOpening: opening,
  };
}

/** Everything that a job of the opening work takes, itself too. */
function openedFor({ task }: Resource, ledger: Ledger): readonly number[] {
  if (task === null || !isOpening(task.operation)) return [];
  const { resources, taskInstead } = ledger.forOperation(task.operation, task.place);
  return [...resources, ...taskInstead];
}

/** Steps of the plan before what is hidden shows: those of the jobs that reveal it. A check that can be made from outside needs none. */
function openingOf(check: Check, plan: WorkPlan, ledger: Ledger): readonly number[] {
  if (check.where !== "dismantled") return [];
  const steps = new Set<number>();
  for (const { operation } of plan.tasks) {
    if (!operation.reveals.some((reveal) => reveal.check === check.id)) continue;
    for (const place of placesFor(operation, "both"))
      for (const index of ledger.forOperation(operation, place).resources)
        if (ledger.resources[index]!.kind === "step" && plan.resources.has(index)) steps.add(index);
  }
  return [...steps];
}
