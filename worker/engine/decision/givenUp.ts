import { usedWork } from "../service/uncertainty.ts";
import { logNormalSd } from "../statistics/logNormal.ts";
import type { Branch } from "./branch.ts";
import type { Change } from "./changeOfCourse.ts";
import { outlayBesideWork, stillAhead, type Work } from "./courseBranch.ts";
import type { Leaf } from "./discovery.ts";
import { byLots } from "./lots.ts";
import { MomentMixture } from "./momentMixture.ts";
import { chanceOf, NEAR } from "./nearLeaves.ts";
import type { RideableSetting } from "./rideableSetting.ts";
import type { Situation } from "./situation.ts";

/** The frame is finished: what was opened and spent is lost, and what is left is salvaged. */
export function ended(leaves: readonly Leaf[], setting: RideableSetting): readonly Branch[] {
  const { situation, rest } = setting;
  const mixture = new MomentMixture();
  for (const { kind, mass, path } of leaves) {
    if (kind === "changed") continue;
    const { money, minutes } = spentBy(path, situation);
    for (let z = 0; z < mass.length; z++) {
      const on = kind === "on";
      mixture.add(mass[z]! * (on ? 1 - rest.survival[z]! : 1), {
        money: money + (on ? rest.endMoney[z]! : 0),
        minutes: minutes + (on ? rest.endMinutes[z]! : 0),
      });
    }
  }
  return backedOut(mixture.close(), setting, situation.salvage);
}

/** The course given up: one branch for all that had spent nearly as much by then. */
export function changed(leaves: readonly Leaf[], setting: RideableSetting): readonly Branch[] {
  const { situation, change } = setting;
  const smooth = change.sale ? change.sale.share * logNormalSd(change.sale.price) : 0;
  const groups: { readonly first: number; readonly mixture: MomentMixture }[] = [];
  for (const { kind, mass, path } of leaves) {
    if (kind !== "changed") continue;
    const { money, minutes } = spentBy(path, situation);
    let group = groups.find(({ first }) => Math.abs(money - first) <= NEAR * smooth);
    if (!group) {
      group = { first: money, mixture: new MomentMixture() };
      groups.push(group);
    }
    group.mixture.add(chanceOf(mass), { money, minutes });
  }
  return groups.flatMap(({ mixture }) =>
    backedOut(mixture.close(), setting, { sale: change.sale, ...change.work }),
  );
}

function backedOut(
  spent: MomentMixture,
  { situation, opening, openingThird }: RideableSetting,
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
      third: openingThird + spent.third,
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

function spentBy({ spent, opened }: Leaf["path"], { ledger }: Situation): { money: number; minutes: number } {
  const { money, minutes } = usedWork(opened, ledger.resources);
  return { money: spent.money.mean + money, minutes: spent.minutes.mean + minutes };
}
