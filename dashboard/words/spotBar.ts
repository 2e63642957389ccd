import type { Appraisal, CourseId } from "../api/types.ts";
import { standing } from "../courses/standing.ts";
import { capital, uncapital } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { money, roundMoney } from "./money.ts";
import { likelyRate } from "./range.ts";
import { advice, stopReason } from "./verdict.ts";

/** What the bar at the foot says. */
export interface BarWords {
  readonly title: string;
  /** Whose sign stands before the title; null where none is decided on. */
  readonly course: CourseId | null;
  /** What stands under it; empty where nothing does. */
  readonly line: string;
}

/** What the bar needs beside the answer. */
export interface BarTerms {
  /** Asked or paid; undefined where it is not known. */
  readonly price: number | undefined;
  readonly paid: boolean;
  /** No look on the spot is worth its minute any more, or the user has looked enough. */
  readonly decided: boolean;
}

/** Verdict and rate in the words of someone who has not paid yet. */
export function barWords(appraisal: Appraisal, { price, paid, decided }: BarTerms): BarWords {
  if (appraisal.decision.stop !== null) {
    const line = paid ? "No figure is worked out." : "Do not pay, do not bargain.";
    return { title: `Stopped. ${capital(stopReason(appraisal))}`, course: null, line };
  }
  const { course } = appraisal.decision;
  return {
    title: decided ? decidedTitle(appraisal, price) : openTitle(course, paid),
    course: decided ? course : null,
    line: rateLine(appraisal, price, paid),
  };
}

function openTitle(course: CourseId, paid: boolean): string {
  if (course === "leave") return "Look on before you leave it";
  return paid ? "Look on before you start" : "Look on before you offer";
}

function decidedTitle(appraisal: Appraisal, price: number | undefined): string {
  const { course, walkAwayPrice } = appraisal.decision;
  const isTooDear =
    course === "leave" && price !== undefined && walkAwayPrice !== null && price > walkAwayPrice;
  if (isTooDear && roundMoney(walkAwayPrice) > 0) return `Not for ${money(price, appraisal.currency)}`;
  return advice(appraisal, { called: "it" });
}

/** "At the €70 asked: €9 an hour, likely between −€9 and €27". */
function rateLine(appraisal: Appraisal, price: number | undefined, paid: boolean): string {
  const { currency } = appraisal;
  const shown = standing(appraisal)?.shown ?? null;
  if (shown === null || shown.marginPerHour === null) return "No other course is open.";
  const figures = likelyRate(shown.marginPerHour, currency);
  const which = appraisal.decision.course === "leave" ? `${uncapital(COURSE_WORDS[shown.course].name)} ` : "";
  if (paid) return capital(`${which}${figures}`);
  if (price === undefined) return `Price not known. For nothing: ${which}${figures}`;
  if (price === 0) return `For nothing: ${which}${figures}`;
  return `At the ${money(price, currency)} asked: ${which}${figures}`;
}
