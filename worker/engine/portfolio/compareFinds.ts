import type { Appraisal } from "../decision/appraisal.ts";
import { type Report, reportFind } from "../decision/appraise.ts";
import type { Book } from "../decision/book.ts";
import { netBenefitOf, type Worth } from "../decision/choice.ts";
import { weighFind } from "../decision/weighFind.ts";
import { DomainError } from "../domainError.ts";
import { type Candidate, candidateOf } from "./candidate.ts";
import type {
  ComparedFind,
  Comparison,
  ComparisonRequest,
  Objective,
  RefusedFind,
  SubmittedFind,
} from "./comparison.ts";
import { selectSet } from "./selectSet.ts";

const WORTH: Readonly<Record<Objective, Worth>> = {
  netBenefit: netBenefitOf,
  margin: ({ expected }) => expected.margin,
};

/**
 * Several finds side by side, and which of them to take with the hours, the cash and the room there are. A find that cannot be worked out is told with its
 * reason and the others are answered. Deterministic, and the same whatever the order of the finds.
 */
export function compareFinds(
  { currency, finds, budgets, objective }: ComparisonRequest,
  book: Book,
): Comparison {
  const looked = finds.map((find) => lookAt(find, WORTH[objective], book));
  const candidates = looked.flatMap(({ candidate }) => candidate ?? []);
  return {
    currency,
    dataVersion: book.catalogue.version,
    demoData: true,
    objective,
    budgets,
    finds: looked.map(({ told }) => told),
    ...selectSet(candidates, budgets, currency),
  };
}

function lookAt(
  submitted: SubmittedFind,
  worth: Worth,
  book: Book,
): { readonly told: ComparedFind | RefusedFind; readonly candidate: Candidate | null } {
  try {
    const find = weighFind(submitted.request, book);
    const candidate = candidateOf(submitted, find, worth);
    return { candidate, told: tell(submitted.id, reportFind(find, book)) };
  } catch (error) {
    if (error instanceof DomainError && error.code !== "inconsistent-table")
      return { told: { id: submitted.id, refusal: error }, candidate: null };
    throw error;
  }
}

function tell(id: string, report: Report): ComparedFind {
  const { decision, courses, looked, readiness, hidden, soFar, cautions, unconverted } = report;
  return {
    id,
    decision,
    courses: courses.map(({ plan: _, ...course }) => course),
    value: report.value && inShort(report.value),
    looked,
    readiness,
    hidden,
    soFar,
    cautions,
    unconverted,
  };
}

function inShort({
  pieces: _,
  comparables: __,
  ...value
}: NonNullable<Appraisal["value"]>): ComparedFind["value"] {
  return value;
}
