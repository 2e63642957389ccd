import type { Probability } from "../../quantity.ts";
import type { Finding } from "../finding.ts";
import type { Factor } from "./factor.ts";

/** One finding as evidence on the history. */
export interface Evidence {
  readonly finding: Finding;
  /** Logarithm of the chance of its level in each class. */
  readonly logLikelihood: Float64Array;
}

/** What the findings say of a bike's hidden history. */
export interface History {
  /** Chance of each of the 16 classes after all evidence; bit f of the index is factor f of `FACTORS`. Sums to 1. */
  readonly weights: Float64Array;
  /** Chance of each factor after all evidence. */
  readonly factors: Readonly<Record<Factor, Probability>>;
  /** What the weights rest on, in the order of the checks: at most one finding a check. */
  readonly evidence: readonly Evidence[];
  /** Logarithm of each class's chance times that of all evidence in it; no scale. */
  readonly logWeights: Float64Array;
}
