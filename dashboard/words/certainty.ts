import type { Appraisal } from "../api/types.ts";
import { fineness, outOf } from "./chance.ts";
import { uncapital } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { billed, goalMoney, money, rate, roundMoney, roundTo } from "./money.ts";

type Decision = Pick<Appraisal["decision"], "course" | "confidence" | "perfectInformation" | "courseByGoal">;

/** "Best in 7 of 10 ways it can turn out."; null where the answer does not say. */
export function confidenceWords({ confidence }: Pick<Decision, "confidence">): string | null {
  if (confidence === null) return null;
  if (confidence === 1) return "Best in every way it can turn out.";
  // Ways beyond the twentieth are nobody's experience.
  return `Best ${outOf(confidence, fineness(confidence) === 10 ? 10 : 20)} ways it can turn out.`;
}

/** Below this, in the currency's unit, knowing more would change nothing at all. */
const NOTHING = 0.005;

/** "Knowing everything beforehand would be worth €18 to you."; null where the answer does not say. */
export function knowingWords(
  { perfectInformation }: Pick<Decision, "perfectInformation">,
  currency: string,
): string | null {
  if (perfectInformation === null) return null;
  if (perfectInformation < NOTHING) return "Nothing you could still find out would change the course.";
  const worth =
    roundMoney(perfectInformation) < 1
      ? `less than ${money(1, currency)}`
      : money(perfectInformation, currency);
  return `Knowing everything beforehand would be worth ${worth} to you.`;
}

/** Goals further off than so many times one's own, or than that share of it, are no neighbours. */
const FAR = 2;

/**
 * The goals nearest to one's own at which another course is best: "From €21 an hour on, sell it as found."
 * One below and one above at most, none that is far off.
 */
export function flipWords({ course, courseByGoal }: Decision, goal: number, currency: string): string[] {
  const flips = courseByGoal.flatMap((span, i) => {
    const before = courseByGoal[i - 1];
    return before === undefined ? [] : [{ at: span.fromGoal, below: before.course, above: span.course }];
  });
  const under = flips.filter(({ at, below }) => at <= goal && below !== course).at(-1);
  const over = flips.find(({ at, above }) => at > goal && above !== course);
  const told: string[] = [];
  if (under !== undefined && under.at * FAR >= goal && under.at > 0)
    told.push(
      `Below ${flipMoney(under.at, goal, currency)} an hour, ${uncapital(COURSE_WORDS[under.below].advice("it"))}.`,
    );
  if (over !== undefined && (goal === 0 || over.at <= FAR * goal))
    told.push(
      `From ${flipMoney(over.at, goal, currency)} an hour on, ${uncapital(COURSE_WORDS[over.above].advice("it"))}.`,
    );
  return told;
}

/** To the unit, but for a flip so near one's own goal that both would read the same. */
function flipMoney(at: number, goal: number, currency: string): string {
  if (roundTo(at, 1) !== goal) return rate(at, currency);
  return at === goal ? goalMoney(goal, currency) : billed(at, currency);
}
