import type { MoneyPerHour } from "../quantity.ts";
import type { CourseId } from "../service/operation.ts";
import { standingCourses, valueNoise, type Worth, worthiest } from "./choice.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse, WeighedCourse } from "./weighedCourse.ts";

/** Which course would be chosen at which hourly goal. */
export interface GoalFlips {
  /** Rising, from 0; each course holds up to the next one's goal, the last up to the highest goal asked about. */
  readonly courseByGoal: readonly { readonly fromGoal: MoneyPerHour; readonly course: CourseId }[];
  /** Where the course changes: the goals between them. */
  readonly goalsAtWhichItFlips: readonly MoneyPerHour[];
}

/** Goals nearer to each other than this share of them are one crossing, apart by rounding. */
const SAME = 1e-9;

/**
 * The course of highest net benefit E[M] - w E[H] at every goal w from 0 to the table's `goalsUpTo` at the user's price level (to the user's own goal where that is
 * higher), by the same rule as the decision. Exact: each course is a line in w, so the choice can change only where two lines cross, or where restoring comes
 * within its noise of making safe; between these goals the rule is asked once. Every course keeps the plan that is best at the user's own goal: at
 * another goal its optional work might be chosen otherwise, so a goal far from it is told less well.
 */
export function goalFlips(courses: readonly WeighedCourse[], situation: Situation): GoalFlips {
  const { workshop, priceLevel } = situation.settled;
  const highest = Math.max(situation.book.catalogue.defaults.goalsUpTo * priceLevel, workshop.hourlyGoal);
  const fences = [0, ...crossings(courses, situation, highest), highest];
  const courseByGoal: { fromGoal: MoneyPerHour; course: CourseId }[] = [];
  for (let i = 1; i < fences.length; i++) {
    const [from, to] = [fences[i - 1]!, fences[i]!];
    const course = courseAt((from + to) / 2, courses, situation);
    if (courseByGoal.at(-1)?.course !== course) courseByGoal.push({ fromGoal: from, course });
  }
  return { courseByGoal, goalsAtWhichItFlips: courseByGoal.slice(1).map(({ fromGoal }) => fromGoal) };
}

function courseAt(
  hourlyGoal: MoneyPerHour,
  courses: readonly WeighedCourse[],
  situation: Situation,
): CourseId {
  const { settled } = situation;
  const there = { ...situation, settled: { ...settled, workshop: { ...settled.workshop, hourlyGoal } } };
  const worth: Worth = ({ expected: { margin, hours } }) => margin - hourlyGoal * hours;
  return worthiest(standingCourses(courses, there, worth), worth).course;
}

/** Goals inside 0 to the highest at which the choice can change, rising. */
function crossings(
  courses: readonly WeighedCourse[],
  { book }: Situation,
  highest: MoneyPerHour,
): MoneyPerHour[] {
  const open = courses.filter((course): course is OpenCourse => course.open);
  const goals = open.flatMap((one, place) =>
    open.slice(place + 1).map((other) => crossing(one, other, 0, 0)),
  );
  const restore = open.find(({ course }) => course === "restore");
  const makeSafe = open.find(({ course }) => course === "make-safe");
  if (restore && makeSafe)
    goals.push(crossing(restore, makeSafe, 0, 1), crossing(restore, makeSafe, valueNoise(restore, book), 0));
  const rising = goals.filter((goal) => goal > 0 && goal < highest).sort((a, b) => a - b);
  return rising.filter((goal, place) => place === 0 || goal - rising[place - 1]! > SAME * goal);
}

/** The goal w at which one course is ahead of another by money + w x hours. */
function crossing(one: OpenCourse, other: OpenCourse, money: number, hours: number): MoneyPerHour {
  return (
    (one.expected.margin - other.expected.margin - money) /
    (one.expected.hours - other.expected.hours + hours)
  );
}
