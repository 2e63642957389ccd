import type { UnseenCheck } from "../inspection/finding.ts";
import type { Appraisal } from "./appraisal.ts";
import type { Book } from "./book.ts";

/** Faults less likely than this are not listed one by one. */
const WORTH_NAMING = 0.01;

/** For each check that was not looked at its likeliest fault, likeliest first. Papers are owed, not guessed. */
export function hiddenFaults(unseen: readonly UnseenCheck[], book: Book): Appraisal["hidden"] {
  return unseen
    .filter(
      ({ check, acquittedBy }) =>
        acquittedBy === null && book.inspection.byId.get(check)!.check.group !== "paperwork",
    )
    .map(({ check, probabilities }) => {
      let rank = 1;
      for (let other = 2; other < probabilities.length; other++)
        if (probabilities[other]! > probabilities[rank]!) rank = other;
      return {
        check,
        level: book.inspection.byId.get(check)!.check.levels[rank]!.id,
        probability: probabilities[rank]!,
      };
    })
    .filter(({ probability }) => probability >= WORTH_NAMING)
    .sort((a, b) => b.probability - a.probability || (a.check < b.check ? -1 : 1));
}
