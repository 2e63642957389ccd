import type { Level } from "../inspection/check.ts";
import type { Finding, Inspection } from "../inspection/finding.ts";
import type { Book } from "./book.ts";
import { decidingTests } from "./decidingTests.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { isWhole } from "./standingFaults.ts";

/** Courses closed before any money is compared. */
export interface Closures {
  readonly rideableClosedBecause: string | null;
  readonly wholeSaleClosedBecause: string | null;
  readonly partsClosedBecause: string | null;
}

/**
 * A level that ends the job leaves only parts or leaving; one that a test can decide closes riding until the test is done; a bare frame is not built
 * up here.
 */
export function closures(settled: SettledRequest, inspection: Inspection, book: Book): Closures {
  const terminal = inspection.findings.flatMap((finding) => {
    const level = levelOf(finding, book);
    return level.terminal === null ? [] : [{ finding, level }];
  });
  const ended = terminal.find(
    ({ level }) => level.terminal === "parts-or-recycle" || level.terminal === "recycle",
  );
  const tested = new Set(decidingTests(settled.attributes, inspection, book).map(({ finding }) => finding));
  const undecided = terminal.find(
    ({ finding, level }) => level.terminal === "decide-first" && tested.has(finding),
  );
  const bare = isWhole(settled.attributes)
    ? null
    : "Only a frame is there; building it up into a bike is another job.";
  return {
    rideableClosedBecause: because(ended, book) ?? because(undecided, book) ?? bare,
    wholeSaleClosedBecause: because(ended, book),
    partsClosedBecause: bare && "Only a frame is there: nothing is left to take off it.",
  };
}

/** The finding that stops everything: a removed or reported number, missing or contradictory ownership. */
export function stopFinding(inspection: Inspection, book: Book): Finding | undefined {
  return inspection.findings.find((finding) => levelOf(finding, book).terminal === "stop");
}

export function levelOf({ check, rank }: Finding, book: Book): Level {
  return book.inspection.byId.get(check)!.check.levels[rank]!;
}

function because(found: { finding: Finding; level: Level } | undefined, book: Book): string | null {
  if (!found) return null;
  const { check } = book.inspection.byId.get(found.finding.check)!;
  return `${check.name}: ${found.level.terminalReason ?? found.level.description}`;
}
