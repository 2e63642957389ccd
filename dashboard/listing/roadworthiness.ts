import type { Appraisal, Check, ReportedFinding } from "../api/types.ts";
import { isProven, type Work } from "./remainingFaults.ts";
import { isRideable, type SaleState } from "./saleStates.ts";

/** What stands between a bike, in the state it is sold in, and the road or the sale. */
export interface Roadworthiness {
  /** No fault that stops riding remains, no look is owed, and the work is proved: then the warning may be left out. */
  readonly clear: boolean;
  /** Faults that stop riding. */
  readonly stopsRiding: readonly ReportedFinding[];
  /** Faults that stopped riding were found, and none of them remains. */
  readonly cured: boolean;
  /** Faults that end the frame: it is never sold. */
  readonly endsFrame: readonly ReportedFinding[];
  /** Papers that forbid the sale. */
  readonly forbidsSale: readonly ReportedFinding[];
  /** Ids of the checks still owed before anyone rides. */
  readonly owedToRide: readonly string[];
  /** The work that makes it rideable is said to be done, but not all of it is. */
  readonly unproven: boolean;
}

/**
 * Judges the faults that remain.
 * @param remaining those of severity 1 and more
 */
export function roadworthiness(
  { readiness }: Pick<Appraisal, "readiness">,
  state: SaleState,
  remaining: readonly ReportedFinding[],
  work: Work,
  checks: readonly Check[],
): Roadworthiness {
  const byId = new Map(checks.map((check) => [check.id, check]));
  const isPaper = (id: string) => byId.get(id)?.group === "paperwork";
  const blocking = remaining.filter(({ safetyBlock }) => safetyBlock);
  const stopsRiding = blocking.filter(({ check }) => !isPaper(check));
  const owedToRide = readiness.owed.filter((id) => !isPaper(id));
  const unproven = isRideable(state) && !isProven(work);
  return {
    clear: state !== "parts" && stopsRiding.length === 0 && owedToRide.length === 0 && !unproven,
    stopsRiding,
    cured: stopsRiding.length === 0 && readiness.blocking.some((id) => !isPaper(id)),
    endsFrame: remaining.filter(({ check, level }) => endsFrame(byId.get(check), level)),
    forbidsSale: blocking.filter(({ check }) => isPaper(check)),
    owedToRide,
    unproven,
  };
}

function endsFrame(check: Check | undefined, level: string): boolean {
  const terminal = check?.levels.find(({ id }) => id === level)?.terminal;
  return terminal === "parts-or-recycle" || terminal === "recycle";
}
