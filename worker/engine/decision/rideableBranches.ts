import type { Probability } from "../quantity.ts";
import { log } from "../statistics/elementary/log.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { logNormalMean, logNormalSd } from "../statistics/logNormal.ts";
import type { Branch } from "./branch.ts";
import { askedBy, type ClassSums, classSums } from "./classSums.ts";
import { outlayBesideWork, stillAhead } from "./courseBranch.ts";
import { type Leaf, restOf } from "./discovery.ts";
import { changed, ended } from "./givenUp.ts";
import { MomentMixture } from "./momentMixture.ts";
import { nearLeaves } from "./nearLeaves.ts";
import { beyondOpening } from "./openingWork.ts";
import type { RideableSetting } from "./rideableSetting.ts";
import { splitBy, toldApart } from "./toldApart.ts";
import type { OpenCourse } from "./weighedCourse.ts";

/**
 * The branches of a rideable course, with what would show in the shape of its margin told apart (see toldApart).
 */
export function rideableBranches(leaves: readonly Leaf[], setting: RideableSetting): readonly Branch[] {
  const { sale, plan, rest, joint, decided, classes, resources } = setting;
  const price = sale.share * logNormalSd(sale.price);
  const apart = toldApart(joint, classes, squared(price) + plan.money.variance + Math.max(...rest.variance));
  if (apart.length === 0) return branchesOf(leaves, setting);
  const others = joint.filter((one) => !apart.includes(one));
  return branchesOf(splitBy(leaves, apart, resources), {
    ...setting,
    rest: classSums(others, askedBy([...decided, ...apart]), classes.length, resources),
    beyond: beyondOpening(others, classes.length),
  });
}

/**
 * One for each distinct way of going on, one for all changes of course, one for a finished frame. Classes of history are
 * mixed within a branch: its mean, variance, skewness and the covariance of money and hours are those of the mixture, exactly.
 */
function branchesOf(leaves: readonly Leaf[], setting: RideableSetting): readonly Branch[] {
  const on = leaves.filter(({ kind }) => kind === "on");
  return nearLeaves(on, setting)
    .map((group) => goingOn(group, setting))
    .concat(ended(leaves, setting), changed(leaves, setting))
    .filter(({ chance }) => chance > 0);
}

/** Share of the takings that is left at least, whatever is told: a price has a logarithm. */
const LEAST_LEFT: Probability = 1e-3;

/** What is told to the buyer lowers the price on average; how far it varies goes with the money out, as it comes with it. */
function goingOn(group: readonly Leaf[], { situation, sale, plan, rest }: RideableSetting): Branch {
  const mixture = new MomentMixture();
  for (const { mass, path } of group) {
    const { work, told } = path;
    for (let z = 0; z < mass.length; z++) {
      const { money, minutes } = restOf(rest, path, z);
      mixture.add(mass[z]! * rest.survival[z]!, {
        money: work.money.mean + money,
        told: told + rest.told[z]!,
        variance: work.money.variance + rest.variance[z]!,
        third: rest.third[z]!,
        minutes: work.minutes.mean + minutes,
        minutesVariance: work.minutes.variance + rest.minutesVariance[z]!,
        covariance: rest.covariance[z]!,
      });
    }
  }
  mixture.close();
  const left = Math.max(LEAST_LEFT, 1 - mixture.told / (sale.share * logNormalMean(sale.price)));
  const ahead = stillAhead(situation);
  return {
    chance: mixture.chance,
    price: { ...sale.price, logMedian: sale.price.logMedian + log(left) },
    share: sale.share,
    outlay: {
      mean: plan.money.mean + mixture.money + outlayBesideWork(situation, true),
      variance: plan.money.variance + mixture.variance,
      third: mixture.third,
    },
    minutes: {
      mean: plan.minutes.mean + mixture.minutes,
      variance: plan.minutes.variance + mixture.minutesVariance,
    },
    covariance: mixture.covariance,
    otherMinutes: ahead.minutes,
  };
}

/** Expected work beyond the shown plan where it is carried through. */
export function allowanceOf(leaves: readonly Leaf[], rest: ClassSums): OpenCourse["allowance"] {
  const mixture = new MomentMixture();
  for (const { kind, mass, path } of leaves) {
    if (kind !== "on") continue;
    for (let z = 0; z < mass.length; z++) {
      const { money, minutes } = restOf(rest, path, z);
      const { work } = path;
      mixture.add(mass[z]! * rest.survival[z]!, {
        money: work.money.mean + money,
        minutes: work.minutes.mean + minutes,
      });
    }
  }
  const { money, minutes } = mixture.close();
  return { money, minutes };
}
