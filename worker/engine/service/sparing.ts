import type { Ledger } from "./ledger.ts";
import { type Moments, NOTHING, sum } from "./moments.ts";
import type { Resource } from "./resource.ts";
import { NO_WAY, type Uncertainty, type Way } from "./uncertainty.ts";
import { isOpening } from "./workingOrder.ts";
import type { WorkPlan } from "./workPlan.ts";

/** Costs of the plan that an absent fault spares, below nought: with them goes how far they vary. */
export function sparing(
  resources: readonly number[],
  plan: WorkPlan,
  ledger: Ledger,
): Pick<Way, "money" | "minutes" | "spares" | "early"> {
  const spared = new Set(resources);
  const own = new Set<number>();
  const others = new Set<number>();
  for (const index of plan.resources)
    for (const opened of openedFor(ledger.resources[index]!, ledger))
      (spared.has(index) ? own : others).add(opened);
  // What later work takes apart as well is not spared by then, only put off.
  const early = [...own].filter((index) => plan.resources.has(index) && !others.has(index));
  return {
    ...less(resources, ledger),
    spares: resources,
    early: early.length > 0 ? notBegun(early, ledger) : NO_WAY.early,
  };
}

/** What is not spent where some resources are not needed: a sum that has them and is given this has neither their cost nor their variance. */
export function less(
  resources: readonly number[],
  { resources: all }: Ledger,
): { money: Moments; minutes: Moments } {
  const used = resources.map((index) => all[index]!);
  return {
    money: taken(sum(NOTHING, ...used.map(({ money }) => money))),
    minutes: taken(sum(NOTHING, ...used.map(({ minutes }) => minutes))),
  };
}

/** The same of opening work, where steps and tools are counted at what they cost on average. */
function notBegun(resources: readonly number[], ledger: Ledger): Way["early"] {
  const all = less(resources, ledger);
  const jobs = less(
    resources.filter((index) => ledger.resources[index]!.kind === "task"),
    ledger,
  );
  return {
    money: { mean: all.money.mean, variance: jobs.money.variance },
    minutes: { mean: all.minutes.mean, variance: jobs.minutes.variance },
  };
}

function taken({ mean, variance }: Moments): Moments {
  return { mean: 0 - mean, variance: 0 - variance };
}

/** Everything that a job of the opening work takes, itself too. */
function openedFor({ task }: Resource, ledger: Ledger): readonly number[] {
  if (task === null || !isOpening(task.operation)) return [];
  const { resources, taskInstead } = ledger.forOperation(task.operation, task.place);
  return [...resources, ...taskInstead];
}

/** The jobs fail only where they are done: in each class of history the chance that an absent fault spares one is taken off. */
export function failingWhereDone(all: readonly Uncertainty[]): readonly Uncertainty[] {
  const sparing = all.filter(({ ways }) => ways.some(({ spares }) => spares.length > 0));
  if (sparing.length === 0) return all;
  return all.map((one) => {
    if (one.resource === null) return one;
    const done = doneChance(one.resource, sparing);
    if (done === null) return one;
    const ways = one.ways.map((way) => ({
      ...way,
      chances: way.chances.map((chance, z) => chance * done[z]!),
    }));
    return { ...one, ways };
  });
}

/** Chance by class that no absent fault spares a resource; null where none can. */
function doneChance(resource: number, sparing: readonly Uncertainty[]): Float64Array | null {
  let done: Float64Array | null = null;
  for (const { ways } of sparing) {
    const own = ways.filter(({ spares }) => spares.includes(resource));
    if (own.length === 0) continue;
    done ??= new Float64Array(own[0]!.chances.length).fill(1);
    for (let z = 0; z < done.length; z++)
      done[z]! *= 1 - own.reduce((chance, { chances }) => chance + chances[z]!, 0);
  }
  return done;
}

/** Jobs that one check may spare are joined with it up to so many: their ways multiply. */
const MOST_JOBS = 2;

/**
 * The same uncertainties with a check that may spare jobs of the plan and the failures of these jobs as one: what is spared does not fail. What is left
 * apart counts as independent.
 */
export function withJobsSpared(
  all: readonly Uncertainty[],
  resources: readonly Resource[],
): readonly Uncertainty[] {
  const joined = new Set<Uncertainty>();
  const together = all.map((one) => {
    const spared = new Set(one.ways.flatMap(({ spares }) => spares));
    if (spared.size === 0) return one;
    const jobs = all.filter((job) => job.resource !== null && spared.has(job.resource)).slice(0, MOST_JOBS);
    for (const job of jobs) joined.add(job);
    return jobs.reduce((check, job) => withJob(check, job, resources), one);
  });
  return joined.size === 0 ? all : together.filter((one) => !joined.has(one));
}

/** A check with the failure of a job that some of its ways spare. */
function withJob(check: Uncertainty, job: Uncertainty, resources: readonly Resource[]): Uncertainty {
  const classes = job.ways[0]!.chances;
  const left = new Float64Array(classes.length).fill(1);
  const done = new Float64Array(classes.length).fill(1);
  for (const { chances, spares } of check.ways)
    for (let z = 0; z < left.length; z++) {
      left[z] = Math.max(0, left[z]! - chances[z]!);
      if (spares.includes(job.resource!)) done[z] = Math.max(0, done[z]! - chances[z]!);
    }
  const failing = job.ways.map((way) => ({
    ...way,
    chances: way.chances.map((chance, z) => (done[z]! > 0 ? chance / done[z]! : 0)),
  }));
  const fails = failing.reduce(
    (total, { chances }) => total.map((sum, z) => sum + chances[z]!),
    left.map(() => 0),
  );
  const ways = check.ways.flatMap((way): readonly Way[] => {
    if (way.endsFrame || way.spares.includes(job.resource!)) return [way];
    const works = { ...way, chances: way.chances.map((chance, z) => chance * (1 - fails[z]!)) };
    return [works, ...failing.map((failed) => both(way, failed, resources))];
  });
  const alone = failing.map((failed) => both({ ...NO_WAY, chances: left }, failed, resources));
  return { ...check, ways: [...ways, ...alone] };
}

/** A way together with a failure; what both ask for is paid once. */
function both(way: Way, failed: Way, all: readonly Resource[]): Way {
  const chances = way.chances.map((chance, z) => chance * failed.chances[z]!);
  if (failed.endsFrame) return { ...failed, rank: way.rank, chances };
  const twice = failed.resources.filter((index) => way.resources.includes(index)).map((index) => all[index]!);
  return {
    ...way,
    chances,
    money: sum(way.money, failed.money, ...twice.map(({ money }) => taken(money))),
    minutes: sum(way.minutes, failed.minutes, ...twice.map(({ minutes }) => taken(minutes))),
    resources: [...new Set([...way.resources, ...failed.resources])],
    takes: [...way.takes, ...failed.takes],
    early: {
      money: sum(way.early.money, failed.early.money),
      minutes: sum(way.early.minutes, failed.early.minutes),
    },
  };
}
