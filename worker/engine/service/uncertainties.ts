import type { Check } from "../inspection/check.ts";
import type { UnseenCheck } from "../inspection/finding.ts";
import type { JobFailure } from "./failure.ts";
import { lateness } from "./failure.ts";
import { followingWork } from "./followingWork.ts";
import type { Ledger } from "./ledger.ts";
import { NOTHING, sum } from "./moments.ts";
import type { Resource } from "./resource.ts";
import { placesFor, type Task } from "./task.ts";
import { goingOn, spentUntilEnd, type Uncertainty, type Way } from "./uncertainty.ts";
import { consequence, type UnseenStakes } from "./unseenConsequence.ts";
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
    if (level.kind === "condemned") ways.push({ ...EMPTY, rank, chances, endsFrame: true });
    else if (level.kind === "told") ways.push({ ...EMPTY, rank, chances, told: level.loss });
    else if (level.kind === "spared")
      ways.push({ ...EMPTY, rank, chances, ...spared(level.resources, ledger) });
    else ways.push(...workWays(rank, chances, level.resources, ledger));
  }
  return ways;
}

/** A check not looked at, as planning sees it. */
export interface UnseenFaults {
  readonly check: Check;
  readonly position: UnseenCheck["position"];
  /** Chance of each level in each of the classes that are likely at all; null where it cannot be. */
  readonly chances: readonly (Float64Array | null)[];
}

/**
 * The checks not looked at that may bring work. Papers are owed, not guessed, and what another finding clears brings none.
 * @param classes the classes of history that are likely at all
 */
export function unseenFaults(
  unseen: readonly UnseenCheck[],
  checks: ReadonlyMap<string, Check>,
  classes: readonly number[],
): readonly UnseenFaults[] {
  return unseen.flatMap(({ check: id, acquittedBy, position, byClass }): UnseenFaults[] => {
    const check = checks.get(id)!;
    if (acquittedBy !== null || isPaper(check)) return [];
    const chances = check.levels.map((_, rank) => chancesAt(byClass, rank, check.levels.length, classes));
    return [{ check, position, chances }];
  });
}

function chancesAt(
  byClass: Float64Array,
  rank: number,
  levels: number,
  classes: readonly number[],
): Float64Array | null {
  const chances = new Float64Array(classes.length);
  let any = false;
  for (let place = 0; place < chances.length; place++) {
    const chance = byClass[classes[place]! * levels + rank]!;
    chances[place] = chance;
    any ||= chance > 0;
  }
  return any ? chances : null;
}

const EMPTY: Omit<Way, "chances"> = {
  rank: null,
  endsFrame: false,
  money: NOTHING,
  minutes: NOTHING,
  told: 0,
  resources: [],
  takes: [],
  sparesOpening: { money: 0, minutes: 0 },
};

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
    ...EMPTY,
    rank,
    chances: survives === 1 ? chances : chances.map((chance) => chance * survives),
    money: sum(...costs.map(({ money }) => money)),
    minutes: sum(...costs.map(({ minutes }) => minutes)),
    resources,
  };
  if (survives === 1) return [on];
  const lost = chances.map((chance) => chance * (1 - survives));
  return [on, { ...EMPTY, rank, chances: lost, endsFrame: true, ...spentUntilEnd(used) }];
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

/** Jobs of the plan that may fail: follow-up work, or the end of the frame. */
function failingJobs(plan: WorkPlan, ledger: Ledger, classes: number): Uncertainty[] {
  const jobs: Uncertainty[] = [];
  for (const index of plan.resources) {
    const { failure, task } = ledger.resources[index]!;
    if (failure === null || task === null) continue;
    const ways = waysOfFailing(failure, task, plan, ledger, classes);
    if (ways.length > 0)
      jobs.push({ of: task.operation.id, ways, opening: takenBy(task, plan, ledger), job: task.operation });
  }
  return jobs;
}

function waysOfFailing(
  failure: JobFailure,
  { openEnd }: Task,
  plan: WorkPlan,
  ledger: Ledger,
  classes: number,
): readonly Way[] {
  const own = { ...failure, resources: [], takes: [] };
  const { resources, takes, money, minutes, endsFrame, untilEnd } =
    failure.next.length === 0 ? own : followingWork(failure.next, plan, ledger);
  const certain = (share: number) => new Float64Array(classes).fill(failure.chance * share);
  const ways: Way[] = [];
  if (endsFrame < 1 && (money.mean > 0 || minutes.mean > 0)) {
    const late = failure.next.length === 0 ? 0 : lateness(minutes.mean, openEnd);
    const taken = { mean: minutes.mean, variance: minutes.variance + late };
    ways.push({ ...EMPTY, chances: certain(1 - endsFrame), money, minutes: taken, resources, takes });
  }
  if (endsFrame > 0)
    ways.push({
      ...EMPTY,
      chances: certain(endsFrame),
      endsFrame: true,
      money: { mean: untilEnd.money, variance: 0 },
      minutes: { mean: untilEnd.minutes, variance: 0 },
    });
  return ways;
}

/** What of the plan a job takes beside itself before its failure shows. What the opening work takes is taken in any case. */
function takenBy({ operation, place }: Task, plan: WorkPlan, ledger: Ledger): readonly number[] {
  if (isOpening(operation)) return [];
  const [, ...others] = ledger.forOperation(operation, place).resources;
  return others.filter((index) => plan.resources.has(index));
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

/** Papers are asked for, not repaired: they are owed. */
export function isPaper(check: Check): boolean {
  return check.group === "paperwork" && check.id !== "equipment";
}
