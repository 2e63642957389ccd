import { isPerWheel } from "../answers/reading.ts";
import type { Check, Observation, Reading } from "../api/types.ts";
import type { Look } from "./trail.ts";

/** What the find says of one look; undefined where nothing. */
export function readingAt(observation: Observation | undefined, { position }: Look): Reading | undefined {
  if (observation === undefined || !isPerWheel(observation)) return observation;
  return position === null ? undefined : observation[position];
}

/**
 * The observation once a look is answered: a wheel's reading beside what was said of the other.
 * @param alike the reading holds for both wheels
 */
export function observed(
  before: Observation | undefined,
  { position }: Look,
  reading: Reading,
  alike: boolean,
): Observation {
  if (position === null || alike) return reading;
  const wheels = before === undefined ? {} : isPerWheel(before) ? before : { front: before, rear: before };
  return { ...wheels, [position]: reading } as Observation;
}

/** The looks that a check still needs, front before rear; none where it was made. */
export function openLooks(
  check: Pick<Check, "id" | "perWheel">,
  observation: Observation | undefined,
): Look[] {
  if (!check.perWheel) return observation === undefined ? [{ check: check.id, position: null }] : [];
  return (["front", "rear"] as const)
    .map((position) => ({ check: check.id, position }))
    .filter((look) => readingAt(observation, look) === undefined);
}

/** The observation without one look; undefined where nothing is left. */
export function without(observation: Observation | undefined, { position }: Look): Observation | undefined {
  if (observation === undefined || position === null) return undefined;
  const other = position === "front" ? "rear" : "front";
  const reading = readingAt(observation, { check: "", position: other });
  return reading === undefined ? undefined : { [other]: reading };
}
