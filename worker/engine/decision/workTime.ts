import { exp } from "../statistics/elementary/exp.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { type LogNormal, logNormalFromMean } from "../statistics/logNormal.ts";
import type { Branch } from "./branch.ts";
import type { Pace } from "./pace.ts";

/**
 * Minutes of a branch: work X at speed 1 with a common speed factor k, plus fixed time. Mean = E[k] E[X] + fixed, variance = E[k^2] Var X +
 * E[X]^2 Var k, matched by a log-normal. Null where there is nothing to do.
 */
export function workTime(
  { minutes, otherMinutes }: Branch,
  { speedFactor, speedSpread }: Pace,
): LogNormal | null {
  const square = squared(speedFactor) * exp(squared(speedSpread));
  const mean = speedFactor * minutes.mean + otherMinutes;
  const variance = square * minutes.variance + squared(minutes.mean) * (square - squared(speedFactor));
  return mean > 0 ? logNormalFromMean(mean, Math.sqrt(Math.max(0, variance))) : null;
}
