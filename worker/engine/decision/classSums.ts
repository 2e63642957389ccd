import type { Resource } from "../service/resource.ts";
import type { Uncertainty, Way } from "../service/uncertainty.ts";
import { cubed, squared } from "../statistics/elementary/powers.ts";
import { zeroRows } from "../statistics/zeroRows.ts";
import { sharingOf } from "./sharing.ts";
import { unionMoments } from "./unionMoments.ts";

/**
 * What some uncertainties bring together in each class of history, given that none of them ends the frame. In a class they are independent, so cumulants
 * add; arrays are by class.
 */
export interface ClassSums {
  /** Chance that none ends the frame. */
  readonly survival: Float64Array;
  /** Expected money for work, what is told to the buyer apart. */
  readonly money: Float64Array;
  readonly told: Float64Array;
  /** Variance and third central moment of money and told together. */
  readonly variance: Float64Array;
  readonly third: Float64Array;
  /** Variance and third central moment of what is told, and its covariance with money; resources that are shared count as often as asked for in it. */
  readonly toldVariance: Float64Array;
  readonly toldThird: Float64Array;
  readonly toldWithMoney: Float64Array;
  /** At speed 1. */
  readonly minutes: Float64Array;
  readonly minutesVariance: Float64Array;
  /** Of money and told together with minutes. */
  readonly covariance: Float64Array;
  /** Expected spending where the frame is ended, given that it is. */
  readonly endMoney: Float64Array;
  readonly endMinutes: Float64Array;
  /** Resources that several of them, or a decided one too, ask for; the sums count each once. */
  readonly shared: readonly SharedResource[];
}

/** A resource that several uncertainties may ask for and that is paid once. */
export interface SharedResource {
  readonly index: number;
  readonly money: number;
  readonly minutes: number;
  /** Chance that at least one asks for it. */
  readonly asked: Float64Array;
}

/**
 * @param classes count of classes of history
 * @param elsewhere resources that uncertainties outside these ask for
 */
export function classSums(
  uncertainties: readonly Uncertainty[],
  elsewhere: ReadonlySet<number>,
  classes: number,
  resources: readonly Resource[],
): ClassSums {
  const sums = emptySums(classes);
  const ending = new Float64Array(classes);
  for (const { ways } of uncertainties) for (let z = 0; z < classes; z++) addWays(sums, ending, ways, z);
  for (let z = 0; z < classes; z++) {
    if (ending[z] === 0) continue;
    sums.endMoney[z]! /= ending[z]!;
    sums.endMinutes[z]! /= ending[z]!;
  }
  const askers = askersOf(uncertainties);
  scatterOnce(sums, uncertainties, askers, resources);
  return { ...sums, shared: payOnce(sums, askers, elsewhere, resources) };
}

/** Arrays in the sums. */
const SUMS = 13;

function emptySums(classes: number): Omit<ClassSums, "shared"> {
  const zeros = zeroRows(SUMS, classes);
  return {
    survival: zeros().fill(1),
    money: zeros(),
    told: zeros(),
    variance: zeros(),
    third: zeros(),
    toldVariance: zeros(),
    toldThird: zeros(),
    toldWithMoney: zeros(),
    minutes: zeros(),
    minutesVariance: zeros(),
    covariance: zeros(),
    endMoney: zeros(),
    endMinutes: zeros(),
  };
}

/** Adds the cumulants of one uncertainty in one class, given that it does not end the frame. */
function addWays(
  sums: Omit<ClassSums, "shared">,
  ending: Float64Array,
  ways: readonly Way[],
  z: number,
): void {
  let lost = 0;
  let money = 0;
  let told = 0;
  let square = 0;
  let cube = 0;
  let toldSquare = 0;
  let toldCube = 0;
  let toldMoney = 0;
  let minutes = 0;
  let minutesSquare = 0;
  let product = 0;
  for (const way of ways) {
    const chance = way.chances[z]!;
    if (way.endsFrame) {
      lost += chance;
      ending[z]! += chance;
      sums.endMoney[z]! += chance * way.money.mean;
      sums.endMinutes[z]! += chance * way.minutes.mean;
      continue;
    }
    const amount = way.money.mean + way.told;
    const { variance } = way.money;
    money += chance * way.money.mean;
    told += chance * way.told;
    square += chance * (amount * amount + variance);
    cube += chance * amount * (amount * amount + 3 * variance);
    toldSquare += chance * squared(way.told);
    toldCube += chance * cubed(way.told);
    toldMoney += chance * way.told * way.money.mean;
    minutes += chance * way.minutes.mean;
    minutesSquare += chance * (squared(way.minutes.mean) + way.minutes.variance);
    product += chance * amount * way.minutes.mean;
  }
  const left = 1 - lost;
  sums.survival[z]! *= left;
  if (left <= 0) return;
  const mean = (money + told) / left;
  const minutesMean = minutes / left;
  const second = square / left;
  sums.money[z]! += money / left;
  sums.told[z]! += told / left;
  sums.variance[z]! += second - mean * mean;
  sums.third[z]! += cube / left - 3 * mean * second + 2 * cubed(mean);
  const toldMean = told / left;
  sums.toldVariance[z]! += toldSquare / left - squared(toldMean);
  sums.toldThird[z]! += toldCube / left - (3 * toldMean * toldSquare) / left + 2 * cubed(toldMean);
  sums.toldWithMoney[z]! += toldMoney / left - (toldMean * money) / left;
  sums.minutes[z]! += minutesMean;
  sums.minutesVariance[z]! += minutesSquare / left - minutesMean * minutesMean;
  sums.covariance[z]! += product / left - mean * minutesMean;
}

type Askers = ReadonlyMap<number, readonly Uncertainty[]>;

/** The uncertainties that may ask for each resource. */
function askersOf(uncertainties: readonly Uncertainty[]): Askers {
  const askers = new Map<number, Uncertainty[]>();
  for (const uncertainty of uncertainties) {
    for (const way of uncertainty.ways) {
      for (const index of way.resources) {
        const known = askers.get(index);
        if (!known) askers.set(index, [uncertainty]);
        else if (known.at(-1) !== uncertainty) known.push(uncertainty);
      }
    }
  }
  return askers;
}

/**
 * Second moments of the uncertainties that share resources, with each paid once. Their third moment is taken to shrink as the variance does: of the same
 * skewness.
 */
function scatterOnce(
  sums: Omit<ClassSums, "shared">,
  uncertainties: readonly Uncertainty[],
  askers: Askers,
  resources: readonly Resource[],
): void {
  const shared = [...askers.keys()].filter((index) => askers.get(index)!.length > 1);
  if (shared.length === 0) return;
  const among = new Set(shared.flatMap((index) => askers.get(index)!));
  const asking = uncertainties.filter((one) => among.has(one));
  const classes = sums.survival.length;
  const added = emptySums(classes);
  const ending = new Float64Array(classes);
  const sharing = sharingOf(asking, shared, resources);
  for (let z = 0; z < classes; z++) {
    for (const { ways } of asking) addWays(added, ending, ways, z);
    const once = unionMoments(sharing, z);
    const ratio = added.variance[z]! > 0 ? Math.max(0, once.variance) / added.variance[z]! : 1;
    sums.third[z]! += (ratio * Math.sqrt(ratio) - 1) * added.third[z]!;
    sums.variance[z]! += once.variance - added.variance[z]!;
    sums.minutesVariance[z]! += once.minutesVariance - added.minutesVariance[z]!;
    sums.covariance[z]! += once.covariance - added.covariance[z]!;
  }
}

/** Takes off the sums what a resource that several ask for would be paid too often. */
function payOnce(
  { money, minutes }: Pick<ClassSums, "money" | "minutes">,
  askers: Askers,
  elsewhere: ReadonlySet<number>,
  resources: readonly Resource[],
): readonly SharedResource[] {
  const shared: SharedResource[] = [];
  for (const [index, asking] of askers) {
    if (asking.length < 2 && !elsewhere.has(index)) continue;
    const cost = resources[index]!;
    const asked = new Float64Array(money.length);
    for (let z = 0; z < asked.length; z++) {
      let sum = 0;
      let none = 1;
      for (const { ways } of asking) {
        const chance = chanceOfAsking(ways, index, z);
        sum += chance;
        none *= 1 - chance;
      }
      asked[z] = 1 - none;
      money[z]! -= (sum - asked[z]!) * cost.money.mean;
      minutes[z]! -= (sum - asked[z]!) * cost.minutes.mean;
    }
    shared.push({ index, money: cost.money.mean, minutes: cost.minutes.mean, asked });
  }
  return shared;
}

/** Resources that some uncertainties may ask for. */
export function askedBy(uncertainties: readonly Uncertainty[]): ReadonlySet<number> {
  return new Set(uncertainties.flatMap(({ ways }) => ways.flatMap(({ resources }) => resources)));
}

/** Chance that an uncertainty asks for a resource in a class, given that it does not end the frame. */
function chanceOfAsking(ways: readonly Way[], index: number, z: number): number {
  let chance = 0;
  let lost = 0;
  for (const way of ways) {
    if (way.endsFrame) lost += way.chances[z]!;
    else if (way.resources.includes(index)) chance += way.chances[z]!;
  }
  return lost < 1 ? chance / (1 - lost) : 0;
}
