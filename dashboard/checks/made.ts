import { isPerWheel } from "../answers/reading.ts";
import type { Observation } from "../api/types.ts";

/** Whether a check was made: looked at on the whole bike, or at both wheels. */
export function isMade(observation: Observation | undefined): boolean {
  if (observation === undefined) return false;
  return !isPerWheel(observation) || (observation.front !== undefined && observation.rear !== undefined);
}
