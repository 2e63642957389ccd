import type { Appraisal, CourseOutcome } from "../decision/appraisal.ts";
import type { AppraisalRequest } from "../decision/appraisalRequest.ts";
import type { DomainError } from "../domainError.ts";
import type { Hours, Money, MoneyPerHour, Probability } from "../quantity.ts";
import type { CourseId } from "../service/operation.ts";

/** What a set of finds is chosen for. */
export const OBJECTIVES = ["netBenefit", "margin"] as const;
export type Objective = (typeof OBJECTIVES)[number];

/** What there is to spend on all the finds together; null: no limit. */
export interface Budgets {
  readonly hours: Hours | null;
  readonly cash: Money | null;
  /** Places on the floor. */
  readonly slots: number | null;
}

export type BudgetName = keyof Budgets;
export const BUDGETS: readonly BudgetName[] = ["hours", "cash", "slots"];

/** One of the finds that are compared. */
export interface SubmittedFind {
  /** Its label; no two finds share one. */
  readonly id: string;
  readonly request: AppraisalRequest;
  /** The course it takes in any case; null where it is open. */
  readonly course: CourseId | null;
}

export interface ComparisonRequest {
  readonly currency: string;
  readonly finds: readonly SubmittedFind[];
  readonly budgets: Budgets;
  readonly objective: Objective;
}

/** One find beside the others. */
export interface ComparedFind
  extends Pick<
    Appraisal,
    "decision" | "looked" | "readiness" | "hidden" | "soFar" | "cautions" | "unconverted"
  > {
  readonly id: string;
  /** Without what the find's own appraisal tells piece by piece and price by price. Null when stopped. */
  readonly value: Omit<NonNullable<Appraisal["value"]>, "pieces" | "comparables"> | null;
  readonly courses: readonly Omit<CourseOutcome, "plan">[];
}

/** A find that cannot be worked out; the others can. */
export interface RefusedFind {
  readonly id: string;
  /** Its pointer begins at the find's own entry. */
  readonly refusal: DomainError;
}

export interface ChosenCourse {
  readonly id: string;
  readonly course: CourseId;
}

/** What the set takes of each budget, in expectation. */
export interface Needs {
  readonly hours: Hours;
  readonly cash: Money;
  readonly slots: number;
}

/** Over all finds; those that are left count with what leaving them costs, and use nothing. */
export interface SetTotal extends Needs {
  readonly netBenefit: Money;
  readonly margin: Money;
  /** 10 and 90 % points of the margin of the whole set, by its mean and variance: prices move together as far as one market moves them. */
  readonly marginP10: Money;
  readonly marginP90: Money;
  /** Hours within which the whole set is done in 10, 50, 80 and 90 of 100. */
  readonly hoursP10: Hours;
  readonly hoursP50: Hours;
  readonly hoursP80: Hours;
  readonly hoursP90: Hours;
}

/** A budget that the courses taken in any case already overrun. */
export interface Overrun {
  readonly budget: BudgetName;
  readonly given: number;
  readonly needs: number;
  readonly short: number;
  /** Finds any one of which, set free, lets the others fit this budget. */
  readonly freeing: readonly string[];
  readonly explanation: string;
}

export interface MeritEntry {
  readonly id: string;
  readonly course: CourseId;
  readonly hours: Hours;
  readonly marginPerHour: MoneyPerHour;
  readonly chosen: boolean;
}

/** The set that fits, or why none does. */
export interface Selection {
  /** The finds to take and their courses, in the order of merit. Those left are not in it. */
  readonly chosen: readonly ChosenCourse[];
  /** Null where the courses taken in any case do not fit. */
  readonly total: SetTotal | null;
  /** Chance that the whole set takes more hours than there are: quantiles of single finds do not add. */
  readonly chanceHoursOverrun: Probability | null;
  /** What the total gains by one more hour, one more unit of money, one more place; each by choosing anew: never too much, and exact where the search ends. */
  readonly shadowPrices: { readonly hour: Money; readonly cash: Money; readonly slot: Money } | null;
  /** Of the finds left, the one that pays best for what it uses, and what the set lacks to take it as well, nothing given up. */
  readonly nextIn: (ChosenCourse & { readonly needs: Needs }) | null;
  /** No set is worth more. */
  readonly proven: boolean;
  /** How much more a set could be worth at most; 0 where proven. */
  readonly gap: Money;
  /** The finds by margin per hour, each in its chosen course, else in the one it would take. */
  readonly meritOrder: readonly MeritEntry[];
  readonly overruns: readonly Overrun[];
}

export interface Comparison extends Selection {
  readonly currency: string;
  readonly dataVersion: string;
  /** Prices and chances come from the invented demo data. */
  readonly demoData: true;
  readonly objective: Objective;
  readonly budgets: Budgets;
  /** In the order of the request. */
  readonly finds: readonly (ComparedFind | RefusedFind)[];
}
