import type { Appraisal, Check, PlannedOperation } from "../api/types.ts";
import { counted, listed, uncapital } from "./count.ts";
import { minutes } from "./time.ts";

/** Faults to cure and looks owed, by check. */
export interface ReadyRows {
  readonly blocking: readonly string[];
  readonly owed: readonly string[];
}

/** What must be cleared before riding, and what before selling: papers bear on the sale alone. */
export function readyRows(
  { blocking, owed }: Pick<Appraisal["readiness"], "blocking" | "owed">,
  isPaper: (check: string) => boolean,
): { readonly ride: ReadyRows; readonly sale: ReadyRows } {
  const part = (papers: boolean) => ({
    blocking: blocking.filter((id) => isPaper(id) === papers),
    owed: owed.filter((id) => isPaper(id) === papers),
  });
  return { ride: part(false), sale: part(true) };
}

export const READY_TITLES = {
  ride: "Before anyone rides it",
  sale: "Before you sell it",
} as const;

/** Over what blocks the ride, what blocks the sale, and the looks owed. */
export const READY_PARTS = { ride: "To cure", sale: "Forbids a sale", owed: "Looks owed" } as const;

/** "two faults to cure, papers that forbid a sale, three looks owed"; empty where nothing stands. Of papers no work clears what blocks: it is no fault to cure. */
export function readyCounts(
  { blocking, owed }: Pick<Appraisal["readiness"], "blocking" | "owed">,
  isPaper: (check: string) => boolean,
): string {
  const faults = blocking.filter((id) => !isPaper(id)).length;
  const parts = [
    faults > 0 ? `${counted(faults, "fault")} to cure` : "",
    blocking.some(isPaper) ? "papers that forbid a sale" : "",
    owed.length > 0 ? `${counted(owed.length, "look")} owed` : "",
  ];
  return parts.filter((part) => part !== "").join(", ");
}

/**
 * What to do about a fault that blocks: "To do: new brake cables, test brakes.", "Done: new brake cables. Look again before
 * it is ridden.", or that the plan leaves it; of papers, that no work clears them.
 * @param curedBy work done that cured it
 * @param jobs of the plan in sight
 * @param safeJobs of the plan to make it safe, told where the one in sight leaves the fault
 * @param rideable whether that plan ends with a bike to ride: then what no job is about goes with its causes
 * @param names `isPaper`: what blocks there forbids the sale itself, in whatever state
 */
export function curesOf(
  check: string,
  curedBy: readonly string[],
  jobs: readonly Pick<PlannedOperation, "name" | "because">[],
  safeJobs: readonly Pick<PlannedOperation, "name" | "because">[],
  rideable: boolean,
  names: { operation(id: string): string; isPaper(check: string): boolean },
): string {
  if (curedBy.length > 0)
    return `Done: ${uncapital(listed(curedBy.map(names.operation)))}. Look again and answer it anew.`;
  const cures = curesIn(check, jobs);
  if (cures !== "") return `To do: ${cures}.`;
  if (names.isPaper(check)) return "No work clears this. Not to be sold while it stands.";
  if (rideable)
    return "No job of its own in what is left to do. Look again after the work, and answer it anew.";
  const safe = curesIn(check, safeJobs);
  if (safe !== "") return `The plan in sight leaves it. To make it safe: ${safe}.`;
  return "This plan leaves it: the bike stays not roadworthy, and is sold as such or not at all.";
}

/** The jobs that cure a check, each once: "new pads and clean and centre"; empty where there are none. */
function curesIn(check: string, jobs: readonly Pick<PlannedOperation, "name" | "because">[]): string {
  const names = jobs.filter(({ because }) => because.includes(check)).map(({ name }) => uncapital(name));
  return listed([...new Set(names)]);
}

/** What a look that is owed takes: "Look: 2 min, torch." */
export function owedWords(check: Pick<Check, "minutes" | "tools" | "where"> | undefined): string {
  if (check === undefined) return "";
  const tools = check.tools.length === 0 ? "no tools" : check.tools.join(", ");
  return `Look: ${minutes(check.minutes)}, ${tools}${check.where === "dismantled" ? ", once it is apart" : ""}.`;
}
