import type { Condition, Kept } from "../../bicycle.ts";
import type { Probability } from "../../quantity.ts";
import type { CheckId, LevelId } from "../check.ts";
import type { Factor } from "./factor.ts";

/** The table of hidden histories. */
export interface HistoryTable {
  /** Multiplies every loading. */
  readonly scale: number;
  /** The four, in the order of `FACTORS`. */
  readonly factors: readonly {
    readonly id: Factor;
    readonly name: string;
    /** Chance that it happened, before anything is looked at. */
    readonly chance: Readonly<Record<Kept, Probability>>;
  }[];
  /** How far each factor shifts the log odds of a check's worse levels, before scaling; a check without a row, or a factor left out, is not shifted. */
  readonly loadings: readonly Loading[];
}

export type Loading = { readonly check: CheckId } & { readonly [F in Factor]?: number | undefined };

/** A level that known causes explain: weak brakes by their pads. */
export interface Symptom {
  readonly check: CheckId;
  readonly level: LevelId;
  readonly when: readonly Condition[];
  readonly causes: readonly { readonly check: CheckId; readonly levels: readonly LevelId[] }[];
}
