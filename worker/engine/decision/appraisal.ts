import type { CheckId, LevelId } from "../inspection/check.ts";
import type { Finding, Mismatch } from "../inspection/finding.ts";
import type { Factor } from "../inspection/history/factor.ts";
import type { RaisedBy } from "../inspection/history/raisedBy.ts";
import type { MarkedTyre } from "../inspection/markedTyre.ts";
import type { Hours, Minutes, Money, MoneyPerHour, Probability } from "../quantity.ts";
import type { ExpectedSale } from "../selling/demand/wholeSale.ts";
import type { CourseId, OperationId, StepId } from "../service/operation.ts";
import type { PartId } from "../service/part.ts";
import type { ListedPiece } from "../valuation/partsList.ts";
import type { LookingOn, NextCheck } from "./looking/nextCheck.ts";
import type { Sensitivity } from "./sensitivity.ts";

/** Mean and 10, 50, 90 % points. */
export interface Spread {
  readonly mean: number;
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** Going rate before haggling, fee and post, in one state of the bike. */
export interface ValueBand {
  readonly p10: Money;
  readonly p25: Money;
  readonly p50: Money;
  readonly p75: Money;
  readonly p90: Money;
}

/** A state in which the user's own prices are told. */
export type ValuedState = "asFound" | "madeSafe";

/** What one of the user's own prices does to the estimate. */
export interface ReportedComparable {
  /** The user's label; null where none was given. */
  readonly id: string | null;
  /** Its price as a going rate: a price paid, brought up by what haggling took off; an asking price, down by what adverts ask more. */
  readonly goingRate: Money;
  /** What this bike would fetch if it sold as that one did, differences of description taken off. */
  readonly says: Money;
  /** Median without it, the others kept, and with it. */
  readonly before: Money;
  readonly after: Money;
  /** Its share in the log of the median. */
  readonly weight: number;
  /** Far from what all else says: worth a second look at price and description. */
  readonly surprising: boolean;
}

/** A finding as it was found, whatever was done since. */
export interface ReportedFinding extends Finding {
  /** It blocks riding still. */
  readonly safetyBlock: boolean;
  /** Work done so far that cured it; empty where it stands. */
  readonly curedBy: readonly OperationId[];
}

/** A part, dose or service bought already. */
export interface BoughtPart {
  readonly part: PartId;
  readonly quantity: number;
  /** What one is worth unused. */
  readonly reuseValue: Money;
}

/** When to give up on a part that may never come free. */
export interface StopLimit {
  readonly operation: OperationId;
  readonly name: string;
  /** Hands-on minutes at the user's speed after which another quarter of an hour costs more than it is worth. */
  readonly minutes: Minutes;
  /** Chance that it is free by then. */
  readonly releaseChance: Probability;
  /** Net benefit at the goal of the cheapest way to go on without it, against having it free: not above 0. */
  readonly fallback: Money;
}

export interface RaisedCaution {
  readonly id: string;
  readonly title: string;
  readonly kind: "hard" | "soft";
  readonly text: string;
  /** What raised it, in words. */
  readonly because: string;
  /** Where it bears: the checks whose findings, or whose being unseen, raised it, and the work in open plans that it is about. */
  readonly bears: { readonly checks: readonly CheckId[]; readonly operations: readonly OperationId[] };
}

export interface PlannedPart {
  readonly part: PartId;
  readonly name: string;
  readonly unit: string;
  readonly quantity: number;
  /** Price of one, expected. */
  readonly price: Money;
  readonly kind: "part" | "consumable" | "service" | "tool" | "delivery";
}

export interface PlannedOperation {
  readonly operation: OperationId;
  readonly name: string;
  readonly position: "bike" | "front" | "rear" | "both";
  /** Expected hands-on minutes at the user's speed, without shared steps. */
  readonly minutes: Minutes;
  readonly parts: readonly PlannedPart[];
  readonly because: readonly CheckId[];
  readonly kind: "required" | "needed" | "optional";
  /** From an unseen fault that is likelier than not, not from anything observed. */
  readonly assumed: boolean;
  readonly doneBy: "self" | "service" | "mechanic";
  readonly torque: { readonly from: number; readonly to: number; readonly of: string } | null;
  readonly proof: string;
  /** A moment to choose the course again. */
  readonly redecide: boolean;
}

export interface ReportedPlan {
  /** In working order. */
  readonly operations: readonly PlannedOperation[];
  readonly sharedSteps: readonly {
    readonly step: StepId;
    readonly name: string;
    readonly minutes: Minutes;
  }[];
  readonly shoppingList: readonly PlannedPart[];
  readonly minutes: Spread;
  /** Parts, consumables, services, tools and delivery of the shown plan; purchase apart. */
  readonly cost: Spread;
  /** Expected work on faults not yet seen and on operations that may fail, beyond the shown plan. Negative where an assumed fault may be absent. */
  readonly allowance: { readonly money: Money; readonly minutes: Minutes };
  /** Faults left and told to the buyer. */
  readonly disclosed: readonly CheckId[];
  /** For each job of the plan whose end is open, in working order. */
  readonly stopLimits: readonly StopLimit[];
}

export interface CourseOutcome {
  readonly course: CourseId;
  readonly available: boolean;
  readonly unavailableBecause?: string;
  /** All null where the course is not available. */
  readonly margin: (Spread & { readonly twentieths: readonly Money[] }) | null;
  readonly hours: Spread | null;
  /** rate is E[margin]/E[hours], the long-run rate of repeated flips; p10 and p90 are of the realised ratio. Null for leave. */
  readonly marginPerHour: {
    readonly rate: MoneyPerHour;
    readonly p10: MoneyPerHour;
    readonly p90: MoneyPerHour;
  } | null;
  /** Over the course before it on the upper envelope of margin against hours; null off the envelope and for its first. */
  readonly addedMarginPerAddedHour: MoneyPerHour | null;
  readonly lossProbability: Probability | null;
  readonly belowGoalProbability: Probability | null;
  readonly netBenefit: Money | null;
  /** What the right to change course at a discovery adds to the net benefit; null where nothing can be discovered on the way. */
  readonly rightToChange: Money | null;
  readonly cashNeeded: Money | null;
  readonly elapsedDays: number | null;
  /** What comes of the sale by its selling plan, packing taken off as well; null where the bike is not sold whole. */
  readonly sale: ExpectedSale | null;
  readonly plan: ReportedPlan | null;
}

export interface Decision {
  readonly course: CourseId;
  /** A check or test that is worth more than deciding now. */
  readonly lookFirst: string | null;
  /** The caution that stops everything; then no figure is given. */
  readonly stop: string | null;
  readonly reasons: readonly string[];
  /** Highest purchase price at which the best course other than leave has no negative net benefit; null once paid or stopped. 0: not even for nothing. */
  readonly walkAwayPrice: Money | null;
  /** Price received at which the chosen course's expected margin is nought; null for leave and when stopped. */
  readonly breakEvenSalePrice: Money | null;
  /** Share of the ways it can turn out in which the course is best with hindsight; null when stopped. */
  readonly confidence: Probability | null;
  /** What knowing everything beforehand would add to the net benefit; null when stopped. */
  readonly perfectInformation: Money | null;
  /** Hourly goals at which another course becomes best, rising. */
  readonly goalsAtWhichItFlips: readonly MoneyPerHour[];
  /** The best course from each goal on, rising from 0. */
  readonly courseByGoal: readonly { readonly fromGoal: MoneyPerHour; readonly course: CourseId }[];
}

/** A piece of the bike broken for parts. Minutes are at the user's speed. */
export type ReportedPiece = ListedPiece;

/** The whole answer for one find. */
export interface Appraisal {
  readonly currency: string;
  readonly dataVersion: string;
  /** Prices and chances come from the invented demo data. */
  readonly demoData: true;
  /** The tables' prices are in another currency than the answer, and nothing says how prices compare. */
  readonly unconverted: boolean;
  readonly findings: readonly ReportedFinding[];
  readonly mismatches: readonly Mismatch[];
  /** The tyre's marking taken apart; null where none was given. */
  readonly tyre: MarkedTyre | null;
  readonly ignored: readonly { readonly check: CheckId; readonly reason: string }[];
  readonly readiness: {
    readonly ready: boolean;
    readonly blocking: readonly CheckId[];
    readonly owed: readonly CheckId[];
  };
  readonly looked: {
    readonly made: number;
    readonly applicable: number;
    readonly groups: readonly {
      readonly group: string;
      readonly made: number;
      readonly applicable: number;
    }[];
  };
  /** Chance that each factor of the hidden history happened, after what was seen. */
  readonly history: Readonly<Record<Factor, Probability>>;
  /** The likeliest fault of each check that nobody made. */
  readonly hidden: readonly {
    readonly check: CheckId;
    readonly level: LevelId;
    readonly probability: Probability;
    /** Before anything was seen. */
    readonly prior: Probability;
    /** At most three findings, those that raise it most first. */
    readonly raisedBy: readonly RaisedBy[];
  }[];
  /** Null when stopped. */
  readonly value: {
    readonly asFound: ValueBand;
    /** Null where nothing can make the bike rideable. */
    readonly madeSafe: ValueBand | null;
    readonly restored: ValueBand | null;
    readonly parts: ValueBand;
    /** Median of the plain reference bike, which the drivers multiply. */
    readonly referencePrice: Money;
    readonly pieces: readonly ReportedPiece[];
    readonly drivers: readonly { readonly term: string; readonly factor: number }[];
    readonly extrapolates: boolean;
    /** The user's own prices in the order of the request. */
    readonly comparables: readonly ReportedComparable[];
    /** Share of the estimate that rests on them; the rest rests on invented demo sales. */
    readonly ownShare: Probability;
    /** Asking prices over going rates. */
    readonly askedFactor: number;
    /** The band of one state now, and with three more sales of the kind at the price expected. */
    readonly threeMore: {
      readonly state: ValuedState;
      readonly now: { readonly p10: Money; readonly p90: Money };
      readonly after: { readonly p10: Money; readonly p90: Money };
    };
  } | null;
  /** In the fixed order restore, make-safe, sell-as-found, break-for-parts, leave; empty when stopped. */
  readonly courses: readonly CourseOutcome[];
  readonly decision: Decision;
  /** What may still be looked at, tested or asked, the best net gain a minute first; empty when stopped. */
  readonly nextChecks: readonly NextCheck[];
  /** Whether looking on pays; null when stopped. */
  readonly lookingOn: LookingOn | null;
  /** Largest swing first; empty for leave and when stopped. */
  readonly sensitivity: readonly Sensitivity[];
  /** Money and hours are shown, never counted. */
  readonly soFar: {
    readonly money: Money;
    readonly hours: Hours;
    readonly done: readonly OperationId[];
    readonly bought: readonly BoughtPart[];
  };
  readonly cautions: readonly RaisedCaution[];
}
