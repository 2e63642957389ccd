import type { Check } from "../inspection/check.ts";
import { failingJobs } from "./failingJobs.ts";
import type { Ledger } from "./ledger.ts";
import { sum } from "./moments.ts";
import { failingWhereDone, sparing } from "./sparing.ts";
import { placesFor } from "./task.ts";
import { toldTogether } from "./toldTogether.ts";
import { goingOn, NO_WAY, spentUntilEnd, type Uncertainty, type Way } from "./uncertainty.ts";
import { consequence, type UnseenStakes } from "./unseenConsequence.ts";
import type { UnseenFaults } from "./unseenFaults.ts";
import type { WorkPlan } from "./workPlan.ts";

/**
 * What is not known when a plan is made. Each level of each check not looked at brings its cheapest cure at the user's goal or, where that is cheaper and
 * allowed, a lower price; a level milder than an assumed one spares what only the assumed cure needed. Only what must be done is counted: optional work on
 * an unseen fault is not. Then the plan's own jobs that may fail. What can bring nothing is left out.
 */
export function uncertaintiesOf(
  plan: WorkPlan,
  unseen: readonly UnseenFaults[],
  classes: Float64Array,
  ledger: Ledger,
  stakes: UnseenStakes,
): readonly Uncertainty[] {
  const all = failingJobs(plan, ledger, classes.length);
  for (const one of unseen) {
    const ways = waysOf(one, plan, ledger, stakes);
    if (ways.length > 0)
      all.push({
        of: one.check.id,
        ways,
        opening: openingOf(one.check, plan, ledger),
        job: null,
        resource: null,
      });
  }
  return toldTogether(failingWhereDone(all), classes, stakes.toldLoss);
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
    else if (level.kind === "told")
      ways.push({ ...NO_WAY, rank, chances, told: level.loss, penalty: level.penalty });
    else if (level.kind === "spared")
      ways.push({ ...NO_WAY, rank, chances, ...sparing(level.resources, plan, ledger) });
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
