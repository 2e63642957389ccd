import type { Ledger } from "../service/ledger.ts";
import { type Moments, NOTHING, sum } from "../service/moments.ts";
import { placesFor } from "../service/task.ts";
import { NO_WAY, type Uncertainty } from "../service/uncertainty.ts";
import { widestPrice } from "../service/widestPrice.ts";
import { isOpening } from "../service/workingOrder.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import type { ScaledBeta } from "../statistics/scaledBeta.ts";
import { type ClassSums, classSums } from "./classSums.ts";
import type { Work } from "./courseBranch.ts";

/** Work done before the frame is known to hold. */
export interface Opening {
  /** The jobs: papers, wash, and what may end the job. At speed 1. */
  readonly work: Work;
  /** Steps, tools and the like that the jobs take, by resource; other work may take them too, and they are paid once. */
  readonly used: ReadonlySet<number>;
  /** The price in it that varies most. */
  readonly widest: ScaledBeta | null;
}

export function openingWork(plan: WorkPlan, ledger: Ledger): Opening {
  const used = new Set<number>();
  const money: Moments[] = [];
  const minutes: Moments[] = [];
  const tasks = plan.tasks.filter(({ operation }) => isOpening(operation));
  for (const { operation, position } of tasks) {
    for (const place of placesFor(operation, position)) {
      const [job, ...others] = ledger.forOperation(operation, place).resources;
      money.push(ledger.resources[job!]!.money);
      minutes.push(ledger.resources[job!]!.minutes);
      for (const index of others) if (plan.resources.has(index)) used.add(index);
    }
  }
  return {
    work: { money: sum(NOTHING, ...money), minutes: sum(NOTHING, ...minutes) },
    used,
    widest: widestPrice(tasks, ledger),
  };
}

/**
 * What the opening work brings beyond its jobs, by class of history: what follows where one fails that nobody decides on, which is done before anything else
 * shows; less the jobs that an absent fault spares, of which the looks tell at the start. Shared resources are not told apart.
 * @param rest none of whose opening jobs may end the frame
 * @param classes count of classes of history
 */
export function beyondOpening(rest: readonly Uncertainty[], classes: number): ClassSums {
  const early = rest.flatMap((one): readonly Uncertainty[] => {
    const ways = one.ways.filter(({ early: { money, minutes } }) => money.mean !== 0 || minutes.mean !== 0);
    if (ways.length === 0) return [];
    return [{ ...one, ways: ways.map(({ chances, early: own }) => ({ ...NO_WAY, chances, ...own })) }];
  });
  return classSums(early, new Set(), classes, []);
}

/** The opening work with what is expected beyond it, the classes averaged. */
export function expectedOpening({ money, minutes }: Work, beyond: ClassSums, classes: Float64Array): Work {
  const average = (sums: Float64Array) => classes.reduce((sum, one, z) => sum + one * sums[z]!, 0);
  return {
    money: { mean: money.mean + average(beyond.money), variance: money.variance },
    minutes: { mean: minutes.mean + average(beyond.minutes), variance: minutes.variance },
  };
}
