import type { Work } from "../../../worker/engine/decision/courseBranch.ts";

/** Means and variances of money and minutes, by place. */
export interface Amounts {
  readonly money: Float64Array;
  readonly moneyVariance: Float64Array;
  readonly minutes: Float64Array;
  readonly minutesVariance: Float64Array;
}

export function amountsOf(size: number): Amounts {
  return {
    money: new Float64Array(size),
    moneyVariance: new Float64Array(size),
    minutes: new Float64Array(size),
    minutesVariance: new Float64Array(size),
  };
}

/** Adds independent works at a place. */
export function addAt(
  { money, moneyVariance, minutes, minutesVariance }: Amounts,
  at: number,
  ...works: readonly Work[]
): void {
  for (const work of works) {
    money[at]! += work.money.mean;
    moneyVariance[at]! += work.money.variance;
    minutes[at]! += work.minutes.mean;
    minutesVariance[at]! += work.minutes.variance;
  }
}

/** Money that is fixed, and no time. */
export function fixedMoney(mean: number): Work {
  return { money: { mean, variance: 0 }, minutes: { mean: 0, variance: 0 } };
}
