import { DomainError } from "../domainError.ts";
import type { Hours, Money, MoneyPerHour, Probability } from "../quantity.ts";
import type { Moments } from "../service/moments.ts";
import { log } from "../statistics/elementary/log.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { logNormalQuantile, logNormalSd } from "../statistics/logNormal.ts";
import { normalQuantile } from "../statistics/standardNormal.ts";
import type { Branch } from "./branch.ts";
import type { Expectation } from "./expectation.ts";
import type { Pace } from "./pace.ts";
import { salePriceVariance, takingsAt } from "./takings.ts";

/** What a course's net benefit hangs on. */
export type InputGroup = "salePrice" | "hiddenFaults" | "failingJobs" | "pace" | "partPrices";

/** A course where one group of inputs stands at one end, all else averaged. */
export interface End {
  /** The group's own figure: takings, speed factor, money for planned purchases; what the caller sets for the others. */
  readonly input: number;
  readonly margin: Money;
  readonly hours: Hours;
}

/** One group at its 10 and 90 % points. */
export interface GroupEnds {
  readonly group: InputGroup;
  readonly low: End;
  readonly high: End;
  /** Variance of the net benefit's mean given the group: Var(E[NB | group]). */
  readonly varianceOfExpectation: number;
}

/** A chosen course and what is uncertain about it. */
export interface SensitivityInput {
  readonly branches: readonly Branch[];
  readonly expected: Expectation;
  readonly pace: Pace;
  /** Money for the purchases of the shown plan. */
  readonly plannedPurchases: Moments;
  /** Groups that are not read off the branches. */
  readonly others: readonly GroupEnds[];
  /** Var(NB). */
  readonly variance: number;
}

export interface SensitivityEnd {
  readonly input: number;
  /** E[margin] / E[hours] there. */
  readonly rate: MoneyPerHour;
  readonly netBenefit: Money;
}

export interface Sensitivity {
  readonly group: InputGroup;
  readonly low: SensitivityEnd;
  readonly high: SensitivityEnd;
  /** First-order share of the net benefit's variance, 0 to 1; what is left over to 1 comes of groups together. */
  readonly share: Probability;
}

/** Standard normal score of the upper end; the lower one mirrors it. */
const END = normalQuantile(0.9);

/**
 * How far each group of inputs moves a course's net benefit and rate between its own 10 and 90 % points, the others averaged (a tornado), and the share of
 * variance each explains by itself: Var(E[NB | group]) / Var(NB), the first-order index of Sobol 1993. Widest swing of the net benefit first.
 * The sale price is the residual that every state of the bike shares; pace is the common speed factor, log-normal; part prices are the planned purchases,
 * normal. Groups are taken as independent.
 * @returns the groups at whose ends there is work: without it nothing has a rate
 * @throws DomainError unless the variance is a number of at least 0
 */
export function sensitivityOf(input: SensitivityInput): Sensitivity[] {
  const { variance, pace, others } = input;
  if (!(variance >= 0 && variance < Infinity))
    throw new DomainError("out-of-domain", "variance", variance, "a number of at least 0");
  const groups = [salePrice(input), paceEnds(input), partPrices(input), ...others].filter(
    ({ low, high }) => low.hours > 0 && high.hours > 0,
  );
  const told = groups.map(({ group, low, high, varianceOfExpectation }) => ({
    group,
    low: figuresAt(low, pace),
    high: figuresAt(high, pace),
    share: variance > 0 ? Math.min(1, varianceOfExpectation / variance) : 0,
  }));
  return told.sort((a, b) => swing(b) - swing(a));
}

/** Takings move, outlay and hours stay. */
function salePrice({ branches, expected: { margin, hours } }: SensitivityInput): GroupEnds {
  const average = takingsAt(branches, null);
  const at = (z: number) => {
    const input = takingsAt(branches, z);
    return { input, margin: margin + input - average, hours };
  };
  return {
    group: "salePrice",
    low: at(-END),
    high: at(END),
    varianceOfExpectation: salePriceVariance(branches),
  };
}

/** Hours of work are the speed factor times those at speed 1; travel stays. */
function paceEnds({ branches, expected: { margin, hours }, pace }: SensitivityInput): GroupEnds {
  const { hourlyGoal, speedFactor, speedSpread } = pace;
  const work = branches.reduce((total, { chance, minutes }) => total + chance * minutes.mean, 0) / 60;
  const factor = {
    logMedian: log(speedFactor) - squared(speedSpread) / 2,
    logSd: speedSpread,
  };
  const at = (chance: Probability) => {
    const input = logNormalQuantile(factor, chance);
    return { input, margin, hours: hours + (input - speedFactor) * work };
  };
  const sd = hourlyGoal * work * logNormalSd(factor);
  return { group: "pace", low: at(0.1), high: at(0.9), varianceOfExpectation: squared(sd) };
}

function partPrices({
  expected: { margin, hours },
  plannedPurchases: { mean, variance },
}: SensitivityInput): GroupEnds {
  const sd = Math.sqrt(Math.max(0, variance));
  const at = (z: number) => ({ input: mean + z * sd, margin: margin - z * sd, hours });
  return { group: "partPrices", low: at(-END), high: at(END), varianceOfExpectation: squared(sd) };
}

function figuresAt({ input, margin, hours }: End, { hourlyGoal }: Pace): SensitivityEnd {
  return { input, rate: margin / hours, netBenefit: margin - hourlyGoal * hours };
}

function swing({ low, high }: Sensitivity): Money {
  return Math.abs(high.netBenefit - low.netBenefit);
}
