import { holds } from "../bicycle.ts";
import type { Finding, FindingsByCheck, Inspection } from "../inspection/finding.ts";
import { findingAt } from "../inspection/findingsByCheck.ts";
import type { CourseId } from "../service/operation.ts";
import type { PlannedTask } from "../service/workPlan.ts";
import type { RaisedCaution } from "./appraisal.ts";
import { bearing } from "./bearing.ts";
import type { Book } from "./book.ts";
import type { Caution, CautionClause } from "./caution.ts";
import type { SettledRequest } from "./settledRequest.ts";
import type { OpenCourse, WeighedCourse } from "./weighedCourse.ts";

/** What cautions are raised from. */
export interface Evidence {
  readonly settled: SettledRequest;
  readonly inspection: Inspection;
  readonly found: FindingsByCheck;
  readonly unseen: ReadonlySet<string>;
  readonly open: readonly OpenCourse[];
  readonly operations: ReadonlySet<string>;
  /** The operations that use a part, by part. */
  readonly uses: ReadonlyMap<string, ReadonlySet<string>>;
  readonly blocked: boolean;
  readonly beyondSkill: boolean;
  readonly book: Book;
}

/** The cautions to show, hard ones first, each once and at its hardest. */
export function cautionsFor(
  settled: SettledRequest,
  inspection: Inspection,
  courses: readonly WeighedCourse[],
  book: Book,
): readonly RaisedCaution[] {
  const evidence = gather(settled, inspection, courses, book);
  const raised = book.catalogue.cautions.flatMap((caution) => raise(caution, evidence) ?? []);
  return [...raised.filter(({ kind }) => kind === "hard"), ...raised.filter(({ kind }) => kind === "soft")];
}

function gather(
  settled: SettledRequest,
  inspection: Inspection,
  courses: readonly WeighedCourse[],
  book: Book,
): Evidence {
  const open = courses.filter((course): course is OpenCourse => course.open);
  const tasks = open.flatMap(({ plan }) => plan.tasks);
  return {
    settled,
    inspection,
    found: inspection.byCheck,
    unseen: new Set(inspection.unseen.map(({ check }) => check)),
    open,
    operations: new Set(tasks.map(({ operation }) => operation.id)),
    uses: partsUsed(tasks),
    blocked: inspection.findings.some(({ safety }) => safety === "block"),
    beyondSkill: tasks.some(
      ({ operation }) =>
        operation.safetyCritical && operation.doneBy === "self" && operation.skill > settled.workshop.skill,
    ),
    book,
  };
}

function partsUsed(tasks: readonly PlannedTask[]): ReadonlyMap<string, ReadonlySet<string>> {
  const used = new Map<string, Set<string>>();
  for (const { operation, purchases } of tasks) {
    for (const { part } of purchases) used.set(part.id, (used.get(part.id) ?? new Set()).add(operation.id));
  }
  return used;
}

function firstFound(wanted: CautionClause["findings"], found: FindingsByCheck): Finding | null {
  for (const match of wanted) {
    const finding = findingAt(found, match);
    if (finding !== undefined) return finding;
  }
  return null;
}

function raise(caution: Caution, evidence: Evidence): RaisedCaution | null {
  const { id, title, text, clauses } = caution;
  const holding = clauses.flatMap((clause) => {
    const because = reasonOf(clause, evidence);
    return because === null ? [] : [{ clause, because }];
  });
  const first = holding.find(({ clause }) => clause.kind === "hard") ?? holding[0];
  if (first === undefined) return null;
  const bears = bearing(
    holding.map(({ clause }) => clause),
    evidence,
  );
  return { id, title, kind: first.clause.kind, text, because: first.because, bears };
}

/** Why a clause holds, in words; null where it does not. Every field that is not empty must hold. */
function reasonOf(clause: CautionClause, evidence: Evidence): string | null {
  const { book, settled } = evidence;
  if (!holds(clause.when, settled.attributes)) return null;
  if (clause.whileBlocked && !evidence.blocked) return null;
  if (clause.beyondSkill && !evidence.beyondSkill) return null;
  const reasons: string[] = [];
  if (clause.findings.length > 0) {
    const match = firstFound(clause.findings, evidence.found);
    if (match === null) return null;
    reasons.push(levelWords(match.check, match.level, book));
  }
  if (clause.unseen.length > 0) {
    const id = clause.unseen.find((check) => evidence.unseen.has(check));
    if (id === undefined) return null;
    reasons.push(`${book.inspection.byId.get(id)!.check.name}: not looked at`);
  }
  if (clause.operations.length > 0) {
    const id = clause.operations.find((operation) => evidence.operations.has(operation));
    if (id === undefined) return null;
    reasons.push(`In the plan: ${book.service.operations.get(id)!.name}`);
  }
  if (clause.uses.length > 0) {
    const id = clause.uses.find((part) => evidence.uses.has(part));
    if (id === undefined) return null;
    reasons.push(`In the plan: ${book.service.parts.get(id)!.name}`);
  }
  if (clause.courses.length > 0) {
    if (!clause.courses.some((course) => isOpen(course, evidence))) return null;
  }
  return reasons.length > 0 ? reasons.join(". ") : standingReason(clause);
}

function isOpen(course: CourseId, { open }: Evidence): boolean {
  return open.some((one) => one.course === course);
}

function standingReason(clause: CautionClause): string {
  if (clause.beyondSkill) return "Safety-critical work beyond the skill given";
  if (clause.whileBlocked) return "A fault that blocks riding stands";
  return clause.courses.length > 0 ? "Any sale" : "This kind of bike";
}

function levelWords(check: string, level: string, book: Book): string {
  const { check: row, ranks } = book.inspection.byId.get(check)!;
  return `${row.name}: ${row.levels[ranks.get(level)!]!.description}`;
}
