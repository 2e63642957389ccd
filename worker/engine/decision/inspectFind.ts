import { lookedAt } from "../inspection/looked.ts";
import type { Appraisal } from "./appraisal.ts";
import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { cautionsFor } from "./cautions.ts";
import { hiddenFaults } from "./hiddenFaults.ts";
import type { LookedOver } from "./lookOver.ts";
import { readinessOf } from "./readiness.ts";
import { weighFind } from "./weighFind.ts";

/** What looking at a bike came to, before money. */
export type FindingsAnswer = Pick<
  Appraisal,
  | "dataVersion"
  | "findings"
  | "mismatches"
  | "tyre"
  | "ignored"
  | "readiness"
  | "looked"
  | "history"
  | "hidden"
  | "cautions"
>;

/**
 * Findings, readiness, likeliest hidden faults and cautions of one find.
 * @throws DomainError with a pointer into the request for an observation that cannot be
 */
export function inspectFind(request: AppraisalRequest, book: Book): FindingsAnswer {
  const weighed = weighFind(request, book);
  const { settled, inspection } = weighed;
  return {
    ...reportInspection(weighed, book),
    cautions: cautionsFor(settled, inspection, weighed.stop ? [] : weighed.courses, book),
  };
}

export function reportInspection(
  { settled: { attributes }, inspection, found }: LookedOver,
  book: Book,
): Omit<FindingsAnswer, "cautions"> {
  return {
    dataVersion: book.catalogue.version,
    findings: found.map((finding) => ({
      ...finding,
      safetyBlock: finding.safety === "block" && finding.curedBy.length === 0,
    })),
    mismatches: inspection.mismatches,
    tyre: inspection.tyre,
    ignored: inspection.ignored,
    readiness: readinessOf(inspection, book),
    looked: lookedAt(attributes, inspection, book.inspection),
    history: inspection.history.factors,
    hidden: hiddenFaults(inspection, book),
  };
}
