import type { Money } from "../quantity.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse, WeighedCourse } from "./weighedCourse.ts";

/**
 * The course with the highest net benefit E[M] - w E[H], but restoring stands only where it beats making safe by more than noise: the larger of
 * one hour's goal and a share of the restored value. Noise decides between two ways to finish, never between a gain and walking away. Ties go to the
 * shorter course.
 */
export function bestCourse(courses: readonly WeighedCourse[], situation: Situation): OpenCourse {
  const open = courses.filter((course): course is OpenCourse => course.open);
  const best = highest(open);
  if (best.course !== "restore" || clearlyBetter(best, open, situation)) return best;
  const other = highest(open.filter((course) => course !== best));
  return other.course === "leave" ? best : other;
}

function highest(courses: readonly OpenCourse[]): OpenCourse {
  return courses.reduce((best, course) => (betters(course, best) ? course : best));
}

function clearlyBetter(
  restore: OpenCourse,
  open: readonly OpenCourse[],
  { settled, book }: Situation,
): boolean {
  const makeSafe = open.find(({ course }) => course === "make-safe");
  const share = book.catalogue.defaults.restoreNoise * saleValue(restore);
  const noise = Math.max(settled.workshop.hourlyGoal, share);
  return !makeSafe || restore.expected.netBenefit > makeSafe.expected.netBenefit + noise;
}

function betters(a: OpenCourse, b: OpenCourse): boolean {
  const gain = a.expected.netBenefit - b.expected.netBenefit;
  return gain !== 0 ? gain > 0 : a.expected.hours < b.expected.hours;
}

/** Expected going rate of the finished bike. */
function saleValue({ branches }: OpenCourse): Money {
  const sold = branches.filter(({ price }) => price !== null);
  return sold.length === 0 ? 0 : Math.max(...sold.map(({ price }) => logNormalMean(price!)));
}

/**
 * Highest purchase price at which the best course other than leaving has no negative net benefit. Margin falls by one for each unit of price, so
 * it is the best net benefit plus the price asked; never below 0, where even a gift does not pay.
 */
export function walkAwayPrice(courses: readonly WeighedCourse[], { settled }: Situation): Money | null {
  const { paid, price } = settled.purchase;
  if (paid) return null;
  const worth = courses.flatMap((course) =>
    course.open && course.course !== "leave" ? [course.expected.netBenefit + price] : [],
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
