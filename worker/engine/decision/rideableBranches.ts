import { squared } from "../statistics/elementary/powers.ts";
import { logNormalSd } from "../statistics/logNormal.ts";
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
import { toldPrices } from "./toldPrices.ts";
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
 * Those of each distinct way of going on, of the changes of course, of a finished frame. Classes of history are mixed within a branch: its mean, variance,
 * skewness and the covariance of money and hours are those of the mixture, exactly.
 */
function branchesOf(leaves: readonly Leaf[], setting: RideableSetting): readonly Branch[] {
  const on = leaves.filter(({ kind }) => kind === "on");
  return nearLeaves(on, setting)
    .flatMap((group) => goingOn(group, setting))
    .concat(ended(leaves, setting), changed(leaves, setting))
    .filter(({ chance }) => chance > 0);
}

/** Carried through to the sale; once for each price that what is told to the buyer may leave. */
function goingOn(
  group: readonly Leaf[],
  { situation, sale, plan, rest }: RideableSetting,
): readonly Branch[] {
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
        toldVariance: rest.toldVariance[z]!,
        toldThird: rest.toldThird[z]!,
        toldWithMoney: rest.toldWithMoney[z]!,
        minutes: work.minutes.mean + minutes,
        minutesVariance: work.minutes.variance + rest.minutesVariance[z]!,
        covariance: rest.covariance[z]!,
      });
    }
  }
  mixture.close();
  const ahead = stillAhead(situation);
  const beside = plan.money.mean + outlayBesideWork(situation, true);
  return toldPrices(mixture, sale, plan.money.variance).map(({ chance, price, outlay }) => ({
    chance: mixture.chance * chance,
    price,
    share: sale.share,
    outlay: { ...outlay, mean: beside + outlay.mean, variance: plan.money.variance + outlay.variance },
    minutes: {
      mean: plan.minutes.mean + mixture.minutes,
      variance: plan.minutes.variance + mixture.minutesVariance,
    },
    covariance: mixture.covariance,
    otherMinutes: ahead.minutes,
  }));
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
