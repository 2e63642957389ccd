import type { Money } from "../quantity.ts";
import type { Moments } from "../service/moments.ts";
import { usedWork } from "../service/uncertainty.ts";
import { hypot } from "../statistics/elementary/powers.ts";
import { logNormalSd } from "../statistics/logNormal.ts";
import type { Branch } from "./branch.ts";
import type { Change } from "./changeOfCourse.ts";
import type { ClassSums } from "./classSums.ts";
import { outlayBesideWork, stillAhead, type Work } from "./courseBranch.ts";
import type { Leaf } from "./discovery.ts";
import { byLots } from "./lots.ts";
import { type MixturePart, MomentMixture } from "./momentMixture.ts";
import { NEAR } from "./nearLeaves.ts";
import type { RideableSetting } from "./rideableSetting.ts";
import type { Situation } from "./situation.ts";

/** The frame is finished: what was opened and spent is lost, and what is left is salvaged. */
export function ended(leaves: readonly Leaf[], setting: RideableSetting): readonly Branch[] {
  const { situation, rest, beyond, opening } = setting;
  const { salvage } = situation;
  const lost = leaves.filter(({ kind }) => kind !== "changed");
  // Pieces that sell or do not smooth it anyhow.
  const smooth = salvage.sale?.lots
    ? Infinity
    : hypot(smoothing(salvage.sale), Math.sqrt(opening.money.variance));
  return gathered(lost, smooth, situation).flatMap((group) => {
    const mixture = new MomentMixture();
    for (const { leaf, spent } of group) {
      const on = leaf.kind === "on";
      for (let z = 0; z < leaf.mass.length; z++)
        mixture.add(
          leaf.mass[z]! * (on ? 1 - rest.survival[z]! : 1),
          begun(beyond, z, {
            money: added(spent.money, on ? rest.endMoney[z]! : 0),
            minutes: added(spent.minutes, on ? rest.endMinutes[z]! : 0),
          }),
        );
    }
    return backedOut(mixture.close(), setting, salvage);
  });
}

/** The course given up: what is done instead. */
export function changed(leaves: readonly Leaf[], setting: RideableSetting): readonly Branch[] {
  const { situation, change, beyond } = setting;
  const given = leaves.filter(({ kind }) => kind === "changed");
  return gathered(given, smoothing(change.sale), situation).flatMap((group) => {
    const mixture = new MomentMixture();
    for (const { leaf, spent } of group)
      for (let z = 0; z < leaf.mass.length; z++) mixture.add(leaf.mass[z]!, begun(beyond, z, spent));
    return backedOut(mixture.close(), setting, { sale: change.sale, ...change.work });
  });
}

/** Spread of what is sold instead. */
function smoothing(sale: Change["sale"]): Money {
  return sale ? sale.share * logNormalSd(sale.price) : 0;
}

interface Given {
  readonly leaf: Leaf;
  readonly spent: Work;
}

/** Leaves in groups that had spent nearly as much by then, as far as what is left smooths it: each a branch. */
function gathered(
  leaves: readonly Leaf[],
  smooth: Money,
  situation: Situation,
): readonly (readonly Given[])[] {
  const groups: Given[][] = [];
  for (const leaf of leaves) {
    const spent = spentBy(leaf.path, situation);
    const near = ([first]: readonly Given[]) =>
      Math.abs(spent.money.mean - first!.spent.money.mean) <= NEAR * smooth;
    const group = groups.find(near);
    if (group) group.push({ leaf, spent });
    else groups.push([{ leaf, spent }]);
  }
  return groups;
}

function backedOut(
  spent: MomentMixture,
  { situation, opening, widest }: RideableSetting,
  instead: Work & { readonly sale: Change["sale"] },
): readonly Branch[] {
  const ahead = stillAhead(situation);
  const { sale, money, minutes } = instead;
  const fixed = outlayBesideWork(situation, sale !== null);
  const branch: Branch = {
    chance: spent.chance,
    price: sale?.price ?? null,
    share: sale?.share ?? 0,
    outlay: {
      mean: opening.money.mean + money.mean + spent.money + fixed,
      variance: opening.money.variance + money.variance + spent.variance,
      third: spent.third,
      ...(widest && { widest }),
    },
    minutes: {
      mean: opening.minutes.mean + minutes.mean + spent.minutes,
      variance: opening.minutes.variance + minutes.variance + spent.minutesVariance,
    },
    covariance: spent.covariance,
    otherMinutes: ahead.minutes,
  };
  return byLots(branch, sale);
}

/** What was spent in a class, with what the opening work brought beyond its jobs. */
function begun(beyond: ClassSums, z: number, { money, minutes }: Work): MixturePart {
  return {
    money: money.mean + beyond.money[z]!,
    variance: money.variance + beyond.variance[z]!,
    third: beyond.third[z]!,
    minutes: minutes.mean + beyond.minutes[z]!,
    minutesVariance: minutes.variance + beyond.minutesVariance[z]!,
    covariance: beyond.covariance[z]!,
  };
}

function added({ mean, variance }: Moments, more: number): Moments {
  return { mean: mean + more, variance };
}

function spentBy({ spent, opened }: Leaf["path"], { ledger }: Situation): Work {
  const { money, minutes } = usedWork(opened, ledger.resources);
  return { money: added(spent.money, money), minutes: added(spent.minutes, minutes) };
}
