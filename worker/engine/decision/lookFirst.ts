import type { Finding, Inspection } from "../inspection/finding.ts";
import { findingsByCheck } from "../inspection/findingsByCheck.ts";
import type { Money } from "../quantity.ts";
import type { DecidingTest, Operation, OperationId } from "../service/operation.ts";
import type { Book } from "./book.ts";
import { bestCourse } from "./choice.ts";
import { stopFinding } from "./closures.ts";
import { decidingTests } from "./decidingTests.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { type Situation, situationOf } from "./situation.ts";
import { weighCourses } from "./weigh.ts";

/** A test worth doing before anything is decided. */
export interface LookFirst {
  readonly operation: OperationId;
  /** Expected net benefit with the test, less that of deciding now. */
  readonly netGain: Money;
}

/**
 * The paid test or query that beats deciding now by most, if any: expected net benefit over its two outcomes, less its fee and its minutes at the
 * goal, against the best net benefit without it (expected value of sample information; Raiffa 1968).
 */
export function lookFirst(
  settled: SettledRequest,
  inspection: Inspection,
  book: Book,
  situation: Situation,
  now: Money,
): LookFirst | null {
  let best: LookFirst | null = null;
  for (const { operation, test, finding } of decidingTests(settled.attributes, inspection, book)) {
    const netGain = worth(operation, test, finding, settled, inspection, book, situation) - now;
    if (netGain > 0 && (best === null || netGain > best.netGain)) best = { operation: operation.id, netGain };
  }
  return best;
}

function worth(
  operation: Operation,
  test: DecidingTest,
  finding: Finding,
  settled: SettledRequest,
  inspection: Inspection,
  book: Book,
  { ledger }: Situation,
): Money {
  const { resources } = ledger.forOperation(operation, "bike");
  const used = resources.map((index) => ledger.resources[index]!);
  const money = used.reduce((total, resource) => total + resource.money.mean, 0);
  const minutes = used.reduce((total, resource) => total + resource.minutes.mean, 0);
  const { hourlyGoal, speedFactor } = settled.workshop;
  const after = (level: string) =>
    netBenefitAfter(withLevel(inspection, finding, level, book), settled, book);
  const expected = (1 - test.badChance) * after(test.good) + test.badChance * after(test.bad);
  return expected - money - (minutes * speedFactor * hourlyGoal) / 60;
}

/** Best net benefit once the answer is known; a stop is walking away. */
function netBenefitAfter(inspection: Inspection, settled: SettledRequest, book: Book): Money {
  if (stopFinding(inspection, book)) return 0;
  const situation = situationOf(settled, inspection, book);
  return bestCourse(weighCourses(situation), situation).expected.netBenefit;
}

function withLevel(inspection: Inspection, finding: Finding, level: string, book: Book): Inspection {
  const { check, ranks } = book.inspection.byId.get(finding.check)!;
  const rank = ranks.get(level)!;
  const { severity, safety } = check.levels[rank]!;
  const answered = { ...finding, level, rank, severity, safety };
  const findings = inspection.findings.map((one) => (one === finding ? answered : one));
  return { ...inspection, findings, byCheck: findingsByCheck(findings) };
}
