import type { CheckId, LevelId, Safety, Severity } from "./check.ts";
import type { History } from "./history/history.ts";
import type { MarkedTyre } from "./markedTyre.ts";

/** Where a finding stands. "both" is a per-wheel check answered once for both wheels; "bike" has no wheels to tell apart. */
export type Position = "bike" | "front" | "rear" | "both";

/** A check that was looked at, with the level it came to. Level rank 0 is the best: no fault. */
export interface Finding {
  readonly check: CheckId;
  readonly position: Position;
  readonly level: LevelId;
  /** Index of the level in the check's list. */
  readonly rank: number;
  readonly severity: Severity;
  /** After adjustments for this bike's materials. */
  readonly safety: Safety;
  readonly source: "observed" | "measured";
  /** The quantity held against the thresholds, where the check was measured. */
  readonly derived?: { readonly value: number; readonly unit: string };
  /** Within one reading error of a threshold: the two levels in question. Measure again. */
  readonly borderline?: readonly [LevelId, LevelId];
  readonly note: string;
}

/** A check that applies and was not looked at, with the chances of its levels. */
export interface UnseenCheck {
  readonly check: CheckId;
  /** The wheel not looked at, where the other one was; absent where nothing of the check was seen. */
  readonly position?: "front" | "rear";
  /** Chances of the levels after all evidence: `byClass` averaged over the history's weights. */
  readonly probabilities: readonly number[];
  /** Chances of the levels before anything was looked at: the catalogue's, after this bike's modifiers. */
  readonly prior: readonly number[];
  /** Chance of level k in class z of the history at index z x levels + k. Given the class, checks are independent. */
  readonly byClass: Float64Array;
  /** The check whose finding clears it, where there is one; its probabilities are then 1 for the best level. Null too where the description alone clears it. */
  readonly acquittedBy: CheckId | null;
}

/** Two markings that share a name but not a diameter, or a tyre that does not belong on the rim. */
export interface Mismatch {
  readonly text: string;
  readonly diameters: readonly [number, number];
}

/** The findings of each check that has any: one, or front and rear. */
export type FindingsByCheck = ReadonlyMap<CheckId, readonly Finding[]>;

/** The whole outcome of looking at one bike. */
export interface Inspection {
  readonly findings: readonly Finding[];
  readonly byCheck: FindingsByCheck;
  readonly unseen: readonly UnseenCheck[];
  readonly history: History;
  /** Observations on checks that do not apply to this bike. */
  readonly ignored: readonly { readonly check: CheckId; readonly reason: string }[];
  readonly mismatches: readonly Mismatch[];
  /** The tyre's marking taken apart; null where none was given. */
  readonly tyre: MarkedTyre | null;
}
