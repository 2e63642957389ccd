import type { Probability } from "../quantity.ts";
import { usedWork } from "../service/uncertainty.ts";
import { logNormalMean, logNormalSd } from "../statistics/logNormal.ts";
import type { Branch, Sale } from "./branch.ts";
import type { Change } from "./changeOfCourse.ts";
import type { ClassSums } from "./classSums.ts";
import { outlayBesideWork, stillAhead, type Work } from "./courseBranch.ts";
import { type Leaf, restOf } from "./discovery.ts";
import { byLots } from "./lots.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse } from "./weighedCourse.ts";

/** How a rideable course may go, as far as its branches depend on it. */
export interface Setting {
  readonly situation: Situation;
  /** The finished bike. */
  readonly sale: Sale;
  /** The shown plan. */
  readonly plan: Work;
  readonly opening: Work;
  /** Third central moment of the opening work's money. */
  readonly openingThird: number;
  readonly change: Change;
  readonly rest: ClassSums;
}

/**
 * Leaves nearer than this, in standard deviations of what smooths them, become one branch: a mixture of two so near differs from one distribution of the same
 * three moments by less than a thousandth of probability.
 */
const NEAR = 0.5;
/** A leaf less likely than this goes with its neighbour, however far. */
const SELDOM: Probability = 0.001;

/**
 * The branches of a rideable course: one for each distinct way of going on, one for all changes of course, one for a finished frame. Classes of history are
 * mixed within a branch: its mean, variance, skewness and the covariance of money and hours are those of the mixture, exactly.
 */
export function rideableBranches(leaves: readonly Leaf[], setting: Setting): readonly Branch[] {
  const on = leaves.filter(({ kind }) => kind === "on");
  return nearLeaves(on, setting)
    .map((group) => goingOn(group, setting))
    .concat(ended(leaves, setting), changed(leaves, setting))
    .filter(({ chance }) => chance > 0);
}

/** Leaves in groups that price and pace smooth into one. */
function nearLeaves(
  leaves: readonly Leaf[],
  { sale, plan, rest, situation }: Setting,
): readonly (readonly Leaf[])[] {
  const scatter = plan.money.variance + Math.max(...rest.variance);
  const moneySd = Math.hypot(sale.share * logNormalSd(sale.price), Math.sqrt(scatter));
  const minutesSd = situation.settled.workshop.speedSpread * plan.minutes.mean;
  const amount = ({ path }: Leaf) => path.work.money.mean + path.told;
  const near = (a: Leaf, b: Leaf) =>
    Math.abs(amount(a) - amount(b)) <= NEAR * moneySd &&
    Math.abs(a.path.work.minutes.mean - b.path.work.minutes.mean) <= NEAR * minutesSd;
  const groups: Leaf[][] = [];
  // The likeliest first: it gathers its neighbours.
  const rising = [...leaves].sort((a, b) => chanceOf(b.mass) - chanceOf(a.mass));
  for (const leaf of rising) {
    const group =
      groups.find(([first]) => near(first!, leaf)) ?? (chanceOf(leaf.mass) < SELDOM ? groups[0] : undefined);
    if (group) group.push(leaf);
    else groups.push([leaf]);
  }
  return groups;
}

function chanceOf(mass: Float64Array): Probability {
  return mass.reduce((sum, one) => sum + one, 0);
}

/** Money, told money and minutes of a mixture, summed up to the third moment about a common point. */
class Mixture {
  chance = 0;
  money = 0;
  told = 0;
  minutes = 0;
  variance = 0;
  third = 0;
  minutesVariance = 0;
  covariance = 0;
  readonly #parts: number[][] = [];

  add(
    chance: number,
    money: number,
    told: number,
    variance: number,
    third: number,
    minutes: number,
    minutesVariance: number,
    covariance: number,
  ): void {
    if (chance <= 0) return;
    this.chance += chance;
    this.money += chance * money;
    this.told += chance * told;
    this.minutes += chance * minutes;
    this.#parts.push([chance, money + told, variance, third, minutes, minutesVariance, covariance]);
  }

  /** Divides by the chance, and adds what lies between the parts to what lies within them. */
  close(): this {
    if (this.chance === 0) return this;
    this.money /= this.chance;
    this.told /= this.chance;
    this.minutes /= this.chance;
    for (const [chance, amount, variance, third, minutes, minutesVariance, covariance] of this.#parts) {
      const share = chance! / this.chance;
      const off = amount! - this.money - this.told;
      const offMinutes = minutes! - this.minutes;
      this.variance += share * (variance! + off * off);
      this.third += share * (third! + 3 * off * variance! + off ** 3);
      this.minutesVariance += share * (minutesVariance! + offMinutes * offMinutes);
      this.covariance += share * (covariance! + off * offMinutes);
    }
    return this;
  }
}

/** What is told to the buyer lowers the price on average; how far it varies goes with the money out, as it comes with it. */
function goingOn(group: readonly Leaf[], { situation, sale, plan, rest }: Setting): Branch {
  const mixture = new Mixture();
  for (const { mass, path } of group) {
    const { work, told } = path;
    for (let z = 0; z < mass.length; z++) {
      const { money, minutes } = restOf(rest, path, z);
      mixture.add(
        mass[z]! * rest.survival[z]!,
        work.money.mean + money,
        told + rest.told[z]!,
        work.money.variance + rest.variance[z]!,
        rest.third[z]!,
        work.minutes.mean + minutes,
        work.minutes.variance + rest.minutesVariance[z]!,
        rest.covariance[z]!,
      );
    }
  }
  mixture.close();
  const left = 1 - mixture.told / (sale.share * logNormalMean(sale.price));
  const ahead = stillAhead(situation);
  return {
    chance: mixture.chance,
    price: { ...sale.price, logMedian: sale.price.logMedian + Math.log(left) },
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
  const mixture = new Mixture();
  for (const { kind, mass, path } of leaves) {
    if (kind !== "on") continue;
    for (let z = 0; z < mass.length; z++) {
      const { money, minutes } = restOf(rest, path, z);
      const { work } = path;
      mixture.add(
        mass[z]! * rest.survival[z]!,
        work.money.mean + money,
        0,
        0,
        0,
        work.minutes.mean + minutes,
        0,
        0,
      );
    }
  }
  const { money, minutes } = mixture.close();
  return { money, minutes };
}

/** The frame is finished: what was opened and spent is lost, and what is left is salvaged. */
function ended(leaves: readonly Leaf[], setting: Setting): readonly Branch[] {
  const { situation, rest } = setting;
  const mixture = new Mixture();
  for (const { kind, mass, path } of leaves) {
    if (kind === "changed") continue;
    const { money, minutes } = spentBy(path, situation);
    for (let z = 0; z < mass.length; z++) {
      const on = kind === "on";
      mixture.add(
        mass[z]! * (on ? 1 - rest.survival[z]! : 1),
        money + (on ? rest.endMoney[z]! : 0),
        0,
        0,
        0,
        minutes + (on ? rest.endMinutes[z]! : 0),
        0,
        0,
      );
    }
  }
  return backedOut(mixture.close(), setting, situation.salvage);
}

/** The course given up: one branch for all that had spent nearly as much by then. */
function changed(leaves: readonly Leaf[], setting: Setting): readonly Branch[] {
  const { situation, change } = setting;
  const smooth = change.sale ? change.sale.share * logNormalSd(change.sale.price) : 0;
  const groups: { readonly first: number; readonly mixture: Mixture }[] = [];
  for (const { kind, mass, path } of leaves) {
    if (kind !== "changed") continue;
    const { money, minutes } = spentBy(path, situation);
    let group = groups.find(({ first }) => Math.abs(money - first) <= NEAR * smooth);
    if (!group) {
      group = { first: money, mixture: new Mixture() };
      groups.push(group);
    }
    group.mixture.add(chanceOf(mass), money, 0, 0, 0, minutes, 0, 0);
  }
  return groups.flatMap(({ mixture }) =>
    backedOut(mixture.close(), setting, { sale: change.sale, ...change.work }),
  );
}

function backedOut(
  spent: Mixture,
  { situation, opening, openingThird }: Setting,
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
