import type { Money } from "../../quantity.ts";
import type { Uncertainty } from "../../service/uncertainty.ts";
import type { ClassSums } from "../classSums.ts";
import type { Unknown } from "../weighedCourse.ts";
import type { KnownWay } from "./knownWay.ts";
import { askedTwice, type LeafSums, leafSums } from "./leafSums.ts";
import { withoutOne } from "./withoutOne.ts";

/** What is not known of a rideable course, or what is left of it once some of it is known. */
export interface Rest {
  readonly leaves: LeafSums;
  readonly sums: ClassSums;
}

/**
 * All but some uncertainties.
 * @param all of the course, nothing taken out
 */
export function restWithout(known: readonly Uncertainty[], all: Rest, unknown: Unknown): Rest {
  const places = known.map((one) => unknown.decided.indexOf(one)).filter((place) => place >= 0);
  return {
    leaves: places.length === 0 ? all.leaves : leafSums(unknown, places),
    sums: known
      .filter((one) => !unknown.decided.includes(one))
      .reduce((sums, one) => withoutOne(sums, one), all.sums),
  };
}

/** All of a course. */
export function allOf(unknown: Unknown): Rest {
  return { leaves: leafSums(unknown, []), sums: unknown.sums };
}

/**
 * Worth of the course from the opening work on, where the classes have these weights and something is known to come, what is done at discoveries staying as
 * it was decided.
 */
export function worthAfter(
  { leaves: { through, going, spent, aside }, sums }: Rest,
  known: KnownWay,
  classes: Float64Array,
  { stakes }: Unknown,
): Money {
  let worth = 0;
  for (let z = 0; z < classes.length; z++) {
    const rest = sums.money[z]! + sums.told[z]! + sums.minutes[z]! * stakes.minuteWorth;
    const own = known.cost - askedTwice(known.resources, sums, z, stakes);
    const wasted = sums.endMoney[z]! + sums.endMinutes[z]! * stakes.minuteWorth;
    const ended = through[z]! * (stakes.ended - wasted) - spent[z]!;
    const lives = sums.survival[z]! * (1 - known.ends);
    const on = going[z]! - through[z]! * (rest + own);
    worth += classes[z]! * (lives * on + (1 - lives) * ended + aside[z]!);
  }
  return worth;
}
