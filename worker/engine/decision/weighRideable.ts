import { withFailedCures } from "../service/failedCures.ts";
import type { Fault } from "../service/fault.ts";
import type { CourseId } from "../service/operation.ts";
import { withOwnTime } from "../service/ownTime.ts";
import { planRideable } from "../service/rideablePlan.ts";
import { withJobsSpared } from "../service/sparing.ts";
import type { Stakes } from "../service/stakes.ts";
import { uncertaintiesOf } from "../service/uncertainties.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import { askedBy, classSums } from "./classSums.ts";
import { costOf, openCourse, titleBranches } from "./courseBranch.ts";
import { cutShort } from "./cutShort.ts";
import { decisiveOf } from "./decisiveOf.ts";
import { unfold } from "./discovery.ts";
import { beyondOpening, expectedOpening, openingWork } from "./openingWork.ts";
import { receivedShare } from "./pricing.ts";
import { allowanceOf, rideableBranches } from "./rideableBranches.ts";
import type { Situation } from "./situation.ts";
import type { WeighedCourse } from "./weighedCourse.ts";

/**
 * Restoring or making safe. Beside the shown plan it carries the expected follow-up of operations that may fail and the allowance for the unseen;
 * with some chance the frame turns out to be finished, or a fault shows that is not worth curing: then the opening work is lost and the best of what is
 * left is done.
 */
export function weighRideable(course: "restore" | "make-safe", situation: Situation): WeighedCourse {
  if (situation.rideableClosedBecause !== null)
    return { course, open: false, because: situation.rideableClosedBecause };
  const { book, pricing, settled } = situation;
  const ledger = situation.ledger.withOrders(book.catalogue.defaults.delivery.orders[course]);
  const share = receivedShare(settled, book, "rideable");
  const stakes = stakesOf(course, situation, share);
  const planned = planRideable(course, ledger, stakes);
  if ("uncurable" in planned) return { course, open: false, because: nothingCures(planned.uncurable) };

  const { plan } = planned;
  const price = pricing.rideable(situation.unworkedCondition + plan.gain, {
    polished: plan.polishes,
    repainted: plan.repaints,
  });
  const sale = stakes.sale(plan.repaints);
  const { work: opening, used: opened, widest } = openingWork(plan, ledger);
  const backedOut = stakes.salvage - costOf(opening, settled);
  const going = share * logNormalMean(price) - settled.fee.fixed - settled.packing - costOf(plan, settled);
  const { weights: classes } = situation.unseen;
  const toldLoss = (penalty: number) => sale.takings(plan.gain) - sale.takings(plan.gain - penalty);
  const uncertainties = uncertaintiesOf(plan, situation.unseen.faults, classes, ledger, {
    toldLoss,
    frameLoss: Math.max(0, going - backedOut),
  });
  const { change } = situation;
  const minuteWorth = (settled.workshop.speedFactor * settled.workshop.hourlyGoal) / 60;
  const { decided: chosen, rest: undecided } = decisiveOf(
    uncertainties,
    going - change.worth + costOf(opening, settled),
    minuteWorth,
  );
  const decided = chosen.map((one) =>
    withOwnTime(cutShort(one, uncertainties, classes, plan, ledger), ledger),
  );
  const rest = undecided.map((one) => withFailedCures(one, plan, ledger));
  const joint = withJobsSpared(rest, ledger.resources);
  const beyond = beyondOpening(joint, classes.length);
  const begun = expectedOpening(opening, beyond, classes);
  const spent = costOf(begun, settled);
  const sums = classSums(joint, askedBy(decided), classes.length, ledger.resources);
  const discovery = {
    classes,
    going,
    changed: change.worth - spent,
    ended: stakes.salvage - spent,
    abandoned: -costOf(situation.fixedPlans.leave, settled) - spent,
    opened,
    minuteWorth,
    resources: [...ledger.resources],
  };
  const { worth, bound, leaves } = unfold(decided, sums, discovery);
  const branches = rideableBranches(leaves, {
    situation,
    sale: { price, share },
    plan,
    opening,
    widest,
    beyond,
    change,
    joint,
    rest: sums,
    decided,
    resources: ledger.resources,
    classes,
  });
  const clear = 1 - plan.endsTitle;
  return openCourse(
    situation,
    plan,
    [
      ...titleBranches(situation, plan),
      ...branches.map((branch) => ({ ...branch, chance: clear * branch.chance })),
    ],
    {
      allowance: allowanceOf(leaves, sums),
      rightToChange: clear * (worth - bound),
      unknown: {
        resources: discovery.resources,
        decided,
        rest,
        joint,
        leaves,
        sale: { price, share },
        opening: begun,
        change,
        sums,
        stakes: discovery,
        toldLoss,
      },
    },
  );
}

/** What the planner weighs: takings over condition in the finish that the course gives, and what a lost frame leaves. */
function stakesOf(
  course: CourseId,
  { pricing, salvage, settled, unworkedCondition }: Situation,
  share: number,
): Stakes {
  const fixed = settled.fee.fixed + settled.packing;
  const saleIn = (repainted: boolean) => {
    const curve = pricing.curve({ polished: course === "restore" || pricing.polished, repainted });
    return {
      takings: (gain: number) => share * curve.mean(unworkedCondition + gain) - fixed,
      largestMarginal: (penalty: number) => share * curve.largestRise(penalty),
    };
  };
  const original = saleIn(false);
  let painted: typeof original | null = null;
  return {
    sale: (repainted) => {
      if (!repainted) return original;
      painted ??= saleIn(true);
      return painted;
    },
    salvage: salvage.worth,
    notPolished: pricing.notPolished,
  };
}

function nothingCures({ check, level }: Fault): string {
  return `${check.name}: ${level.description}. Nothing in the catalogue cures that on this bike.`;
}
