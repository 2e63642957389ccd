import type { CheckId } from "../../inspection/check.ts";
import type { Minutes, Money } from "../../quantity.ts";
import type { CourseId, OperationId } from "../../service/operation.ts";

/** What a look is worth before anything is decided. */
export interface LookValue {
  /** The wheel not looked at, where the other one was. */
  readonly position: "front" | "rear" | null;
  /** Must be answered before anyone rides it, whatever it is worth. */
  readonly owed: boolean;
  readonly fee: Money;
  readonly where: "spot" | "bench" | "dismantled";
  /** At the user's speed, with the dismantling that it needs. */
  readonly minutes: Minutes;
  /** What choosing after it is worth beyond choosing now, before fee and minutes; at least 0. */
  readonly sampleInformation: Money;
  /** The same less the fee and the minutes at the goal. */
  readonly netGain: Money;
  readonly gainPerMinute: Money;
  /** Highest less lowest walk-away price over its levels; null once paid. */
  readonly offerSwing: Money | null;
  /** The likeliest of the courses that it may change the decision to; null where no level changes it. */
  readonly couldBecome: CourseId | null;
  /** exact: the whole engine asked anew for each level. estimated: with plans and prices as they are now. */
  readonly method: "exact" | "estimated";
}

/** A check not made. */
export interface UnmadeCheck extends LookValue {
  readonly check: CheckId;
}

/** A paid test, or a query. */
export interface OpenTest extends LookValue {
  readonly operation: OperationId;
}

export type NextCheck = UnmadeCheck | OpenTest;

/** All that is left to look at in one place, valued together: two looks may be worthless alone and not together. */
export interface LookList {
  /** Best first. */
  readonly checks: readonly CheckId[];
  readonly minutes: Minutes;
  /** From 128 scenarios of one bike; never below what one check of the list is worth alone. */
  readonly sampleInformation: Money;
  readonly netGain: Money;
}

/** Whether looking on pays. */
export interface LookingOn {
  readonly spot: LookList;
  readonly bench: LookList;
  /** Neither a single look nor the whole list on the spot is worth its minutes. What is owed stays owed. */
  readonly enough: boolean;
}

/** The id that a look is called by. */
export function lookId(look: NextCheck): CheckId | OperationId {
  return "check" in look ? look.check : look.operation;
}
