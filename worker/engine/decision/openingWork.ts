import type { Probability } from "../quantity.ts";
import type { Ledger } from "../service/ledger.ts";
import { type Moments, NOTHING, sum, withChance } from "../service/moments.ts";
import { placesFor } from "../service/task.ts";
import type { Uncertainty, Way } from "../service/uncertainty.ts";
import { isOpening } from "../service/workingOrder.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import { addWork, NO_WORK, type Work } from "./courseBranch.ts";

/** Work done before the frame is known to hold. */
export interface Opening {
  /** The jobs: papers, wash, and what may end the job. At speed 1. */
  readonly work: Work;
  /** Steps, tools and the like that the jobs take, by resource; other work may take them too, and they are paid once. */
  readonly used: ReadonlySet<number>;
}

export function openingWork(plan: WorkPlan, ledger: Ledger): Opening {
  const used = new Set<number>();
  const money: Moments[] = [];
  const minutes: Moments[] = [];
  for (const { operation, position } of plan.tasks) {
    if (!isOpening(operation)) continue;
    for (const place of placesFor(operation, position)) {
      const [job, ...others] = ledger.forOperation(operation, place).resources;
      money.push(ledger.resources[job!]!.money);
      minutes.push(ledger.resources[job!]!.minutes);
      for (const index of others) if (plan.resources.has(index)) used.add(index);
    }
  }
  return { work: { money: sum(NOTHING, ...money), minutes: sum(NOTHING, ...minutes) }, used };
}

/** Work, and the third central moment of its money: what seldom follows costs much. */
export interface BeyondOpening {
  readonly work: Work;
  readonly third: number;
}

/**
 * What is expected of the opening work beyond its jobs: what follows where one fails that nobody decides on, which is done before anything else shows; less
 * the jobs that an absent fault spares, of which the looks tell at the start.
 * @param rest none of whose opening jobs may end the frame
 * @param classes chance of each class of history
 */
export function beyondOpening(rest: readonly Uncertainty[], classes: Float64Array): BeyondOpening {
  let work = NO_WORK;
  let third = 0;
  for (const { job, ways } of rest) {
    for (const way of ways) {
      const chance = classes.reduce((sum, one, z) => sum + one * way.chances[z]!, 0);
      if (job === null) work = addWork(work, notBegun(way, chance));
      else if (isOpening(job)) {
        const { money, minutes } = way;
        work = addWork(work, { money: withChance(money, chance), minutes: withChance(minutes, chance) });
        third +=
          chance * (1 - chance) * money.mean * (3 * money.variance + (1 - 2 * chance) * money.mean ** 2);
      }
    }
  }
  return { work, third };
}

function notBegun({ sparesOpening: { money, minutes } }: Way, chance: Probability): Work {
  return {
    money: { mean: -chance * money, variance: 0 },
    minutes: { mean: -chance * minutes, variance: 0 },
  };
}
