import type { Probability } from "../../quantity.ts";
import type { Finding } from "../finding.ts";
import type { Factor } from "./factor.ts";

/** The findings that speak of the hidden history. */
export interface Evidence {
  /** In the order of the checks, at most one a check. */
  readonly findings: readonly Finding[];
  /** Chance of finding i's level in class z, above 0, at index i x 16 + z. */
  readonly likelihoods: Float64Array;
}

/** What the findings say of a bike's hidden history. */
export interface History {
  /** Chance of each of the 16 classes after all evidence; bit f of the index is factor f of `FACTORS`. Sums to 1. */
  readonly weights: Float64Array;
  /** Chance of each factor after all evidence. */
  readonly factors: Readonly<Record<Factor, Probability>>;
  readonly evidence: Evidence;
}
