import type { Minutes, Money, Probability } from "../quantity.ts";
import type { Moments } from "./moments.ts";
import { minutesUntil, type ReleaseTime, stillSeized } from "./seizedPart.ts";

/** How long is tried at a time before it is asked again whether to go on, and when to give up whatever it is worth. */
export interface StopRule {
  readonly stepMinutes: Minutes;
  readonly mostMinutes: Minutes;
}

/** What trying to free a part comes to where it is given up in time. */
export interface OpenEnd {
  readonly release: ReleaseTime;
  /** Given up after so many minutes at speed 1. */
  readonly limit: Minutes;
  /** Chance that it is free by then. */
  readonly releaseChance: Probability;
  /** Spent until it is free or given up, at speed 1. */
  readonly minutes: Moments;
  /** What it is worth to have it free instead of going on without it. */
  readonly worth: Money;
}

/**
 * The first multiple of the step, from the soonest possible release on, at which the next step is worth less than it costs: P(free within it | not yet) x
 * worth < E[minutes spent in it | not yet] x cost of a minute. The hazard never rises, so neither does the ratio of the two, and no later limit is better
 * where this one stops.
 * @param worth of having it free
 * @param minuteCost of a minute at speed 1
 */
export function stopLimit(
  release: ReleaseTime,
  worth: Money,
  minuteCost: Money,
  { stepMinutes, mostMinutes }: StopRule,
): Minutes {
  let limit = Math.max(1, Math.ceil(release.from / stepMinutes)) * stepMinutes;
  while (limit < mostMinutes) {
    const next = limit + stepMinutes;
    // Both sides times the chance that it is not yet free.
    const gain = (stillSeized(release, limit) - stillSeized(release, next)) * worth;
    const spent = minutesUntil(release, next).mean - minutesUntil(release, limit).mean;
    if (gain < spent * minuteCost) break;
    limit = next;
  }
  return limit;
}

/** Trying to free a part, given up when it pays no longer. */
export function openEnd(release: ReleaseTime, worth: Money, minuteCost: Money, rule: StopRule): OpenEnd {
  const limit = stopLimit(release, worth, minuteCost, rule);
  return {
    release,
    limit,
    releaseChance: 1 - stillSeized(release, limit),
    minutes: minutesUntil(release, limit),
    worth,
  };
}
