import type { Ledger } from "./ledger.ts";
import type { CourseId } from "./operation.ts";
import { isApplicable } from "./task.ts";
import { buildWorkPlan, type WorkPlan } from "./workPlan.ts";

/** The plan of a course whose work does not depend on the faults: selling as found, breaking for parts, taking it to be recycled. */
export function planFixed(course: CourseId, ledger: Ledger): WorkPlan {
  const resources = new Set<number>();
  for (const operation of ledger.bench.index.always[course]) {
    if (!isApplicable(operation, ledger.bench)) continue;
    for (const resource of ledger.forOperation(operation, "bike").resources) resources.add(resource);
  }
  return buildWorkPlan(ledger, {
    course,
    resources,
    reasons: new Map(),
    cured: [],
    disclosed: [],
    gain: 0,
    repaints: false,
  });
}

/** No work at all: a bike that is not taken home. */
export function planNothing(ledger: Ledger): WorkPlan {
  return buildWorkPlan(ledger, {
    course: "leave",
    resources: new Set(),
    reasons: new Map(),
    cured: [],
    disclosed: [],
    gain: 0,
    repaints: false,
  });
}
