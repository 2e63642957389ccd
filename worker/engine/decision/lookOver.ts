import type { Finding, Inspection } from "../inspection/finding.ts";
import type { Patient } from "../service/bench.ts";
import { curedByDone, usedUp } from "../service/doneWork.ts";
import { withoutUsed } from "../service/stock.ts";
import { afterWork, type FoundFinding } from "./afterWork.ts";
import type { Book } from "./book.ts";
import { inspectSettled } from "./inspectSettled.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { standingFaults } from "./standingFaults.ts";
import { withWorkDone } from "./withWorkDone.ts";

/** A find looked over. */
export interface LookedOver {
  /** Before finished work was taken in. */
  readonly asTold: SettledRequest;
  readonly settled: SettledRequest;
  /** As it stands now: what finished work has cured stands at its best level. */
  readonly inspection: Inspection;
  /** As it was found. */
  readonly found: readonly FoundFinding[];
}

/**
 * What was observed of a find, and what of it finished work has cured since. Only what remains bears on plans and money.
 * @throws DomainError with an RFC 6901 pointer into the request
 */
export function lookOver(asTold: SettledRequest, book: Book): LookedOver {
  const asFound = inspectSettled(asTold, book);
  const { done } = asTold;
  if (done.size === 0)
    return {
      asTold,
      settled: asTold,
      inspection: asFound,
      found: asFound.findings.map((one) => ({ ...one, curedBy: [] })),
    };
  const patient: Patient = {
    index: book.service,
    attributes: asTold.attributes,
    missingParts: asTold.missingParts,
    faults: standingFaults(asFound, asTold.rearSprockets, book),
    found: asFound.byCheck,
  };
  const cured = curedByDone(patient, done);
  const curedBy = (finding: Finding) =>
    [...cured.faults].find(
      ([{ check, position, assumed }]) =>
        !assumed && check.id === finding.check && position === finding.position,
    )?.[1] ?? [];
  const found = asFound.findings.map((finding) => ({ ...finding, curedBy: curedBy(finding) }));
  return {
    asTold,
    settled: withWorkDone(asTold, withoutUsed(asTold.stock, usedUp(patient, done)), book),
    inspection: afterWork(asFound, found, cured, book),
    found,
  };
}
