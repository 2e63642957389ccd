import type { CheckId } from "../inspection/check.ts";
import type { Inspection } from "../inspection/finding.ts";
import type { Appraisal } from "./appraisal.ts";
import type { Book } from "./book.ts";

/**
 * Whether the bike, as it stands, may be called ready: every check that blocks while unanswered has been answered, none at a blocking level. What was
 * not looked at, not queried or only half done is owed: it removes no course.
 */
export function readinessOf(inspection: Inspection, book: Book): Appraisal["readiness"] {
  const blocking = unique(
    inspection.findings.filter(({ safety }) => safety === "block").map(({ check }) => check),
  );
  const unanswered = inspection.unseen.filter(
    ({ check }) => book.inspection.byId.get(check)!.check.ifNotChecked === "block",
  );
  const half = inspection.findings.filter(({ safety }) => safety === "owed");
  const owed = unique([...unanswered, ...half].map(({ check }) => check));
  return { ready: blocking.length === 0 && owed.length === 0, blocking, owed };
}

function unique(ids: readonly CheckId[]): readonly CheckId[] {
  return [...new Set(ids)];
}
