import type { Appraisal, CourseOutcome, ValueBand } from "../api/types.ts";
import { lastHours } from "./addedHours.ts";
import { capital, count, counted, uncapital } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { money } from "./money.ts";
import { readyCounts, readyRows } from "./ready.ts";
import { bareHours } from "./time.ts";

/** Dots below nought among the 20 outcomes of a course. */
function losingDots(course: CourseOutcome): number {
  return course.margin?.twentieths.filter((margin) => margin < 0).length ?? 0;
}

/** "rarely loses", "loses in 3 of 20": from the dots, so that words and dots agree. */
export function lossWords(course: CourseOutcome): string {
  const lost = losingDots(course);
  return lost === 0 ? "rarely loses" : `loses in ${lost} of 20`;
}

/** "Restoring brings most and rarely loses; making safe is the calmer second." */
export function coursesTitle(
  courses: readonly CourseOutcome[],
  decided: CourseOutcome["course"],
  goal: number,
  currency: string,
): string {
  const open = courses.filter(({ course, margin }) => course !== "leave" && margin !== null);
  const [most, ...others] = [...open].sort((a, b) => mean(b) - mean(a));
  if (most === undefined) return "No course but leaving is open";
  const doing = capital(COURSE_WORDS[most.course].doing);
  if (mean(most) < 0) return "Every course loses money";
  if (most.course !== decided) {
    const last = lastHours(most, courses, goal, currency);
    const but = last ?? "its hours earn less than your goal";
    return `${doing} brings most, but ${but}`;
  }
  const sure = losingDots(most) === 0 ? "and rarely loses" : `but ${lossWords(most)}`;
  // What loses as often as the best is no calmer, however narrow.
  const calm = others.filter(
    (one) => mean(one) > 0 && spread(one) < spread(most) && losingDots(one) <= losingDots(most),
  );
  const second = calm.sort((a, b) => mean(b) - mean(a))[0];
  const rest = second === undefined ? "" : `; ${COURSE_WORDS[second.course].doing} is the calmer second`;
  return `${doing} brings most ${sure}${rest}`;
}

const mean = ({ margin }: CourseOutcome) => margin?.mean ?? 0;
const spread = ({ margin }: CourseOutcome) => (margin === null ? 0 : margin.p90 - margin.p10);

/** "Made safe it brings about €205, restored about €320"; as found and as parts where nothing makes it rideable. */
export function valueTitle(value: NonNullable<Appraisal["value"]>, currency: string): string {
  const { asFound, madeSafe, restored, parts } = value;
  const about = (band: ValueBand) => `about ${money(band.p50, currency)}`;
  if (madeSafe === null) return `As found it brings ${about(asFound)}, as parts ${about(parts)}`;
  const rest = restored === null ? `as found ${about(asFound)}` : `restored ${about(restored)}`;
  return `Made safe it brings ${about(madeSafe)}, ${rest}`;
}

/** "8.9 hours and €118 to restore it". */
export function planTitle(course: CourseOutcome, currency: string): string {
  const time = `${bareHours((course.plan?.minutes.mean ?? 0) / 60)} hours`;
  const cost = money(course.plan?.cost.mean ?? 0, currency);
  return `${time} and ${cost} to ${uncapital(COURSE_WORDS[course.course].advice("it"))}`;
}

/** "No fault found in 31 of 35 checks made; 9 not made". */
export function lookedTitle({ looked, findings }: Pick<Appraisal, "looked" | "findings">): string {
  const seen = new Set(findings.map(({ check }) => check)).size;
  const faulty = new Set(findings.filter(({ severity }) => severity > 0).map(({ check }) => check)).size;
  // A check made at one wheel alone may show a fault without counting as made.
  const sound = Math.min(looked.made, seen - faulty);
  const open = looked.applicable - looked.made;
  const rest = open > 0 ? `; ${open} not made` : "";
  if (looked.made === 0) return `Not looked at yet: ${looked.applicable} checks not made`;
  return `No fault found in ${sound} of ${looked.made} checks made${rest}`;
}

/**
 * "Not roadworthy yet: two faults to cure, three looks owed"; "Not to be sold yet: papers that forbid a sale" where papers
 * alone stand.
 */
export function readinessTitle(
  { readiness }: Pick<Appraisal, "readiness">,
  isPaper: (check: string) => boolean,
): string {
  if (readiness.ready) return "No fault that blocks riding was found, and no look is owed";
  const { ride } = readyRows(readiness, isPaper);
  const lead = ride.blocking.length + ride.owed.length > 0 ? "Not roadworthy yet" : "Not to be sold yet";
  return `${lead}: ${readyCounts(readiness, isPaper)}`;
}

/** "One hard caution, four to bear in mind". */
export function cautionsTitle(cautions: Appraisal["cautions"]): string {
  const hard = cautions.filter(({ kind }) => kind === "hard").length;
  const soft = cautions.length - hard;
  if (cautions.length === 0) return "No caution raised by what was seen";
  const parts = [
    hard > 0 ? counted(hard, "hard caution") : "",
    soft > 0
      ? hard > 0
        ? `${count(soft)} to bear in mind`
        : `${counted(soft, "caution")} to bear in mind`
      : "",
  ].filter((part) => part !== "");
  return capital(parts.join(", "));
}
