import type { FieldFault } from "../api/fault.ts";
import type {
  ComparedFind,
  ComparisonAnswer,
  ComparisonBody,
  CourseId,
  FindProblem,
  Objective,
} from "../api/types.ts";
import type { Find } from "../finds/find.ts";

export type ComparedCourse = ComparedFind["courses"][number];
export type Needs = NonNullable<ComparisonAnswer["nextIn"]>["needs"];

type Figures = "margin" | "hours" | "marginPerHour" | "cashNeeded" | "netBenefit";
/** A course with its figures. */
export type OpenCourse = ComparedCourse & { readonly [Key in Figures]: NonNullable<ComparedCourse[Key]> };

/** A find with figures: in the course chosen for it, else in the one it would take. */
export interface SetRow {
  readonly find: Find;
  readonly compared: ComparedFind;
  /** By which the charts name it, from 1. */
  readonly number: number;
  readonly shown: OpenCourse;
  readonly chosen: boolean;
  /** The course it takes in any case. */
  readonly held: CourseId | null;
  /** More than leaving it, for what the set is chosen for. */
  readonly pays: boolean;
  /** What the budgets lack to take it as well; null where chosen, or where no set fits. */
  readonly needs: Needs | null;
}

/** A find without a place in the choice. */
export interface OutsideRow {
  readonly find: Find;
  readonly held: CourseId | null;
  readonly kind: "stopped" | "left" | "only-leaving" | "problem";
  /** Null where there is a problem. */
  readonly compared: ComparedFind | null;
  /** What is wrong, by the field of the find; empty unless there is a problem. */
  readonly faults: readonly FieldFault[];
}

export interface SetRows {
  /** By margin per hour, the highest first. */
  readonly rows: readonly SetRow[];
  readonly outside: readonly OutsideRow[];
}

/** An answer as rows. Finds that are no longer there are passed over. */
export function setRows(answer: ComparisonAnswer, asked: ComparisonBody, finds: readonly Find[]): SetRows {
  const held = new Map(asked.finds.map(({ find, course }) => [find.id, course ?? null]));
  const known = new Map(finds.map((find) => [find.id, find]));
  const compared = new Map(answer.finds.map((one) => [one.id, one]));
  const rows: Omit<SetRow, "number">[] = [];
  for (const { id, course, chosen } of answer.meritOrder) {
    const find = known.get(id);
    const one = compared.get(id);
    if (find === undefined || one === undefined || isProblem(one)) continue;
    const shown = one.courses.find((outcome) => outcome.course === course);
    if (shown === undefined || !isOpen(shown)) continue;
    const needs = chosen ? null : lacking(shown, answer);
    const pays = worth(shown, answer.objective) > leftWorth(one, answer.objective);
    rows.push({ find, compared: one, shown, chosen, held: held.get(id) ?? null, pays, needs });
  }
  const placed = new Set(rows.map(({ find }) => find.id));
  const outside = answer.finds.flatMap((one): OutsideRow[] => {
    const find = known.get(one.id);
    if (find === undefined || placed.has(one.id)) return [];
    return [outsideRow(find, one, held.get(one.id) ?? null)];
  });
  return { rows: rows.map((row, i) => ({ ...row, number: i + 1 })), outside };
}

export function isProblem(one: ComparedFind | FindProblem): one is FindProblem {
  return "problem" in one;
}

/** Whether a course is open and has its figures. */
export function isOpen(course: ComparedCourse): course is OpenCourse {
  return course.available && course.course !== "leave" && course.marginPerHour !== null;
}

/** What a set is chosen for. */
export function worth({ netBenefit, margin }: ComparedCourse, objective: Objective): number {
  return (objective === "margin" ? margin?.mean : netBenefit) ?? 0;
}

function leftWorth({ courses }: ComparedFind, objective: Objective): number {
  const leave = courses.find(({ course }) => course === "leave");
  return leave === undefined ? 0 : worth(leave, objective);
}

function lacking({ hours, cashNeeded }: OpenCourse, { total, budgets }: ComparisonAnswer): Needs | null {
  if (total === null) return null;
  const short = (used: number, more: number, given: number | null) =>
    given === null ? 0 : Math.max(0, used + more - given);
  return {
    hours: short(total.hours, hours.mean, budgets.hours),
    cash: short(total.cash, Math.max(0, cashNeeded), budgets.cash),
    slots: short(total.slots, 1, budgets.slots),
  };
}

function outsideRow(find: Find, one: ComparedFind | FindProblem, held: CourseId | null): OutsideRow {
  if (isProblem(one)) return { find, held, kind: "problem", compared: null, faults: faultsOf(one) };
  const kind = one.decision.stop !== null ? "stopped" : held === "leave" ? "left" : "only-leaving";
  return { find, held, kind, compared: one, faults: [] };
}

/** The faults of a find as on its own page, where its fields begin at the root. */
function faultsOf({ problem: { errors = [], detail } }: FindProblem): readonly FieldFault[] {
  if (errors.length === 0) return [{ pointer: "", message: detail }];
  return errors.map(({ pointer, message }) => ({
    pointer: pointer.replace(/^\/finds\/\d+/, ""),
    message,
  }));
}
