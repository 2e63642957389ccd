import type { PlannedOperation, ReportedPlan } from "../api/types.ts";
import type { Say } from "./catalogue.ts";

/** Jobs of a plan that are the seller's own affair: selling, recording, clearing away. No buyer reads of them. */
const CHORES: ReadonlySet<string> = new Set([
  "query-serial",
  "record-state",
  "photograph",
  "sell-handover",
  "strip-for-parts",
  "dispose",
]);

/** The job that proves a bike rideable once all else is done. */
export const FINAL_CHECK = "final-check";
const PAID_CHECK = "paid-safety-check";

/** Tells the jobs of a plan apart, where one is done at each wheel. */
export function jobKey({ operation, position }: Pick<PlannedOperation, "operation" | "position">): string {
  return `${operation} ${position}`;
}

/** The jobs of a plan that bear on the bike, in working order. */
export function jobsOf(plan: ReportedPlan | null | undefined): readonly PlannedOperation[] {
  return (plan?.operations ?? []).filter(({ operation }) => !CHORES.has(operation));
}

/** A job as a listing names it: the catalogue's name of the operation, its wheel, and who did it where that was no private hand. */
export function jobWords({ operation, name, position, doneBy }: PlannedOperation, say: Say): string {
  // These two names promise more to a buyer than a check can hold.
  if (operation === FINAL_CHECK) return say("jobFinalCheck");
  if (operation === PAID_CHECK) return say("jobPaidCheck");
  const place = position === "front" ? "jobFront" : position === "rear" ? "jobRear" : null;
  const job = place === null ? name : say(place, { job: name });
  return doneBy === "service" ? say("jobService", { job }) : job;
}
