import type { Inspection } from "../inspection/finding.ts";
import { lookedAt } from "../inspection/looked.ts";
import type { Appraisal } from "./appraisal.ts";
import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { cautionsFor } from "./cautions.ts";
import { hiddenFaults } from "./hiddenFaults.ts";
import { readinessOf } from "./readiness.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { weighFind } from "./weighFind.ts";

/** What looking at a bike came to, before money. */
export type FindingsAnswer = Pick<
  Appraisal,
  | "dataVersion"
  | "findings"
  | "mismatches"
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
    ...reportInspection(settled, inspection, book),
    cautions: cautionsFor(settled, inspection, weighed.stop ? [] : weighed.courses, book),
  };
}

export function reportInspection(
  { attributes }: SettledRequest,
  inspection: Inspection,
  book: Book,
): Omit<FindingsAnswer, "cautions"> {
  return {
    dataVersion: book.catalogue.version,
    findings: inspection.findings.map((finding) => ({ ...finding, safetyBlock: finding.safety === "block" })),
    mismatches: inspection.mismatches,
    ignored: inspection.ignored,
    readiness: readinessOf(inspection, book),
    looked: lookedAt(attributes, inspection, book.inspection),
    history: inspection.history.factors,
    hidden: hiddenFaults(inspection, book),
  };
}
