import type { Money } from "../quantity.ts";
import type { Bench } from "./bench.ts";
import { failureChance, waysOn } from "./failure.ts";
import { releaseTime } from "./seizedPart.ts";
import { openEnd } from "./stopLimit.ts";
import type { Task } from "./task.ts";

/**
 * A task whose end is open, tried no longer than pays: the time until it is free or given up stands in place of its three-point minutes, and the chance
 * that it is given up in place of the table's chance of failure. Any other task is returned as it is.
 */
export function givenUpInTime(task: Task, bench: Bench): Task {
  const { operation, variant } = task;
  if (!operation.openEnded || !operation.failure || bench.done.has(operation.id)) return task;
  const { hourlyGoal, speedFactor } = bench.workshop;
  const release = releaseTime(variant?.minutes ?? operation.minutes, failureChance(operation.failure, bench));
  const end = openEnd(release, worthOfFreeing(task, bench), (hourlyGoal * speedFactor) / 60, bench.stopRule);
  return { ...task, minutes: end.minutes, openEnd: end };
}

/** What the cheapest way to go on costs, its risk to the frame included; the frame where there is none. */
function worthOfFreeing(task: Task, bench: Bench): Money {
  const { hourlyGoal, speedFactor } = bench.workshop;
  const { frameAtStake } = bench;
  const extra = task.operation.failure?.extraMinutes ?? 0;
  const costs = waysOn(task, bench).map(({ money, minutes, endsFrame }) => {
    const time = ((minutes.mean + extra) * speedFactor * hourlyGoal) / 60;
    return money.mean + time + endsFrame * frameAtStake;
  });
  return costs.length === 0 ? frameAtStake : Math.min(...costs);
}
