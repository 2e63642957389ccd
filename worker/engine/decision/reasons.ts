import type { CourseId } from "../service/operation.ts";
import type { LookFirst } from "./lookFirst.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse, WeighedCourse } from "./weighedCourse.ts";

const NAMES: Readonly<Record<CourseId, string>> = {
  restore: "Restoring",
  "make-safe": "Making safe",
  "sell-as-found": "Selling as found",
  "break-for-parts": "Breaking for parts",
  leave: "Leaving it",
};

/** Why the course was chosen, in plain sentences, the weightiest first. Figures are in the request's currency. */
export function reasonsFor(
  best: OpenCourse,
  courses: readonly WeighedCourse[],
  situation: Situation,
  look: LookFirst | null,
): readonly string[] {
  const { settled, book } = situation;
  const money = (amount: number) =>
    `${Math.round(amount).toString().replace("-", "\u2212")} ${settled.currency}`;
  const goal = settled.workshop.hourlyGoal;
  const reasons: string[] = [];
  if (look) {
    const name = book.service.operations.get(look.operation)!.name;
    reasons.push(
      `First: ${name}. Knowing the answer is worth ${money(look.netGain)} more than deciding now, its fee and minutes paid.`,
    );
  }
  const second = courses
    .filter((course): course is OpenCourse => course.open && course !== best)
    .reduce<OpenCourse | null>(
      (top, course) => (top && top.outcome.netBenefit >= course.outcome.netBenefit ? top : course),
      null,
    );
  if (best.course === "leave") {
    const other = second
      ? `${NAMES[second.course]} would leave ${money(second.outcome.netBenefit)} after your hours at ${money(goal)} each.`
      : "No other course is open.";
    reasons.push(other);
  } else {
    const { margin, hours, netBenefit } = best.outcome;
    reasons.push(
      `${NAMES[best.course]} is expected to bring ${money(margin.mean)} for ${hours.mean.toFixed(1)} h; after your hours at ${money(goal)} each, ${money(netBenefit)} is left.`,
    );
    if (second)
      reasons.push(
        `Next best: ${NAMES[second.course].toLowerCase()}, with ${money(second.outcome.netBenefit)} left.`,
      );
  }
  for (const course of courses)
    if (!course.open) reasons.push(`${NAMES[course.course]} is closed. ${course.because}`);
  const owed = situation.inspection.unseen.filter(
    ({ check }) => book.inspection.byId.get(check)!.check.ifNotChecked === "block",
  ).length;
  if (owed > 0)
    reasons.push(
      `${owed} ${owed === 1 ? "check" : "checks"} that must be answered before anyone rides it ${owed === 1 ? "is" : "are"} still open.`,
    );
  return reasons;
}
