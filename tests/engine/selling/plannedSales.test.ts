import { describe, expect, test } from "vitest";
import { appraise } from "../../../worker/engine/decision/appraise.ts";
import type { WholeState } from "../../../worker/engine/selling/demand/sellingTables.ts";
import { planSale } from "../../../worker/engine/selling/planSale.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { CASES, requestOf } from "../workedCases/workedCase.ts";

const { calendar, fee } = BOOK.catalogue.defaults;
const STATES: readonly [string, WholeState][] = [
  ["restore", "restored"],
  ["make-safe", "madeSafe"],
  ["sell-as-found", "asFound"],
];

describe("the sale of each course, in an appraisal", () => {
  test.each(CASES.map(({ id }) => id))(
    "%s: days and takings are those of the selling plan of each course, after the work",
    (id) => {
      const appraisal = requestOf(CASES.find((one) => one.id === id)!);
      for (const { course, elapsedDays, hours, plan, sale } of appraise(appraisal, BOOK).courses) {
        if (plan === null) continue;
        const waits = plan.shoppingList.some(({ kind }) => kind === "delivery") ? calendar.partsWaitDays : 0;
        const days = elapsedDays! - waits - Math.ceil(hours!.mean / calendar.hoursPerEvening - 1e-9);
        const state = STATES.find(([one]) => one === course)?.[1];
        if (state === undefined) {
          expect(days).toBe(course === "leave" ? 0 : calendar.sellingDays);
          expect(sale).toBeNull();
        } else {
          const sold = planSale({ subject: { appraisal, state }, market: { fee }, offer: null }, BOOK);
          // The plan asks figures that people write: for some bikes other steps than the best, and so a few days more or less.
          expect(Math.abs(days - 7 * sold.expectedWeeks)).toBeLessThan(4);
          expect(days).toBe(Math.round(7 * sale!.weeks));
          // Which is a matter of a hundredth of what is taken, or of one unit.
          const off = Math.abs(sale!.takings - sold.expectedTakings);
          expect(off).toBeLessThan(Math.max(1, 0.01 * sold.expectedTakings));
        }
      }
    },
  );

  test("what few look for waits longer: an odd size, a rare kind", () => {
    const days = (words: object) => {
      const find = requestOf(CASES[0]!).find;
      const attributes = {
        ...find.attributes,
        category: "hybrid" as const,
        sizeClass: "middle" as const,
        ...words,
      };
      const { courses } = appraise({ find: { ...find, attributes }, observations: {} }, BOOK);
      return courses.find(({ course }) => course === "sell-as-found")!.elapsedDays!;
    };
    const plain = days({});
    expect(days({ sizeClass: "very-large" })).toBeGreaterThan(plain);
    expect(days({ category: "tandem" })).toBeGreaterThan(plain);
  });
});
