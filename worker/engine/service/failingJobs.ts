import { type JobFailure, lateness } from "./failure.ts";
import { followingWork } from "./followingWork.ts";
import type { Ledger } from "./ledger.ts";
import type { Task } from "./task.ts";
import { NO_WAY, type Uncertainty, type Way } from "./uncertainty.ts";
import { isOpening } from "./workingOrder.ts";
import type { WorkPlan } from "./workPlan.ts";

/** Jobs of the plan that may fail: follow-up work, or the end of the frame. */
export function failingJobs(plan: WorkPlan, ledger: Ledger, classes: number): Uncertainty[] {
  const jobs: Uncertainty[] = [];
  for (const index of plan.resources) {
    const { failure, task } = ledger.resources[index]!;
    if (failure === null || task === null) continue;
    const ways = waysOfFailing(failure, task, plan, ledger, classes);
    if (ways.length === 0) continue;
    const { operation: job } = task;
    jobs.push({ of: job.id, ways, opening: takenBy(task, plan, ledger), job, resource: index });
  }
  return jobs;
}

function waysOfFailing(
  failure: JobFailure,
  { openEnd, operation }: Task,
  plan: WorkPlan,
  ledger: Ledger,
  classes: number,
): readonly Way[] {
  const own = { ...failure, resources: [], takes: [], takesUntilEnd: [] };
  const { resources, takes, money, minutes, endsFrame, untilEnd, takesUntilEnd } =
    failure.next.length === 0 ? own : followingWork(failure.next, plan, ledger);
  const certain = (share: number) => new Float64Array(classes).fill(failure.chance * share);
  const ways: Way[] = [];
  if (endsFrame < 1 && (money.mean > 0 || minutes.mean > 0)) {
    const late = failure.next.length === 0 ? 0 : lateness(minutes.mean, openEnd);
    const taken = { mean: minutes.mean, variance: minutes.variance + late };
    const early = isOpening(operation) ? { money, minutes: taken } : NO_WAY.early;
    ways.push({
      ...NO_WAY,
      chances: certain(1 - endsFrame),
      money,
      minutes: taken,
      resources,
      takes,
      early,
    });
  }
  if (endsFrame > 0)
    ways.push({
      ...NO_WAY,
      chances: certain(endsFrame),
      endsFrame: true,
      money: { mean: untilEnd.money, variance: 0 },
      minutes: { mean: untilEnd.minutes, variance: 0 },
      takes: takesUntilEnd,
    });
  return ways;
}

/** What of the plan a job takes beside itself before its failure shows. What the opening work takes is taken in any case. */
function takenBy({ operation, place }: Task, plan: WorkPlan, ledger: Ledger): readonly number[] {
  if (isOpening(operation)) return [];
  const [, ...others] = ledger.forOperation(operation, place).resources;
  return others.filter((index) => plan.resources.has(index));
}
