import { isPerWheel } from "../answers/reading.ts";
import type { Check, Observation, ReportedFinding } from "../api/types.ts";

/** Whether a check was made: looked at on the whole bike, or at both wheels. */
export function isMade(observation: Observation | undefined): boolean {
  if (observation === undefined) return false;
  return !isPerWheel(observation) || (observation.front !== undefined && observation.rear !== undefined);
}

/** What tells whether a check was made. */
export interface Made {
  readonly observations: Readonly<Record<string, Observation | undefined>>;
  readonly findings: readonly Pick<ReportedFinding, "check">[];
}

/** Whether a check was made: observed, or settled by the description (the tyre's marking names its size). */
export function madeOn(check: Pick<Check, "id">, { observations, findings }: Made): boolean {
  const observation = observations[check.id];
  if (observation !== undefined) return isMade(observation);
  return findings.some((finding) => finding.check === check.id);
}
