import type { Condition } from "../bicycle.ts";
import type { CheckId, LevelId } from "../inspection/check.ts";
import type { Minutes, Probability, ThreePoint } from "../quantity.ts";
import type { PartId } from "./part.ts";

export type OperationId = string;
export type StepId = string;
export type CourseId = "restore" | "make-safe" | "sell-as-found" | "break-for-parts" | "leave";
export const COURSES: readonly CourseId[] = [
  "restore",
  "make-safe",
  "sell-as-found",
  "break-for-parts",
  "leave",
];

/** A check at one of some levels. */
export interface LevelMatch {
  readonly check: CheckId;
  readonly levels: readonly LevelId[];
}

/** A dismantling step. Shared by several operations it is counted once. */
export interface Step {
  readonly id: StepId;
  readonly name: string;
  readonly minutes: ThreePoint;
  readonly implies: readonly StepId[];
  readonly position: "front" | "rear" | null;
  readonly onlyIf: readonly Condition[];
  /** Cannot be done while the check stands at one of these levels; the operations named free it. */
  readonly blockedBy: LevelMatch | null;
  /** Work that this step makes necessary: tape that comes off is replaced. */
  readonly entails: readonly OperationId[];
}

export interface PartUse {
  readonly part: PartId;
  /** For one unit of the operation (see `per`). */
  readonly quantity: number;
  readonly when: readonly Condition[];
  /** Bought only where one of the findings stands. */
  readonly onlyAt: readonly LevelMatch[];
  /** The first that holds is bought instead. */
  readonly instead: readonly {
    readonly when: readonly Condition[];
    readonly at: readonly LevelMatch[];
    readonly position: "front" | "rear" | null;
    readonly part: PartId;
    readonly quantity?: number;
  }[];
}

/** The job is smaller at some levels: a loose bearing is adjusted, not stripped. */
export interface Variant {
  readonly at: LevelMatch;
  /** And only on these bikes: grips on a flat bar are quicker than tape. */
  readonly when: readonly Condition[];
  readonly name: string | null;
  readonly minutes: ThreePoint;
  /** null: as in the operation. */
  readonly steps: readonly StepId[] | null;
  readonly uses: readonly PartUse[] | null;
}

export interface Failure {
  /** The first row that holds; the last row has no conditions. */
  readonly chances: readonly {
    readonly when: readonly Condition[];
    readonly at: readonly LevelMatch[];
    readonly probability: Probability;
  }[];
  readonly consequence: string;
  /** Further minutes that the failure costs by itself: a bent pin drilled out, paint rubbed back. 0 where the work named below says it all. */
  readonly extraMinutes: Minutes;
  /** What must then be done: one of these lists. */
  readonly thenOneOf: readonly (readonly OperationId[])[];
  /** frame: the frame is finished; title: nothing may be sold; null: work goes on. */
  readonly ends: "frame" | "title" | null;
  /** A moment to choose the course again. */
  readonly redecide: boolean;
}

export interface Reveal {
  readonly check: CheckId;
  readonly atLeast: LevelId;
}

/** A test whose outcome decides: a suspect level turns out good or bad. */
export interface DecidingTest {
  readonly of: CheckId;
  readonly at: readonly LevelId[];
  readonly good: LevelId;
  readonly bad: LevelId;
  readonly badChance: Probability;
}

export interface Operation {
  readonly id: OperationId;
  readonly name: string;
  /** Hands-on minutes without dismantling, for one unit. */
  readonly minutes: ThreePoint;
  /** Unit of minutes and parts: the bike, one wheel (or one brake), or both wheels together. */
  readonly per: "bike" | "wheel" | "pair";
  readonly variants: readonly Variant[];
  readonly skill: 1 | 2 | 3 | 4;
  readonly tools: readonly string[];
  readonly uses: readonly PartUse[];
  /** Comes after these where they are in the same plan. */
  readonly after: readonly OperationId[];
  /** Work that this makes necessary where the bike has it: a new chain wants the gears indexed. */
  readonly entails: readonly OperationId[];
  /** Runs after everything else but these (the final check). */
  readonly afterAllExcept: readonly OperationId[] | null;
  readonly steps: readonly StepId[];
  readonly safetyCritical: boolean;
  readonly reveals: readonly Reveal[];
  readonly failure: Failure | null;
  /** May take minutes or hours or never come to an end: it is given up when going on pays no longer (stopLimit). */
  readonly openEnded: boolean;
  /** Frame materials that forbid it. */
  readonly notOnMaterials: readonly string[];
  /** What it bends cold; allowed on steel alone. */
  readonly bends: "frame" | "fork" | null;
  readonly onlyIf: readonly Condition[];
  readonly alwaysIn: readonly CourseId[];
  readonly doneBy: "self" | "service";
  /** Customary torque, N m, where there is one; the marked value rules. */
  readonly torque: { readonly from: number; readonly to: number; readonly of: string } | null;
  /** The check that proves it done. */
  readonly proof: string;
  /** Takes further minutes for each piece sold (stripping only). */
  readonly sellsParts: boolean;
  /** Part of selling: replaced by the user's own selling minutes where given. */
  readonly selling: boolean;
  /** What it does to the sale beside curing findings. */
  readonly effect: { readonly polishes: boolean; readonly repaints: boolean };
  /** Questions that it settles, each with a fee in time or money: it may be the "look first". Most operations settle none. */
  readonly tests: readonly DecidingTest[];
  readonly note?: string;
}

/**
 * What cures a check at a level. At most one row of a level holds on any bike, and where the level blocks riding exactly one does, unless it
 * ends the job (the loader proves both). An option with an operation that the bike does not allow falls away; one remains on every bike.
 * A symptom with a known cause is cured by curing the cause: then the remedy is empty.
 */
export interface Remedy {
  readonly check: CheckId;
  readonly level: LevelId;
  readonly when: readonly Condition[];
  /** Any one of these sets of operations cures it. Empty: nothing does (it is disclosed, or ends the course). */
  readonly options: readonly (readonly OperationId[])[];
  /** Known causes: where one stands, curing it cures this. */
  readonly causes: readonly LevelMatch[];
}
