import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import type { Report } from "../../../worker/engine/decision/appraise.ts";
import type { Branch } from "../../../worker/engine/decision/branch.ts";
import { bestCourse, breakEvenSalePrice } from "../../../worker/engine/decision/choice.ts";
import { expectationOf } from "../../../worker/engine/decision/expectation.ts";
import { weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { anyFind, likelyFind } from "../properties/anyFind.ts";
import { type Found, lookedOver } from "./lookedOver.ts";
import { plainAnswer } from "./plainAnswer.ts";
import { BOOK } from "./shippedBook.ts";

const SEED = 20261125;
const { defaults } = BOOK.catalogue;

function priced(request: AppraisalRequest, price: number): AppraisalRequest {
  return {
    ...request,
    find: { ...request.find, purchase: { ...request.find.purchase, price, paid: false } },
  };
}

/** The best course other than leaving. */
function bestOther({ courses }: Report): number {
  return Math.max(
    ...courses.flatMap(({ course, netBenefit }) =>
      course !== "leave" && netBenefit !== null ? [netBenefit] : [],
    ),
  );
}

function chosen({ courses, decision }: Report) {
  return courses.find(({ course }) => course === decision.course)!;
}

/** A branch that is sold at a certain price received, of which the fee is taken. */
function soldAt(received: number, feeRate: number): (branch: Branch) => Branch {
  return (branch) =>
    branch.price
      ? { ...branch, price: { logMedian: Math.log(received), logSd: 0 }, share: 1 - feeRate }
      : branch;
}

const decided = (found: Found) => plainAnswer(lookedOver(found)).decision;

describe("the price to walk away at", () => {
  test("leaves the best other course nothing; a unit more and the bike is left, a unit less and it is not", () => {
    let tried = 0;
    fc.assert(
      fc.property(likelyFind, (request) => {
        const { walkAwayPrice, stop } = plainAnswer(priced(request, 0)).decision;
        if (stop !== null || walkAwayPrice === 0) return;
        tried++;
        expect(bestOther(plainAnswer(priced(request, walkAwayPrice!)))).toBeCloseTo(0, 6);
        expect(plainAnswer(priced(request, walkAwayPrice! + 1)).decision.course).toBe("leave");
        if (walkAwayPrice! > 1)
          expect(plainAnswer(priced(request, walkAwayPrice! - 1)).decision.course).not.toBe("leave");
      }),
      { seed: SEED, numRuns: 60 },
    );
    expect(tried).toBeGreaterThan(20);
  });

  test("does not depend on the price asked", () => {
    fc.assert(
      fc.property(likelyFind, fc.double({ min: 0, max: 900, noNaN: true }), (request, price) => {
        const { walkAwayPrice } = plainAnswer(priced(request, 0)).decision;
        const other = plainAnswer(priced(request, price)).decision.walkAwayPrice;
        if (walkAwayPrice === null) expect(other).toBeNull();
        else expect(other).toBeCloseTo(walkAwayPrice, 6);
      }),
      { seed: SEED, numRuns: 20 },
    );
  });

  test("is nothing once the price is paid: it is sunk", () => {
    const { walkAwayPrice } = decided({ find: { purchase: { price: 50, paid: true } } });
    expect(walkAwayPrice).toBeNull();
  });
});

describe("the course decided", () => {
  test("has the highest net benefit, but a restoration within the noise of making safe gives way", () => {
    fc.assert(
      fc.property(likelyFind, (request) => {
        const answer = plainAnswer(request);
        if (answer.decision.stop !== null) return;
        const benefit = (course: string) =>
          answer.courses.find((one) => one.course === course)!.netBenefit ?? -Infinity;
        const best = Math.max(...answer.courses.map(({ netBenefit }) => netBenefit ?? -Infinity));
        const { course } = answer.decision;
        if (benefit(course) === best) {
          if (course !== "restore") return;
          const beyond = benefit("restore") - benefit("make-safe");
          const goal = request.workshop?.hourlyGoal ?? defaults.hourlyGoal;
          const others = Math.max(
            ...answer.courses.flatMap((one) =>
              one.course === "restore" || one.course === "leave" ? [] : [one.netBenefit ?? -Infinity],
            ),
          );
          expect(beyond > goal || others < benefit("leave")).toBe(true);
          return;
        }
        expect(benefit("restore")).toBe(best);
        const noise = Math.max(
          request.workshop?.hourlyGoal ?? defaults.hourlyGoal,
          defaults.restoreNoise * 1.5 * answer.value!.restored!.p50,
        );
        expect(best - benefit("make-safe")).toBeLessThanOrEqual(noise);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  test("noise decides between two ways to finish, never between a gain and walking away", () => {
    const found: Found = {
      bike: { componentTier: "upper" },
      found: { finish: "marked", "bar-covering": "worn" },
      workshop: { hourlyGoal: 8 },
    };
    const { walkAwayPrice } = decided(found);
    const at = (price: number) => decided({ ...found, find: { purchase: { price, paid: false } } }).course;
    expect(at(walkAwayPrice! - 0.5)).not.toBe("leave");
    expect(at(walkAwayPrice! + 0.5)).toBe("leave");
  });

  test("a higher goal never asks for a longer course", () => {
    fc.assert(
      fc.property(likelyFind, fc.integer({ min: 1, max: 30 }), (request, more) => {
        const goal = request.workshop?.hourlyGoal ?? defaults.hourlyGoal;
        const at = (hourlyGoal: number) =>
          plainAnswer({ ...request, workshop: { ...request.workshop, hourlyGoal } });
        const low = at(goal);
        const high = at(goal + more);
        if (low.decision.stop !== null) return;
        // The plan of a course changes with the goal too; the course of fewer hours at one goal has fewer at the other.
        const order = (course: string) =>
          ["leave", "sell-as-found", "break-for-parts", "make-safe", "restore"].indexOf(course);
        if (order(high.decision.course) <= order(low.decision.course)) return;
        expect(chosen(high).hours!.mean).toBeLessThanOrEqual(chosen(low).hours!.mean + 1e-9);
      }),
      { seed: SEED, numRuns: 30 },
    );
  });
});

describe("the price to break even at", () => {
  test("covers what goes out once the fee is off, and is nothing where the bike is left", () => {
    const found: Found = {
      bike: { kept: "indoors" },
      find: { purchase: { price: 40, paid: false } },
      workshop: { fee: { rate: 0.1, fixed: 3 }, packing: 2 },
    };
    const answer = plainAnswer(lookedOver({ ...found, found: {} }));
    const { course, breakEvenSalePrice } = answer.decision;
    expect(course).not.toBe("leave");
    // Faultless and clear: one branch, so the money out is certain in expectation.
    const { plan } = chosen(answer);
    expect(breakEvenSalePrice! * 0.9).toBeCloseTo(plan!.cost.mean + plan!.allowance.money + 40 + 3 + 2, 6);
    const left = plainAnswer(priced(lookedOver(found), 5000)).decision;
    expect(left).toMatchObject({ course: "leave", breakEvenSalePrice: null });
  });

  test("received wherever it sells, leaves the course a mean margin of 0; null where the bike is left", () => {
    let tried = 0;
    fc.assert(
      fc.property(anyFind, (request) => {
        const find = weighFind(request, BOOK);
        if (find.stop) return;
        const { courses, situation, settled } = find;
        const best = bestCourse(courses, situation);
        const { course, branches } = best;
        const received = breakEvenSalePrice(best, situation);
        if (received === null) {
          expect(course).toBe("leave");
          return;
        }
        const { margin } = expectationOf(branches.map(soldAt(received, settled.fee.rate)), settled.workshop);
        // Where parts at hand cover all that goes out, it may be given away.
        if (received === 0) expect(margin).toBeGreaterThanOrEqual(-1e-9);
        else expect(margin).toBeCloseTo(0, 6);
        tried++;
      }),
      { seed: SEED, numRuns: 30 },
    );
    expect(tried).toBeGreaterThan(10);
  });
});
