import type { Inspection } from "../inspection/finding.ts";
import type { Book } from "./book.ts";
import { levelOf, stopFinding } from "./closures.ts";
import type { SettledRequest } from "./settledRequest.ts";

/** What ends the matter before any money is compared. */
export interface Stop {
  /** The caution that says so. */
  readonly caution: string;
  readonly reason: string;
}

/** A category that is out of scope, or a number or paper that forbids the sale. Only what was observed stops. */
export function stopOf({ attributes }: SettledRequest, inspection: Inspection, book: Book): Stop | null {
  const outOfScope = book.catalogue.defaults.outOfScope.find(
    ({ category }) => category === attributes.category,
  );
  if (outOfScope) return { caution: outOfScope.caution, reason: outOfScope.reason };
  const finding = stopFinding(inspection, book);
  if (!finding) return null;
  const { check } = book.inspection.byId.get(finding.check)!;
  const level = levelOf(finding, book);
  const caution = book.catalogue.cautions.find(({ clauses }) =>
    clauses.some(
      ({ kind, findings }) =>
        kind === "hard" &&
        findings.some((match) => match.check === check.id && match.levels.includes(level.id)),
    ),
  );
  return {
    caution: caution?.id ?? check.id,
    reason: `${check.name}: ${level.description}. ${level.terminalReason ?? ""}`.trim(),
  };
}
