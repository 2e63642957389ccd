import type { Money } from "../../quantity.ts";
import type { Uncertainty } from "../../service/uncertainty.ts";
import type { ClassSums, SharedResource } from "../classSums.ts";
import type { Unknown } from "../weighedCourse.ts";
import type { KnownWay } from "./knownWay.ts";
import { type LeafSums, leafSums } from "./leafSums.ts";
import { withoutOne } from "./withoutOne.ts";

/**
 * What is not known of a rideable course, or what is left of it once some of it is known, class by class: the course is worth
 * `aside + (1 - e) (going - carried x c) + e (ended - through x d)`, where known work costs c, or ends the frame with chance e after it has cost d.
 */
export interface Rest {
  /** Worth where the course is changed at a discovery, or a decided one ends the frame. */
  readonly aside: Float64Array;
  /** Worth where neither happens, what the rest brings counted; and the chance that the work is carried through. */
  readonly going: Float64Array;
  readonly carried: Float64Array;
  /** Worth where neither happens but the frame ends all the same, before what that costs; and the chance of getting there. */
  readonly ended: Float64Array;
  readonly through: Float64Array;
  /** Resources that the rest may ask for: it pays for none that known work pays for. */
  readonly shared: readonly SharedResource[];
  /** Worth of a minute at speed 1. */
  readonly minuteWorth: Money;
}

/** All of a course, and what is left without some of it. */
export interface Rests {
  readonly all: Rest;
  /** All but some uncertainties. */
  readonly without: (known: readonly Uncertainty[]) => Rest;
}

export function restsOf(unknown: Unknown): Rests {
  const whole = leafSums(unknown, []);
  return {
    all: restOf(whole, unknown.sums, unknown),
    without: (known) => restWithout(known, unknown, whole),
  };
}

/** @param whole sums over the leaves with nothing known, which stand where none of those known is decided on */
function restWithout(known: readonly Uncertainty[], unknown: Unknown, whole: LeafSums): Rest {
  const { decided, sums } = unknown;
  const places = known.map((one) => decided.indexOf(one)).filter((place) => place >= 0);
  const undecided = known.filter((one) => !decided.includes(one));
  const left = undecided.reduce((others, one) => withoutOne(others, one), sums);
  return restOf(places.length === 0 ? whole : leafSums(unknown, places), left, unknown);
}

function restOf({ through, going, spent, aside }: LeafSums, sums: ClassSums, { stakes }: Unknown): Rest {
  const { minuteWorth } = stakes;
  const count = through.length;
  const rest: Rest = {
    aside,
    going: new Float64Array(count),
    carried: new Float64Array(count),
    ended: new Float64Array(count),
    through,
    shared: sums.shared,
    minuteWorth,
  };
  for (let z = 0; z < count; z++) {
    const cost = sums.money[z]! + sums.told[z]! + sums.minutes[z]! * minuteWorth;
    const wasted = sums.endMoney[z]! + sums.endMinutes[z]! * minuteWorth;
    const survival = sums.survival[z]!;
    rest.ended[z] = through[z]! * stakes.ended - spent[z]!;
    rest.going[z] =
      survival * (going[z]! - through[z]! * cost) + (1 - survival) * (rest.ended[z]! - through[z]! * wasted);
    rest.carried[z] = survival * through[z]!;
  }
  return rest;
}

/**
 * Worth of the course from the opening work on, where the classes have these weights and something is known to come, what is done at discoveries staying as
 * it was decided.
 */
export function worthAfter(
  { aside, going, carried, ended, through, shared, minuteWorth }: Rest,
  { cost, ends, lost, resources }: KnownWay,
  classes: Float64Array,
): Money {
  let worth = 0;
  for (let z = 0; z < classes.length; z++) {
    const on = (1 - ends) * (going[z]! - carried[z]! * cost);
    worth += classes[z]! * (aside[z]! + on + ends * (ended[z]! - through[z]! * lost));
  }
  if (resources.size > 0)
    for (const { index, asked, money, minutes } of shared) {
      if (!resources.has(index)) continue;
      let twice = 0;
      for (let z = 0; z < classes.length; z++) twice += classes[z]! * carried[z]! * asked[z]!;
      worth += (1 - ends) * twice * (money + minutes * minuteWorth);
    }
  return worth;
}
