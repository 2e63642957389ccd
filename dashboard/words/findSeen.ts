import type { ReportedFinding } from "../api/types.ts";
import { listed, uncapital } from "./count.ts";
import { plain } from "./plain.ts";

/** What the wheel beside it shows. */
export function wheelKey(applicable: number): string {
  return `${applicable} checks apply to this bike. A long spoke is a group of checks looked at, a short one partly, a faint one not at all. Not looked at never counts as good.`;
}

/** "No fault found (12)", on the fold that holds them. */
export function noFaultFound(sound: number): string {
  return `No fault found (${sound})`;
}

/** Checks that were answered and do not apply, by name. */
export function leftOut(checks: readonly string[]): string {
  return `Left out, as they do not apply here: ${listed(checks)}.`;
}

/** "cured since: new chain". */
export function curedSince(operations: readonly string[]): string {
  return `cured since: ${uncapital(listed(operations))}`;
}

/** ", front" after the name of a check that is made at each wheel; empty for any other. */
export function whereSeen({ position }: Pick<ReportedFinding, "position">): string {
  return position === "front" || position === "rear" ? `, ${position}` : "";
}

/** What a measurement lies between, so that no level is sure. */
export function onTheLine([better, worse]: readonly [string, string]): string {
  return `On the line between ${plain(better).toLowerCase()} and ${plain(worse).toLowerCase()}: measure again`;
}
