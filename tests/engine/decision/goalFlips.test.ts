import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bestCourse } from "../../../worker/engine/decision/choice.ts";
import { type GoalFlips, goalFlips } from "../../../worker/engine/decision/goalFlips.ts";
import { weighCourses } from "../../../worker/engine/decision/weigh.ts";
import type { OpenCourse, WeighedCourse } from "../../../worker/engine/decision/weighedCourse.ts";
import type { CourseId } from "../../../worker/engine/service/operation.ts";
import { CASES, requestOf } from "../workedCases/workedCase.ts";
import { lookedOver, openedCourse, situationFor } from "./lookedOver.ts";
import { BOOK } from "./shippedBook.ts";

const SEED = 20261126;
const { goalsUpTo, restoreNoise } = BOOK.catalogue.defaults;
const ORDER: readonly CourseId[] = ["restore", "make-safe", "sell-as-found", "break-for-parts", "leave"];
const SITUATION = situationFor(lookedOver());
const TEMPLATE = openedCourse("sell-as-found");
const SOLD = TEMPLATE.branches.find(({ price }) => price !== null)!;

/** A course of made-up margin and hours that sells for one price. */
function made(course: CourseId, margin: number, hours: number, price: number): OpenCourse {
  return {
    ...TEMPLATE,
    course,
    branches: [{ ...SOLD, chance: 1, price: { logMedian: Math.log(price), logSd: 0 } }],
    expected: { margin, hours, netBenefit: Number.NaN },
  };
}

const madeUp = fc
  .record({
    margins: fc.array(fc.integer({ min: -40, max: 300 }), { minLength: 4, maxLength: 4 }),
    quarters: fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 4, maxLength: 4 }),
    price: fc.integer({ min: 20, max: 900 }),
    closed: fc.subarray(ORDER.slice(0, 4)),
  })
  .map(({ margins, quarters, price, closed }) => ({
    price,
    courses: ORDER.map((course, place): WeighedCourse => {
      if (closed.includes(course)) return { course, open: false, because: "made up" };
      const [margin, hours] = course === "leave" ? [-3, 0.25] : [margins[place]!, quarters[place]! / 4];
      return made(course, margin, hours, price);
    }),
  }));

/** The rule of the decision, written out once more: every course tried, restoring held back by its noise. */
function byHand(courses: readonly WeighedCourse[], goal: number, price: number): CourseId {
  const open = courses.flatMap((one) =>
    one.open
      ? [{ ...one.expected, course: one.course, worth: one.expected.margin - goal * one.expected.hours }]
      : [],
  );
  const best = (among: typeof open) =>
    among.toSorted(
      (a, b) => b.worth - a.worth || a.hours - b.hours || ORDER.indexOf(a.course) - ORDER.indexOf(b.course),
    )[0]!;
  const restore = open.find(({ course }) => course === "restore");
  const makeSafe = open.find(({ course }) => course === "make-safe");
  const others = open.filter((one) => one !== restore);
  const heldBack =
    restore &&
    makeSafe &&
    restore.worth - makeSafe.worth <= Math.max(goal, restoreNoise * price) &&
    best(others).course !== "leave";
  return best(heldBack ? others : open).course;
}

function courseAt({ courseByGoal }: GoalFlips, goal: number): CourseId {
  return courseByGoal.findLast(({ fromGoal }) => fromGoal <= goal)!.course;
}

describe("the course by hourly goal", () => {
  test("is what the rule chooses there, at whatever goal off the flips", () => {
    let flips = 0;
    fc.assert(
      fc.property(
        madeUp,
        fc.array(fc.double({ min: 0, max: goalsUpTo, noNaN: true }), { minLength: 20, maxLength: 20 }),
        fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { minLength: 20, maxLength: 20 }),
        ({ courses, price }, wide, low) => {
          const told = goalFlips(courses, SITUATION);
          flips += told.goalsAtWhichItFlips.length;
          for (const goal of [...wide, ...low]) {
            if (told.goalsAtWhichItFlips.some((flip) => Math.abs(flip - goal) < 1e-6)) continue;
            if (goal < 1e-6) continue;
            expect(courseAt(told, goal)).toBe(byHand(courses, goal, price));
          }
          // On either side of a flip the rule gives the two neighbours.
          for (const [place, flip] of told.goalsAtWhichItFlips.entries()) {
            const aside = (by: number) => byHand(courses, flip * (1 + by), price);
            expect(aside(-1e-7)).toBe(told.courseByGoal[place]!.course);
            expect(aside(1e-7)).toBe(told.courseByGoal[place + 1]!.course);
          }
        },
      ),
      { seed: SEED, numRuns: 400 },
    );
    expect(flips).toBeGreaterThan(300);
  });

  test("starts at 0, rises, names no course twice running, and flips where it changes", () => {
    fc.assert(
      fc.property(madeUp, ({ courses }) => {
        const { courseByGoal, goalsAtWhichItFlips } = goalFlips(courses, SITUATION);
        expect(courseByGoal[0]!.fromGoal).toBe(0);
        expect(goalsAtWhichItFlips).toEqual(courseByGoal.slice(1).map(({ fromGoal }) => fromGoal));
        for (let i = 1; i < courseByGoal.length; i++) {
          expect(courseByGoal[i]!.fromGoal).toBeGreaterThan(courseByGoal[i - 1]!.fromGoal);
          expect(courseByGoal[i]!.fromGoal).toBeLessThan(goalsUpTo);
          expect(courseByGoal[i]!.course).not.toBe(courseByGoal[i - 1]!.course);
        }
      }),
      { seed: SEED, numRuns: 400 },
    );
  });

  test("by hand: restoring holds while it earns an hour more than making safe, then making safe, selling, leaving", () => {
    // Restore - make safe = 60 - 3w, needed above max(w, 4 % of 300 = 12): w < 15, and 60 - 3w > 12 up to 16. Make safe = sell at 100 - 5w = 0: 20. Sell = leave at 40: 1w = 40.
    const courses = [
      made("restore", 200, 9, 300),
      made("make-safe", 140, 6, 300),
      made("sell-as-found", 40, 1, 300),
      made("leave", 0, 0, 300),
    ];
    const { courseByGoal, goalsAtWhichItFlips } = goalFlips(courses, SITUATION);
    expect(courseByGoal.map(({ course }) => course)).toEqual([
      "restore",
      "make-safe",
      "sell-as-found",
      "leave",
    ]);
    expect(goalsAtWhichItFlips.map((goal) => Math.round(goal * 1e9) / 1e9)).toEqual([15, 20, 40]);
    const dear = courses.map((one) => made(one.course, one.expected.margin, one.expected.hours, 750));
    // 4 % of 750 = 30: restoring gives way at 60 - 3w = 30 already.
    expect(goalFlips(dear, SITUATION).goalsAtWhichItFlips[0]).toBeCloseTo(10, 9);
  });

  test("at the user's own goal is the course decided, for every worked case; and covers a goal above the table's", () => {
    const cases = CASES.filter(({ expect: { stop } }) => !stop).map((one) => requestOf(one));
    for (const request of cases) {
      for (const hourlyGoal of [0.01, 4, 9, 15, 30, 60, 2 * goalsUpTo]) {
        const asked = { ...request, workshop: { ...request.workshop, hourlyGoal } };
        const situation = situationFor(asked);
        const courses = weighCourses(situation);
        expect(courseAt(goalFlips(courses, situation), hourlyGoal)).toBe(
          bestCourse(courses, situation).course,
        );
      }
    }
    expect(cases.length).toBeGreaterThan(5);
  });

  test("reaches as much higher as the user's prices are", () => {
    const rich = situationFor(lookedOver({ workshop: { priceLevel: 100 } }));
    const courses = [made("sell-as-found", 30_000, 2, 40_000), made("leave", 0, 0, 40_000)];
    expect(goalFlips(courses, rich).goalsAtWhichItFlips).toEqual([15_000]);
    expect(goalFlips(courses, SITUATION).goalsAtWhichItFlips).toEqual([]);
  });
});
