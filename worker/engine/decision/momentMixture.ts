import type { Minutes, Money, Probability } from "../quantity.ts";
import { cubed, squared } from "../statistics/elementary/powers.ts";

/** One part of a mixture; what is left out is nought. */
export interface MixturePart {
  readonly money: Money;
  /** Taken off the takings where it is told to the buyer. */
  readonly told?: Money;
  /** Variance and third central moment of money and told together. */
  readonly variance?: number;
  readonly third?: number;
  /** Variance and third central moment of what is told, and its covariance with money. */
  readonly toldVariance?: number;
  readonly toldThird?: number;
  readonly toldWithMoney?: number;
  readonly minutes: Minutes;
  readonly minutesVariance?: number;
  /** Of money and told together with minutes. */
  readonly covariance?: number;
}

/** Money, told money and minutes of a mixture, summed up to the third moment: what lies within the parts and what lies between them. */
export class MomentMixture {
  chance = 0;
  money = 0;
  told = 0;
  minutes = 0;
  variance = 0;
  third = 0;
  toldVariance = 0;
  toldThird = 0;
  toldWithMoney = 0;
  minutesVariance = 0;
  covariance = 0;
  readonly #parts: (readonly [chance: Probability, part: MixturePart])[] = [];

  add(chance: Probability, part: MixturePart): void {
    if (chance <= 0) return;
    this.chance += chance;
    this.money += chance * part.money;
    this.told += chance * (part.told ?? 0);
    this.minutes += chance * part.minutes;
    this.#parts.push([chance, part]);
  }

  /** Divides by the chance, and takes the moments about the common means. */
  close(): this {
    if (this.chance === 0) return this;
    this.money /= this.chance;
    this.told /= this.chance;
    this.minutes /= this.chance;
    for (const [chance, part] of this.#parts) {
      const { money, told = 0, variance = 0, third = 0, minutes, minutesVariance = 0, covariance = 0 } = part;
      const { toldVariance = 0, toldThird = 0, toldWithMoney = 0 } = part;
      const share = chance / this.chance;
      const off = money + told - this.money - this.told;
      const offTold = told - this.told;
      const offMinutes = minutes - this.minutes;
      this.variance += share * (variance + off * off);
      this.third += share * (third + 3 * off * variance + cubed(off));
      this.toldVariance += share * (toldVariance + squared(offTold));
      this.toldThird += share * (toldThird + 3 * offTold * toldVariance + cubed(offTold));
      this.toldWithMoney += share * (toldWithMoney + offTold * (off - offTold));
      this.minutesVariance += share * (minutesVariance + offMinutes * offMinutes);
      this.covariance += share * (covariance + off * offMinutes);
    }
    return this;
  }
}
