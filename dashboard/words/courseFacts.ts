import type { CourseOutcome } from "../api/types.ts";
import { lastHours } from "./addedHours.ts";
import { outOf } from "./chance.ts";
import { goalMoney, money, roundMoney } from "./money.ts";
import { between } from "./range.ts";
import { bareHours, days, hours } from "./time.ts";
import { lossWords } from "./titles.ts";

/** What stands under the dots of a course: margin, hours with their range, how often it loses or misses the goal, when it is sold and for how much. */
export function courseFacts(
  course: CourseOutcome,
  courses: readonly CourseOutcome[],
  decided: boolean,
  goal: number,
  currency: string,
): string {
  if (course.margin === null) return "";
  const leaves = course.course === "leave";
  return [
    `${money(course.margin.mean, currency)}${workWords(course)}`,
    leaves ? "" : lossWords(course),
    leaves ? "" : missWords(course, goal, currency),
    leaves ? "" : saleWords(course, currency),
    lastHours(course, courses, goal, currency) ?? "",
    decided ? "best after paying for your time" : "",
  ]
    .filter((part) => part !== "")
    .join("\u00a0\u00b7 ");
}

/** " for 8.9 h, likely 7 to 11"; ", no hours". */
function workWords({ hours: spent }: CourseOutcome): string {
  if (spent === null || spent.mean < 0.05) return ", no hours";
  const [low, high] = [bareHours(spent.p10), bareHours(spent.p90)];
  return low === high
    ? ` for ${hours(spent.mean)}`
    : ` for ${hours(spent.mean)}, likely ${between(low, high)}`;
}

/** "about 6 weeks until sold, taking about €250"; "" where that is not known. */
function saleWords({ elapsedDays, sale }: CourseOutcome, currency: string): string {
  if (elapsedDays === null) return "";
  const takings = sale === null ? "" : `, taking about ${money(sale.takings, currency)}`;
  return `about ${days(elapsedDays)} until sold${takings}`;
}

/** "misses your €12 in 3 of 10". */
export function missWords({ belowGoalProbability }: CourseOutcome, goal: number, currency: string): string {
  if (belowGoalProbability === null) return "";
  return `misses your ${goalMoney(goal, currency)} ${outOf(belowGoalProbability, 10)}`;
}

/** "You can still change course after opening it up; worth €9."; null where that is worth nothing. */
export function changeWords({ rightToChange }: CourseOutcome, currency: string): string | null {
  if (rightToChange === null || roundMoney(rightToChange) < 1) return null;
  return `You can still change course after opening it up; worth ${money(rightToChange, currency)}.`;
}
