import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Situation } from "../../../worker/engine/decision/situation.ts";
import { weighRideable } from "../../../worker/engine/decision/weighRideable.ts";
import { Ledger } from "../../../worker/engine/service/ledger.ts";
import { situationFor } from "../decision/lookedOver.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { likelyFind } from "../properties/anyFind.ts";
import { CASES, requestOf } from "../workedCases/workedCase.ts";
import { combinations, enumeratePlans, leftBy } from "./bruteForcePlan.ts";

type RideableCourse = "restore" | "make-safe";
const COURSES: readonly RideableCourse[] = ["restore", "make-safe"];
const MOST_OPTIONAL = 12;

/** What the planner's own plan leaves, by the same adding up; null where the course is closed. */
function planned(course: RideableCourse, situation: Situation): number | null {
  const weighed = weighRideable(course, situation);
  return weighed.open ? leftBy(course, situation, situation.ledger, weighed.plan) : null;
}

/** Compares the planner with trying everything, where that is not too much. Whether it was compared. */
function compared(
  course: RideableCourse,
  situation: Situation,
  mostTries: number,
  evenIfLost: boolean,
): boolean {
  const ledger = new Ledger(situation.bench, BOOK.catalogue.defaults.delivery.orders[course]);
  if (situation.rideableClosedBecause !== null || combinations(course, ledger) > mostTries) return false;
  const best = planned(course, situation);
  const every = enumeratePlans(course, situation, ledger);
  expect(best === null).toBe(every === null);
  // A bike worth more lost than finished is broken for parts; how badly it would be finished does not matter.
  if (best === null || every === null || (!evenIfLost && every.most <= every.lost)) return false;
  expect(best).toBeGreaterThanOrEqual(every.most - 1e-6);
  // Making safe may cure in passing what it does not take on; a restoration takes everything on.
  if (course === "restore") expect(best).toBeLessThanOrEqual(every.most + 1e-6);
  return every.optional <= MOST_OPTIONAL;
}

describe("the planner finds the plan that leaves most", () => {
  test("as trying every combination of cures does, on every worked case with up to 300,000 combinations", () => {
    const done = CASES.flatMap((one) => {
      const situation = situationFor(requestOf(one));
      return COURSES.flatMap((course) =>
        compared(course, situation, 300_000, true) ? [`${one.id} ${course}`] : [],
      );
    });
    // A4, A6, A9 and A10 have no rideable course; A5 and A7 have more combinations.
    const whole = ["A1", "A2", "A3", "A8", "A11", "A12"];
    expect(done).toEqual(whole.flatMap((id) => COURSES.map((course) => `${id} ${course}`)));
  });

  test("as trying every combination does, on any bike with any faults", () => {
    let done = 0;
    fc.assert(
      fc.property(likelyFind, (request) => {
        const situation = situationFor(request);
        for (const course of COURSES) if (compared(course, situation, 3000, false)) done++;
      }),
      { seed: 20261125, numRuns: 600 },
    );
    expect(done).toBeGreaterThan(100);
  });
});
