import type { CourseId } from "../api/types.ts";
import { COURSE_WORDS } from "./course.ts";

/** Texts of the panel in which work that has begun is told. */
export const BEGUN_TITLE = "Work begun";
export const BEGUN_FACTS =
  "Say what is done and what it took: every course is then compared from now on. Found something?";
export const BEGUN_ANSWER_CHECK = "Answer that check";
export const BEGUN_MONEY_HINT = "Parts and services so far, the price of the bike apart.";
export const BEGUN_BOUGHT = "Bought";
export const BEGUN_WORTH_AGAIN =
  "Worth again: what one would still bring you unused, its price back or its next use. 0 where it has none; then it is spent whatever you do.";
export const BEGUN_DONE_MEANS =
  "Done: finished, and it held, at every wheel it concerns. Work that failed is a discovery: answer its check instead.";

/** "Already spent €30: shown, not counted." */
export function notCounted(spent: string): string {
  return `${spent}: shown, not counted.`;
}

/** "still to buy: 2 × €9". */
export function stillToBuy(cost: string): string {
  return `still to buy: ${cost}`;
}

/** "Done (plan to restore)"; without a course there is no plan to name. */
export function doneLegend(course: CourseId | undefined): string {
  return course === undefined ? "Done" : `Done (plan to ${COURSE_WORDS[course].name.toLowerCase()})`;
}
