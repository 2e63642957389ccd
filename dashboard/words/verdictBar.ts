import type { Fault } from "../api/fault.ts";
import type { Appraisal, CourseId } from "../api/types.ts";
import { capital, count } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { money } from "./money.ts";
import { NO_FIGURE } from "./noFigure.ts";
import { advice, stopReason } from "./verdict.ts";

/** What the bar at the foot of a form is. */
export const VERDICT_SO_FAR = "Verdict so far";
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

/**
 * Under the figure itself: "most to offer, was €24".
 * @param before what it was before the last answer; null where that changed nothing
 */
export function mostToOffer(before: number | null, currency: string): string {
  return before === null ? "most to offer" : `most to offer, was ${money(before, currency)}`;
}

/** "Most to offer: €41." */
export function offerSpoken(most: number, currency: string): string {
  return `Most to offer: ${money(most, currency)}.`;
}

/** Verdict and offer in a sentence each, for whoever does not see the bar. */
export function verdictSpoken(appraisal: Appraisal): string {
  const { currency, decision } = appraisal;
  const reason = decision.stop === null ? "" : `: ${stopReason(appraisal)}`;
  const most = decision.walkAwayPrice;
  const offer = most === null ? "" : ` ${offerSpoken(most, currency)}`;
  return `${advice(appraisal, { called: "it" })}${reason}.${offer}`;
}

/**
 * Why the figures are not newer.
 * @param told what was put in: what you "entered" or "saw"
 */
export function barTrouble(fault: Exclude<Fault, { kind: "refused" }>, told: "entered" | "saw"): string {
  return fault.kind === "no-signal"
    ? `No signal. What you ${told} is kept and is asked again later.`
    : `The service failed. What you ${told} is kept.`;
}

/** "2 answers are refused; the figures are those from before." */
export function answersRefused(n: number): string {
  return `${n > 1 ? `${n} answers are` : "An answer is"} refused; the figures are those from before.`;
}
