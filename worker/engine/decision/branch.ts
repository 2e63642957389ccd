import type { Minutes, Probability } from "../quantity.ts";
import type { Moments } from "../service/moments.ts";
import type { LogNormal } from "../statistics/logNormal.ts";

/** One way a course can go. The chances of a course's branches sum to 1. */
export interface Branch {
  readonly chance: Probability;
  /** Going rate before haggling and fee; null where nothing is sold. */
  readonly price: LogNormal | null;
  /** Share of the going rate that reaches the user. */
  readonly share: Probability;
  /** Money out, purchase and travel included. */
  readonly outlay: Moments;
  /** Work at speed 1. */
  readonly minutes: Moments;
  /** Time that does not depend on the user's speed: travel. */
  readonly otherMinutes: Minutes;
}
