import { DomainError } from "../domainError.ts";
import type { Millimetres } from "../quantity.ts";

/**
 * Chain wear: 100 * (length / (pitches * pitch) - 1), in per cent of the new length. Chains are not stretched: the pins
 * and bushings wear.
 * @param length over the pitches, in mm
 * @param pitches how many pitches were measured
 * @param pitch of a new chain in mm (ISO 606: 12.7 mm, half an inch)
 * @param shortestAllowedPercent the least elongation that a reading may come to, in per cent, below 0 (-1: one per cent shorter than new)
 * @throws DomainError `impossible-measurement` for a chain shorter than that: a chain never shrinks
 */
export function chainElongation(
  length: Millimetres,
  pitches: number,
  pitch: Millimetres,
  shortestAllowedPercent: number,
): number {
  const whenNew = pitches * pitch;
  const percent = (100 * (length - whenNew)) / whenNew;
  if (percent < shortestAllowedPercent) {
    const shortest = (whenNew * (1 + shortestAllowedPercent / 100)).toFixed(1);
    throw new DomainError(
      "impossible-measurement",
      "length",
      length,
      `at least ${shortest} mm, since a chain is never shorter than new (${pitches} pitches of ${pitch} mm): count the pitches and measure again`,
    );
  }
  return percent;
}
