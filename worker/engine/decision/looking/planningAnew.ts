import type { CheckId } from "../../inspection/check.ts";
import type { Money } from "../../quantity.ts";
import type { Book } from "../book.ts";
import { courseOf } from "../choice.ts";
import type { LevelOutlook } from "./levelOutlook.ts";
import type { Looking } from "./looking.ts";
import { weighedAgain } from "./weighedAgain.ts";

/** Draws that the whole engine is asked for: the first, which are spread as evenly as all of them. */
const ASKED_ANEW = 8;
/** After so many of them what is still to come can be told roughly. */
const ENOUGH_TO_TELL = 3;
/** Standard errors by which the average so far may yet rise. */
const MAY_RISE = 2;

/**
 * Outlooks of draws set right for what a plan made anew would add: for the first of them the whole engine is asked, and what a course is worth more on average
 * there is added to all (a control variate). Courses closed in one of the two are left out of the average.
 * @param fallsShort whether outlooks are worth too little to matter; no more is asked where they are even if the average still rises by two standard errors
 */
export function planningAnew(
  outlooks: readonly LevelOutlook[],
  checks: readonly CheckId[],
  draws: readonly (readonly number[])[],
  { find, noise }: Looking,
  book: Book,
  fallsShort: (outlooks: readonly LevelOutlook[]) => boolean,
): readonly LevelOutlook[] {
  const unseen = checks.map((id) => find.inspection.unseen.find(({ check }) => check === id)!);
  const more = find.courses.map(() => new Average());
  const movedBy = (added: (average: Average) => Money) => {
    const adds = more.map(added);
    return outlooks.map((one) => {
      const worths = one.worths.map((worth, place) => (worth === null ? null : worth + adds[place]!));
      return { ...one, worths, course: courseOf(worths, noise) };
    });
  };
  for (let at = 0; at < Math.min(ASKED_ANEW, draws.length); at++) {
    const anew = weighedAgain(find, unseen, draws[at]!, outlooks[at]!.chance, book);
    anew.worths.forEach((worth, place) => {
      const before = outlooks[at]!.worths[place]!;
      if (worth !== null && before !== null) more[place]!.add(worth - before);
    });
    if (at + 1 >= ENOUGH_TO_TELL && fallsShort(movedBy((one) => one.mean + MAY_RISE * one.standardError)))
      break;
  }
  return movedBy((one) => one.mean);
}

/** A mean with its standard error, of numbers that come one by one (Welford 1962). */
class Average {
  mean = 0;
  #count = 0;
  #squares = 0;

  add(value: number): void {
    this.#count++;
    const off = value - this.mean;
    this.mean += off / this.#count;
    this.#squares += off * (value - this.mean);
  }

  /** 0 where there are too few to tell. */
  get standardError(): number {
    return this.#count < 2 ? 0 : Math.sqrt(this.#squares / (this.#count - 1) / this.#count);
  }
}
