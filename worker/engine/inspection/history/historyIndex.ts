import type { Condition, Kept } from "../../bicycle.ts";
import type { CheckId } from "../check.ts";
import type { Symptom } from "./historyTable.ts";

/** Chances of a check's levels before any evidence: on the whole, and in each class (level k of class z at z x levels + k). */
export interface LevelChances {
  readonly prior: readonly number[];
  readonly byClass: Float64Array;
}

export interface RankedSymptom {
  readonly rank: number;
  readonly when: readonly Condition[];
  readonly causes: Symptom["causes"];
}

/** The tables of the hidden history, ordered for look-up. */
export interface HistoryIndex {
  /** Chance of each class before anything is looked at. */
  readonly weights: ReadonlyMap<Kept, Float64Array>;
  /** What each class multiplies the odds of a check's worse levels by; checks that no factor shifts are left out. */
  readonly shifts: ReadonlyMap<CheckId, Float64Array>;
  /** Chances without modifiers by `priorKey`, then by check. */
  readonly chances: ReadonlyMap<string, ReadonlyMap<CheckId, LevelChances>>;
  /** Certainty of the best level, by the count of levels. */
  readonly cleared: ReadonlyMap<number, LevelChances>;
  /** By the symptom's check. */
  readonly symptoms: ReadonlyMap<CheckId, readonly RankedSymptom[]>;
}
