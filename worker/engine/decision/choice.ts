import type { Money } from "../quantity.ts";
import { COURSES, type CourseId } from "../service/operation.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import type { Book } from "./book.ts";
import type { SettledRequest } from "./settledRequest.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse, WeighedCourse } from "./weighedCourse.ts";

/** What a course is worth to whoever chooses: its net benefit, or its margin. */
export type Worth = (course: OpenCourse) => Money;

export const netBenefitOf: Worth = ({ expected }) => expected.netBenefit;

/**
 * The course with the highest net benefit E[M] - w E[H] of those that stand. Ties go to the shorter course.
 */
export function bestCourse(courses: readonly WeighedCourse[], situation: Situation): OpenCourse {
  return worthiest(standingCourses(courses, situation, netBenefitOf), netBenefitOf);
}

/**
 * The open courses, but restoring only where it beats making safe by more than noise: the larger of one hour's goal and a share of the restored
 * value. Noise decides between two ways to finish, never between a gain and walking away.
 */
export function standingCourses(
  courses: readonly WeighedCourse[],
  situation: Situation,
  worth: Worth,
): readonly OpenCourse[] {
  const open = courses.filter((course): course is OpenCourse => course.open);
  const restore = open.find(({ course }) => course === "restore");
  if (!restore || clearlyBetter(restore, open, situation, worth)) return open;
  const others = open.filter((course) => course !== restore);
  return worthiest(others, worth).course === "leave" ? open : others;
}

/** The course of the highest worth; ties go to the shorter. */
export function worthiest(courses: readonly OpenCourse[], worth: Worth): OpenCourse {
  return courses.reduce((best, course) => {
    const gain = worth(course) - worth(best);
    const better = gain !== 0 ? gain > 0 : course.expected.hours < best.expected.hours;
    return better ? course : best;
  });
}

function clearlyBetter(
  restore: OpenCourse,
  open: readonly OpenCourse[],
  { settled, book }: Situation,
  worth: Worth,
): boolean {
  const makeSafe = open.find(({ course }) => course === "make-safe");
  return !makeSafe || worth(restore) > worth(makeSafe) + clearGain(restore, settled, book);
}

/** By how much restoring must beat making safe: the larger of one hour's goal and a share of the restored value. */
export function clearGain(restore: OpenCourse, { workshop }: SettledRequest, book: Book): Money {
  return Math.max(workshop.hourlyGoal, valueNoise(restore, book));
}

/** The same for the courses of one find; 0 where restoring is closed. */
export function restoreNoise(courses: readonly WeighedCourse[], { settled, book }: Situation): Money {
  const restore = courses.find(({ course }) => course === "restore");
  return restore?.open ? clearGain(restore, settled, book) : 0;
}

/**
 * The course that worths alone would choose, by the rule of `bestCourse`; ties go to the later one, which is the shorter.
 * @param worths of the five courses in their fixed order; null where one is closed
 * @param noise by which restoring must beat making safe
 */
export function courseOf(worths: readonly (Money | null)[], noise: Money): CourseId {
  const [restore = null, makeSafe = null] = worths;
  const better = restore !== null && (makeSafe === null || restore > makeSafe + noise);
  let others = worths.length - 1;
  for (let place = worths.length - 1; place > 0; place--)
    if (worths[place] !== null && worths[place]! > (worths[others] ?? Number.NEGATIVE_INFINITY))
      others = place;
  const stands = better || COURSES[others] === "leave";
  return stands && restore !== null && restore > (worths[others] ?? Number.NEGATIVE_INFINITY)
    ? "restore"
    : COURSES[others]!;
}

/** The share of the restored value that is no clear gain. */
export function valueNoise(restore: OpenCourse, book: Book): Money {
  return book.catalogue.defaults.restoreNoise * saleValue(restore);
}

/** Expected going rate of the finished bike. */
function saleValue({ branches }: OpenCourse): Money {
  const sold = branches.filter(({ price }) => price !== null);
  return sold.length === 0 ? 0 : Math.max(...sold.map(({ price }) => logNormalMean(price!)));
}

/**
 * Highest purchase price at which the best course other than leaving leaves no less than leaving does, which is what parts bought for it are worth unused. Margin
 * falls by one for each unit of price, so it is the best net benefit beyond that plus the price asked; never below 0, where even a gift does not pay.
 */
export function walkAwayPrice(courses: readonly WeighedCourse[], { settled }: Situation): Money | null {
  const { paid, price } = settled.purchase;
  const { reuseWorth } = settled;
  if (paid) return null;
  const worth = courses.flatMap((course) =>
    course.open && course.course !== "leave" ? [course.expected.netBenefit - reuseWorth + price] : [],
  );
  return Math.max(0, ...worth);
}

/** Price received at which the course's expected margin is nought: what goes out, over what the fee leaves of the price. */
export function breakEvenSalePrice(course: OpenCourse, { settled }: Situation): Money | null {
  if (course.course === "leave") return null;
  const out = course.branches.reduce((total, { chance, outlay }) => total + chance * outlay.mean, 0);
  const sells = course.branches.reduce((total, { chance, price }) => total + (price ? chance : 0), 0);
  return sells === 0 ? null : Math.max(0, out / (sells * (1 - settled.fee.rate)));
}
