import type { Appraisal, Check, PlannedOperation, ReportedFinding, ReportedPlan } from "../api/types.ts";
import { FINAL_CHECK, jobKey } from "./jobs.ts";

/** What a course's plan came to: its jobs, and which of them were not done. */
export interface Work {
  readonly plan: ReportedPlan | null;
  /** Keys of jobs not done. */
  readonly undone: ReadonlySet<string>;
}

/**
 * The findings of severity 1 and more that are still there after the work. A finding is gone where every job that the plan has because of it is
 * done. In doubt it remains: a fault told too much harms nobody.
 */
export function remainingFaults(
  { findings }: Pick<Appraisal, "findings">,
  work: Work,
  checks: readonly Check[],
): readonly ReportedFinding[] {
  const groupOf = new Map(checks.map(({ id, group }) => [id, group]));
  const faults = findings.filter(({ severity }) => severity > 0);
  return faults.filter((fault) => !isCured(fault, work) && !isCuredByCauses(fault, work, groupOf));
}

/** Whether every job that a rideable bike needs was done, the final check among them. */
export function isProven({ plan, undone }: Work): boolean {
  const needed = (plan?.operations ?? []).filter(({ kind }) => kind !== "optional");
  return (
    needed.some(({ operation }) => operation === FINAL_CHECK) &&
    needed.every((job) => !undone.has(jobKey(job)))
  );
}

function isCured(fault: ReportedFinding, { plan, undone }: Work): boolean {
  const jobs = (plan?.operations ?? []).filter(({ because }) => because.includes(fault.check));
  // Left at one wheel and cured at the other: only a job at the very place counts.
  const strict = plan?.disclosed.includes(fault.check) ?? false;
  const here = jobs.filter(({ position }) => reaches(position, fault.position, strict));
  const atEach =
    fault.position === "both" && here.length === 0
      ? (["front", "rear"] as const).map((wheel) => jobs.filter(({ position }) => position === wheel))
      : [here];
  return atEach.every((list) => list.length > 0 && list.every((job) => !undone.has(jobKey(job))));
}

function reaches(
  job: PlannedOperation["position"],
  fault: ReportedFinding["position"],
  strict: boolean,
): boolean {
  return job === fault || (!strict && (job === "bike" || job === "both" || fault === "bike"));
}

/**
 * A blocking finding that no job names, in a plan that must cure whatever blocks, is a symptom (weak brakes): it goes with its causes. Believed only
 * where a cause in its group, found or supposed, was worked on and the final check has proved the whole.
 */
function isCuredByCauses(
  { check, safetyBlock }: ReportedFinding,
  work: Work,
  groupOf: ReadonlyMap<string, string>,
): boolean {
  const { plan } = work;
  if (!safetyBlock || plan === null || plan.disclosed.includes(check) || !isProven(work)) return false;
  const group = groupOf.get(check);
  if (group === undefined || plan.operations.some(({ because }) => because.includes(check))) return false;
  return plan.operations.some(({ because }) => because.some((cause) => groupOf.get(cause) === group));
}
