import type { CourseId } from "../api/types.ts";
import { outOf } from "./chance.ts";
import { COURSE_WORDS } from "./course.ts";
import { goalMoney, rate } from "./money.ts";
import { between } from "./range.ts";

/** Texts of the panel with a find's verdict. */
export const VERDICT = "Verdict";
/** Between the rate and its range; each is a word that is explained. */
export const AN_HOUR = "an hour";
export const LIKELY_BETWEEN = "likely between";

/** "On what is known so far: restore." */
export function knownSoFar(course: CourseId): string {
  return `On what is known so far: ${COURSE_WORDS[course].name.toLowerCase()}.`;
}

/** "Best other course: make safe", where the verdict is to leave it. */
export function bestOtherCourse(course: CourseId): string {
  return `Best other course: ${COURSE_WORDS[course].name.toLowerCase()}`;
}

/** "8 outcomes in 10 lie in the bar. Misses your €15 in 3 of 10." */
export function barKey(goal: number, misses: number, currency: string): string {
  return `8 outcomes in 10 lie in the bar. Misses your ${goalMoney(goal, currency)} ${outOf(misses, 10)}.`;
}

/** "€5 and €28", after "between". */
export function rateBetween(low: number, high: number, currency: string): string {
  return between(rate(low, currency), rate(high, currency), " and ");
}
