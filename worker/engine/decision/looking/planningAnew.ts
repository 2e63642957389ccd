import type { CheckId } from "../../inspection/check.ts";
import type { Book } from "../book.ts";
import { courseOf } from "../choice.ts";
import type { LevelOutlook } from "./levelOutlook.ts";
import type { Looking } from "./looking.ts";
import { weighedAgain } from "./weighedAgain.ts";

/** Draws that the whole engine is asked for: the first, which are spread as evenly as all of them. */
const ASKED_ANEW = 8;

/**
 * Outlooks of draws set right for what a plan made anew would add: for the first of them the whole engine is asked, and what a course is worth more on average
 * there is added to all (a control variate). Courses closed in one of the two are left out of the average.
 */
export function planningAnew(
  outlooks: readonly LevelOutlook[],
  checks: readonly CheckId[],
  draws: readonly (readonly number[])[],
  { find, noise }: Looking,
  book: Book,
): readonly LevelOutlook[] {
  const unseen = checks.map((id) => find.inspection.unseen.find(({ check }) => check === id)!);
  const more = find.courses.map(() => ({ sum: 0, count: 0 }));
  for (let at = 0; at < Math.min(ASKED_ANEW, draws.length); at++) {
    const anew = weighedAgain(find, unseen, draws[at]!, outlooks[at]!.chance, book);
    anew.worths.forEach((worth, place) => {
      const before = outlooks[at]!.worths[place]!;
      if (worth === null || before === null) return;
      more[place]!.sum += worth - before;
      more[place]!.count++;
    });
  }
  return outlooks.map((one) => {
    const worths = one.worths.map((worth, place) => {
      const { sum, count } = more[place]!;
      return worth === null || count === 0 ? worth : worth + sum / count;
    });
    return { ...one, worths, course: courseOf(worths, noise) };
  });
}
