import type { Minutes, Money } from "../quantity.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import type { Branch, Sale } from "./branch.ts";
import { outlayBesideWork, stillAhead, type Work } from "./courseBranch.ts";
import type { Situation } from "./situation.ts";

/** How a course ends in one scenario, at the mean sale price. */
export interface Standing {
  /** What reaches the user at the mean price; it goes up and down with the price. */
  readonly takings: Money;
  readonly money: Money;
  /** At speed 1. */
  readonly minutes: Minutes;
  /** Time that does not depend on the user's speed. */
  readonly otherMinutes: Minutes;
}

/** Where a branch stands on average. */
export function standingOf({ price, share, outlay, minutes, otherMinutes }: Branch): Standing {
  return {
    takings: price ? share * logNormalMean(price) : 0,
    money: outlay.mean,
    minutes: minutes.mean,
    otherMinutes,
  };
}

/** Where work and a sale stand, purchase and travel counted where they lie ahead, fixed fee and packing where something is sold. */
export function standingAfter(situation: Situation, sale: Sale | null, ...works: readonly Work[]): Standing {
  const ahead = stillAhead(situation);
  let money = outlayBesideWork(situation, sale !== null);
  let minutes = 0;
  for (const work of works) {
    money += work.money.mean;
    minutes += work.minutes.mean;
  }
  return {
    takings: sale ? sale.share * logNormalMean(sale.price) : 0,
    money,
    minutes,
    otherMinutes: ahead.minutes,
  };
}
