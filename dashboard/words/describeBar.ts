import type { Appraisal, CourseId } from "../api/types.ts";
import { capital, count } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { money } from "./money.ts";
import { NO_FIGURE } from "./noFigure.ts";
import { advice, stopReason } from "./verdict.ts";
import { offerSpoken } from "./verdictBar.ts";

/** In place of a verdict where a hard caution stands. */
export const STOPPED = "Stopped";

/** "Two picks to go", before there is an answer. */
export function picksToGo(open: number): string {
  return `${capital(count(open))} ${open === 1 ? "pick" : "picks"} to go`;
}

/** "A crack in the frame. No figure is worked out." */
export function stoppedLine(appraisal: Appraisal): string {
  return `${capital(stopReason(appraisal))}. ${NO_FIGURE}`;
}

/** "Restore: ", before a rate that is not the verdict's own. */
export function ofCourse(course: CourseId): string {
  return `${COURSE_WORDS[course].name}: `;
}

/** "At the €70 asked: ", before a rate. */
export function atAsked(price: number, currency: string): string {
  return `At the ${money(price, currency)} asked: `;
}

/** Verdict and offer in a sentence each, for whoever does not see the bar. */
export function verdictSpoken(appraisal: Appraisal): string {
  const { currency, decision } = appraisal;
  const reason = decision.stop === null ? "" : `: ${stopReason(appraisal)}`;
  const most = decision.walkAwayPrice;
  const offer = most === null ? "" : ` ${offerSpoken(most, currency)}`;
  return `${advice(appraisal, { called: "it" })}${reason}.${offer}`;
}
