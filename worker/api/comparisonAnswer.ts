import type { ComparedFind, Comparison } from "../engine/portfolio/comparison.ts";
import { domainProblemDetails } from "./domainProblem.ts";
import { jsonPointer } from "./jsonPointer.ts";
import type { Problem } from "./problem.ts";
import type { Submission } from "./submittedFinds.ts";

/** A find that could not be worked out. */
export interface FindProblem {
  readonly id: string;
  readonly problem: Problem;
}

/** The answer of POST /v1/comparisons. */
export type ComparisonAnswer = Omit<Comparison, "finds"> & {
  readonly finds: readonly (ComparedFind | FindProblem)[];
};

/** Puts the finds that could not be parsed back among those that were worked out, in the order of the request. */
export function comparisonAnswer(
  submissions: readonly Submission[],
  comparison: Comparison,
): ComparisonAnswer {
  const worked = comparison.finds[Symbol.iterator]();
  const finds = submissions.map((submission, index): ComparedFind | FindProblem => {
    if ("problem" in submission) return submission;
    const find = worked.next().value!;
    if (!("refusal" in find)) return find;
    return { id: find.id, problem: domainProblemDetails(find.refusal, jsonPointer(["finds", index])) };
  });
  return { ...comparison, finds };
}
