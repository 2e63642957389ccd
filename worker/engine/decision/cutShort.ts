import type { Probability } from "../quantity.ts";
import type { Ledger } from "../service/ledger.ts";
import type { Moments } from "../service/moments.ts";
import { placesFor } from "../service/task.ts";
import type { Uncertainty } from "../service/uncertainty.ts";
import { isOpening } from "../service/workingOrder.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import { addWork, type Work } from "./courseBranch.ts";

/**
 * An opening job that may end the frame, its ends less the opening work that would have come after it: that is counted in full elsewhere, and is not begun
 * where there is no frame any more. Anything else is returned as it is.
 * @param all every uncertainty of the course
 * @param classes chance of each class of history
 */
export function cutShort(
  one: Uncertainty,
  all: readonly Uncertainty[],
  classes: Float64Array,
  plan: WorkPlan,
  ledger: Ledger,
): Uncertainty {
  if (one.job === null || !isOpening(one.job) || !one.ways.some(({ endsFrame }) => endsFrame)) return one;
  const ways = one.ways.map((way) => {
    if (!way.endsFrame) return way;
    const later = laterThan(one, new Set(way.takes), all, classes, plan, ledger);
    return { ...way, money: less(way.money, later.money), minutes: less(way.minutes, later.minutes) };
  });
  return { ...one, ways };
}

function less(whole: Moments, later: Moments): Moments {
  return { mean: whole.mean - later.mean, variance: whole.variance - later.variance };
}

/** Expected work after a job, with the variances of what is done in any case. @param used of the plan where the job ends the frame */
function laterThan(
  { job }: Uncertainty,
  used: ReadonlySet<number>,
  all: readonly Uncertainty[],
  classes: Float64Array,
  plan: WorkPlan,
  ledger: Ledger,
): Work {
  const works: Work[] = [];
  const taken = new Set(used);
  let reached = true;
  for (const { operation, position } of plan.tasks) {
    if (!isOpening(operation)) continue;
    for (const place of placesFor(operation, position)) {
      const [task, ...others] = ledger.forOperation(operation, place).resources;
      if (!reached) works.push(...expectedTask(task!, all, classes, ledger));
      for (const index of others) {
        if (!plan.resources.has(index) || taken.has(index)) continue;
        taken.add(index);
        if (reached) continue;
        works.push(certain(ledger.resources[index]!));
      }
    }
    if (operation === job) reached = false;
  }
  return addWork(...works);
}

function certain({ money, minutes }: Work): Work {
  return { money: { mean: money.mean, variance: 0 }, minutes: { mean: minutes.mean, variance: 0 } };
}

/** A job as far as no absent fault spares it, and what follows where it fails. */
function expectedTask(
  task: number,
  all: readonly Uncertainty[],
  classes: Float64Array,
  ledger: Ledger,
): readonly Work[] {
  const works: Work[] = [];
  let done: Probability = 1;
  for (const { resource, ways } of all) {
    for (const { chances, spares, early } of ways) {
      if (resource !== task && !spares.includes(task)) continue;
      const chance = classes.reduce((sum, one, z) => sum + one * chances[z]!, 0);
      if (resource === task) works.push(certain(times(early, chance)));
      else done -= chance;
    }
  }
  return [...works, times(ledger.resources[task]!, done)];
}

function times({ money, minutes }: Work, by: Probability): Work {
  return {
    money: { mean: by * money.mean, variance: by * money.variance },
    minutes: { mean: by * minutes.mean, variance: by * minutes.variance },
  };
}
