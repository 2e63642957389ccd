import type { Resource } from "../service/resource.ts";
import type { Uncertainty } from "../service/uncertainty.ts";
import type { ScaledBeta } from "../statistics/scaledBeta.ts";
import type { Sale } from "./branch.ts";
import type { Change } from "./changeOfCourse.ts";
import type { ClassSums } from "./classSums.ts";
import type { Work } from "./courseBranch.ts";
import type { Situation } from "./situation.ts";

/** How a rideable course may go, as far as its branches depend on it. */
export interface RideableSetting {
  readonly situation: Situation;
  /** The finished bike. */
  readonly sale: Sale;
  /** The shown plan. */
  readonly plan: Work;
  /** The jobs of the opening work. */
  readonly opening: Work;
  /** The price in them that varies most. */
  readonly widest: ScaledBeta | null;
  /** What it brings beyond its jobs. */
  readonly beyond: ClassSums;
  readonly change: Change;
  /** What was not decided on: one by one, and what all of it brings. */
  readonly joint: readonly Uncertainty[];
  readonly rest: ClassSums;
  readonly decided: readonly Uncertainty[];
  readonly resources: readonly Resource[];
  /** Chance of each class of history. */
  readonly classes: Float64Array;
}
