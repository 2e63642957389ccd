import type { Money } from "../quantity.ts";
import type { CourseId } from "../service/operation.ts";
import type { LookFirst } from "./lookFirst.ts";
import type { Situation } from "./situation.ts";
import { isSuspiciouslyCheap } from "./suspiciousPrice.ts";
import type { OpenCourse, WeighedCourse } from "./weighedCourse.ts";

const NAMES: Readonly<Record<CourseId, string>> = {
  restore: "Restoring",
  "make-safe": "Making safe",
  "sell-as-found": "Selling as found",
  "break-for-parts": "Breaking for parts",
  leave: "Leaving it",
};

/** Why the course was chosen, in plain sentences, the weightiest first. */
export function reasonsFor(
  best: OpenCourse,
  courses: readonly WeighedCourse[],
  situation: Situation,
  look: LookFirst | null,
): readonly string[] {
  return [
    ...(isSuspiciouslyCheap(situation) ? [TOO_CHEAP] : []),
    ...(look ? [lookReason(look, situation)] : []),
    ...chosenReasons(best, runnerUp(best, courses), situation),
    ...courses.flatMap((course) =>
      course.open ? [] : [`${NAMES[course.course]} is closed. ${course.because}`],
    ),
    ...owedReason(situation),
  ];
}

const TOO_CHEAP =
  "The price asked is far below what such a bike brings as it stands. Ask where it comes from, and see a paper, before you think of the margin.";

function lookReason({ id, netGain }: LookFirst, situation: Situation): string {
  const { book } = situation;
  const worth = amount(netGain, situation);
  const test = book.service.operations.get(id);
  const { name } = test ?? book.checks.get(id)!;
  const paid = test ? "its fee and minutes" : "its minutes";
  return `First: ${name}. Knowing the answer is worth ${worth} more than deciding now, ${paid} paid.`;
}

function chosenReasons(best: OpenCourse, second: OpenCourse | null, situation: Situation): readonly string[] {
  const goal = amount(situation.settled.workshop.hourlyGoal, situation);
  const left = (course: OpenCourse) => amount(course.expected.netBenefit, situation);
  if (best.course === "leave") {
    return second
      ? [
          `${NAMES[second.course]}, the best other course, would leave ${left(second)} after your hours at ${goal} each.`,
        ]
      : ["No other course is open."];
  }
  const { margin, hours, netBenefit } = best.expected;
  const chosen = `${NAMES[best.course]} is expected to bring ${amount(margin, situation)} for ${hours.toFixed(1)} h; after your hours at ${goal} each, ${left(best)} is left.`;
  if (!second) return [chosen];
  const next =
    second.expected.netBenefit > netBenefit
      ? `${NAMES[second.course]} would leave ${left(second)}: too little more to be sure of, so the shorter course stands.`
      : `Next best: ${NAMES[second.course].toLowerCase()}, with ${left(second)} left.`;
  return [chosen, next];
}

function runnerUp(best: OpenCourse, courses: readonly WeighedCourse[]): OpenCourse | null {
  const others = courses.filter((course): course is OpenCourse => course.open && course !== best);
  return others.reduce<OpenCourse | null>(
    (top, course) => (top && top.expected.netBenefit >= course.expected.netBenefit ? top : course),
    null,
  );
}

function owedReason({ inspection, book }: Situation): readonly string[] {
  const owed = inspection.unseen.filter(
    ({ check }) => book.inspection.byId.get(check)!.check.ifNotChecked === "block",
  );
  if (owed.length === 0) return [];
  const checks =
    owed.length === 1
      ? "1 check that must be answered before anyone rides it is"
      : `${owed.length} checks that must be answered before anyone rides it are`;
  return [`${checks} still open.`];
}

/** Whole units with the currency; a true minus sign. */
function amount(money: Money, { settled }: Situation): string {
  const whole = Math.round(money);
  return `${whole < 0 ? "\u2212" : ""}${Math.abs(whole)} ${settled.currency}`;
}
