import type { Inspection, UnseenCheck } from "../inspection/finding.ts";
import { raisedByIn } from "../inspection/history/raisedBy.ts";
import type { Appraisal } from "./appraisal.ts";
import type { Book } from "./book.ts";

/** Faults less likely than this are not listed one by one. */
const WORTH_NAMING = 0.01;

/**
 * For each check that was not looked at its likeliest fault after all evidence, likeliest first, with its chance before anything was seen
 * and the findings that raised it. Papers are owed, not guessed.
 */
export function hiddenFaults(inspection: Inspection, book: Book): Appraisal["hidden"] {
  const raisedBy = raisedByIn(inspection);
  const hidden: Appraisal["hidden"][number][] = [];
  for (const unseen of inspection.unseen) {
    const { check } = book.inspection.byId.get(unseen.check)!;
    if (unseen.acquittedBy !== null || check.group === "paperwork") continue;
    const rank = likeliestFault(unseen);
    const probability = unseen.probabilities[rank]!;
    if (probability < WORTH_NAMING) continue;
    hidden.push({
      check: check.id,
      level: check.levels[rank]!.id,
      probability,
      prior: unseen.prior[rank]!,
      raisedBy: raisedBy(unseen, check.ordered, rank),
    });
  }
  return hidden.sort((a, b) => b.probability - a.probability || (a.check < b.check ? -1 : 1));
}

/** The milder of two that are equally likely. */
function likeliestFault({ probabilities }: UnseenCheck): number {
  let rank = 1;
  for (let other = 2; other < probabilities.length; other++)
    if (probabilities[other]! > probabilities[rank]!) rank = other;
  return rank;
}
