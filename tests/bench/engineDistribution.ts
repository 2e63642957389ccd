import { askedBy, classSums } from "../../worker/engine/decision/classSums.ts";
import { costOf, titleBranches } from "../../worker/engine/decision/courseBranch.ts";
import { unfold } from "../../worker/engine/decision/discovery.ts";
import { beyondOpening, openingWork } from "../../worker/engine/decision/openingWork.ts";
import { type Outcome, outcomeOf } from "../../worker/engine/decision/outcome.ts";
import { rideableBranches } from "../../worker/engine/decision/rideableBranches.ts";
import type { Situation } from "../../worker/engine/decision/situation.ts";
import type { OpenCourse, Unknown } from "../../worker/engine/decision/weighedCourse.ts";
import { logNormalMean } from "../../worker/engine/statistics/logNormal.ts";

/**
 * All that the engine does for a rideable course once it is planned and its uncertainties are weighed: sums by class, the tree of discoveries, branches, the
 * distributions of margin, hours and rate. What planning knows is worked out here, once.
 * @returns does it, from the start each time
 * @throws where it does not come to the branches that the engine came to
 */
export function engineDistribution(
  situation: Situation,
  { course, plan, branches: told }: OpenCourse,
  { decided, joint, sale, opening, change }: Unknown,
): () => Outcome {
  const { settled, salvage, unseen, book } = situation;
  const ledger = situation.ledger.withOrders(
    book.catalogue.defaults.delivery.orders[course as "restore" | "make-safe"],
  );
  const { weights: classes } = unseen;
  const spent = costOf(opening, settled);
  const { work: jobs, used: opened, widest } = openingWork(plan, ledger);
  const stakes = {
    classes,
    going:
      sale.share * logNormalMean(sale.price) - settled.fee.fixed - settled.packing - costOf(plan, settled),
    changed: change.worth - spent,
    ended: salvage.worth - spent,
    abandoned: -costOf(situation.fixedPlans.leave, settled) - spent,
    opened,
    minuteWorth: (settled.workshop.speedFactor * settled.workshop.hourlyGoal) / 60,
    resources: ledger.resources,
  };
  const clear = 1 - plan.endsTitle;
  const branchesOf = () => {
    const { resources } = ledger;
    const sums = classSums(joint, askedBy(decided), classes.length, resources);
    const { leaves } = unfold(decided, sums, stakes);
    const beyond = beyondOpening(joint, classes.length);
    const work = { plan, opening: jobs, widest, beyond };
    const setting = { situation, sale, ...work, change, joint, rest: sums, decided, resources, classes };
    return [
      ...titleBranches(situation, plan),
      ...rideableBranches(leaves, setting).map((branch) => ({ ...branch, chance: clear * branch.chance })),
    ];
  };
  if (JSON.stringify(branchesOf()) !== JSON.stringify(told))
    throw new Error(`${course}: not the branches that the engine came to`);
  return () => outcomeOf(branchesOf(), settled.workshop);
}
