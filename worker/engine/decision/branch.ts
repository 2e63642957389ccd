import type { Minutes, Probability } from "../quantity.ts";
import type { Moments } from "../service/moments.ts";
import type { LogNormal } from "../statistics/logNormal.ts";
import type { ScaledBeta } from "../statistics/scaledBeta.ts";
import type { Lot } from "./lots.ts";

/** Mean, variance and third central moment of an amount. */
export interface SkewMoments extends Moments {
  readonly third: number;
}

/** Money out, as moments of all of it. */
export interface Outlay extends SkewMoments {
  /** The price in it that varies most, where few prices make it up. */
  readonly widest?: ScaledBeta;
}

/** What is sold in a branch. */
export interface Sale {
  /** Going rate before haggling and fee. */
  readonly price: LogNormal;
  /** Share of the going rate that reaches the user. */
  readonly share: Probability;
  /** Where pieces sell or do not: what may be sold together. Absent where one thing is sold. */
  readonly lots?: readonly Lot[];
}

/** One way a course can go. The chances of a course's branches sum to 1. */
export interface Branch {
  readonly chance: Probability;
  /** Going rate before haggling and fee; null where nothing is sold. */
  readonly price: LogNormal | null;
  /** Share of the going rate that reaches the user. */
  readonly share: Probability;
  /** Money out, purchase and travel included. */
  readonly outlay: Outlay;
  /** Work at speed 1. */
  readonly minutes: Moments;
  /** Of money out with minutes: a hidden fault brings both. */
  readonly covariance: number;
  /** Time that does not depend on the user's speed: travel. */
  readonly otherMinutes: Minutes;
}
