import type { Appraisal, PlannedOperation } from "../api/types.ts";
import type { Say, SentenceKey } from "./catalogue.ts";
import { type DraftSection, section } from "./draft.ts";
import { jobKey, jobsOf, jobWords } from "./jobs.ts";
import type { Work } from "./remainingFaults.ts";
import { courseOf, isRideable, type SaleState } from "./saleStates.ts";

/** What was done, and what was left: jobs of the plan that were not done, then what a longer course would have done. */
export function workSections(
  state: SaleState,
  { courses }: Pick<Appraisal, "courses">,
  { plan, undone }: Work,
  say: Say,
): readonly DraftSection[] {
  const jobs = jobsOf(plan);
  const done = jobs.filter((job) => !undone.has(jobKey(job)));
  const missed = jobs.filter((job) => undone.has(jobKey(job)));
  const longer = state === "asFound" ? "madeSafe" : state === "madeSafe" ? "restored" : null;
  const further = longer === null ? [] : jobsOf(courseOf(longer, courses)?.plan).filter(isFurther);
  const left = [...missed, ...further.filter((job) => !jobs.some((one) => jobKey(one) === jobKey(job)))];
  const words = (list: readonly PlannedOperation[]) => list.map((job) => jobWords(job, say));
  return [
    section("done", say, done.length === 0 ? [say("jobNone")] : [], words(done)),
    // In pieces there is nothing left to do to the bike.
    ...(state === "parts"
      ? []
      : [section("notDone", say, [say(leftLine(state, missed, left))], words(left))]),
  ];
}

/** Work for something found, or a choice of looks: what a buyer may want done. Not what the plan merely supposes. */
function isFurther({ assumed, because, kind }: PlannedOperation): boolean {
  return !assumed && (because.length > 0 || kind === "optional");
}

function leftLine(
  state: SaleState,
  missed: readonly PlannedOperation[],
  left: readonly PlannedOperation[],
): SentenceKey {
  if (left.length === 0) return isRideable(state) ? "notDoneOther" : "notDoneNone";
  const toRide = isRideable(state)
    ? missed.some(({ kind }) => kind !== "optional")
    : left.some(({ kind, because }) => kind === "required" && because.length > 0);
  return toRide ? "notDoneToRide" : "notDoneKnown";
}
