import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CourseOutcome } from "../../../worker/engine/decision/appraisal.ts";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import type { Report } from "../../../worker/engine/decision/appraise.ts";
import { likelyFind } from "../properties/anyFind.ts";
import { type Found, lookedOver } from "./lookedOver.ts";
import { plainAnswer } from "./plainAnswer.ts";
import { BOOK } from "./shippedBook.ts";

/** What each setting of the workshop does, and all that it does. */

const SEED = 20261125;
const { defaults } = BOOK.catalogue;
type Workshop = NonNullable<AppraisalRequest["workshop"]>;

const answer = (found: Found) => plainAnswer(lookedOver(found));
const set = (request: AppraisalRequest, workshop: Workshop) =>
  plainAnswer({ ...request, workshop: { ...request.workshop, ...workshop } });
const courseOf = ({ courses }: Report, id: string) => courses.find(({ course }) => course === id)!;
const open = ({ courses }: Report): CourseOutcome[] => courses.filter(({ available }) => available);

/** Faultless, its number known to be clear: one branch, so that each setting shows by itself. */
const CLEAR: Found = { find: { purchase: { price: 20, paid: false } } };

describe("the hourly goal", () => {
  test("prices an hour and nothing else: net benefit is the mean margin less goal times mean hours", () => {
    fc.assert(
      fc.property(likelyFind, (request) => {
        const goal = request.workshop?.hourlyGoal ?? defaults.hourlyGoal;
        for (const { margin, hours, netBenefit } of open(plainAnswer(request)))
          expect(netBenefit!).toBeCloseTo(margin!.mean - goal * hours!.mean, 6);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  test("leaves what a bike fetches as found, and how long that takes, as they are", () => {
    const at = (hourlyGoal: number) => {
      const { courses, value } = answer({ ...CLEAR, workshop: { hourlyGoal } });
      const { margin, hours } = courses.find(({ course }) => course === "sell-as-found")!;
      return { margin, hours, asFound: value!.asFound };
    };
    expect(at(40)).toEqual(at(2));
  });
});

describe("the user's speed", () => {
  test("stretches work and not the road: an hour's travel stays an hour", () => {
    const hours = (speedFactor: number, travelMinutes: number) => {
      const find = { purchase: { price: 20, paid: false, travelMinutes } };
      return courseOf(answer({ find, workshop: { speedFactor } }), "sell-as-found").hours!.mean;
    };
    expect(hours(1, 60) - hours(1, 0)).toBeCloseTo(1, 9);
    expect(hours(2, 0)).toBeCloseTo(2 * hours(1, 0), 9);
    expect(hours(2, 60)).toBeCloseTo(2 * hours(1, 0) + 1, 9);
  });
});

describe("the price level", () => {
  test("scales what bikes fetch, in every state, and no cost of work", () => {
    const found: Found = { bike: { componentTier: "upper" }, found: { "inner-cable": "frayed" } };
    const one = answer(found);
    const three = answer({ ...found, workshop: { priceLevel: 3 } });
    for (const state of ["asFound", "parts", "madeSafe"] as const)
      for (const point of ["p10", "p50", "p90"] as const)
        expect(three.value![state]![point] / one.value![state]![point]).toBeCloseTo(3, 6);
    const safe = (answered: Report) => courseOf(answered, "make-safe").plan;
    expect(safe(three)).toEqual(safe(one));
  });
});

describe("fee and packing", () => {
  test("a fixed fee takes itself off each sale, and packing is one by another name", () => {
    const margin = (workshop: Workshop, id: string) =>
      courseOf(answer({ ...CLEAR, workshop }), id).margin!.mean;
    for (const id of ["restore", "make-safe", "sell-as-found", "break-for-parts"])
      expect(margin({}, id) - margin({ fee: { fixed: 7 } }, id)).toBeCloseTo(7, 6);
    expect(margin({ fee: { fixed: 7 } }, "leave")).toBe(margin({}, "leave"));
    const fee = answer({ ...CLEAR, workshop: { fee: { fixed: 7 }, packing: 2 } });
    const packing = answer({ ...CLEAR, workshop: { fee: { fixed: 0 }, packing: 9 } });
    expect(packing).toEqual(fee);
  });

  test("a rate takes its share of the takings, haggling done: margin and outlay together shrink with it", () => {
    const takings = (rate: number) => {
      const { margin, plan } = courseOf(
        answer({ ...CLEAR, workshop: { fee: { rate, fixed: 0 } } }),
        "sell-as-found",
      );
      return margin!.mean + plan!.cost.mean + 20;
    };
    expect(takings(0.2) / takings(0)).toBeCloseTo(0.8, 9);
    expect(takings(0.5) / takings(0.2)).toBeCloseTo(0.5 / 0.8, 9);
  });

  test("neither moves the going rate", () => {
    const value = (workshop: Workshop) => answer({ ...CLEAR, workshop }).value!.asFound;
    expect(value({ fee: { rate: 0.3, fixed: 12 }, packing: 8 })).toEqual(value({}));
  });
});

describe("the month of sale", () => {
  const MONTHS = Array.from({ length: 12 }, (_, index) => index + 1);
  // A fault that blocks riding, so that the value as found is one distribution and not a mixture.
  const blocked: Found = { found: { "inner-cable": "frayed" } };
  const middle = (month: number | undefined) =>
    answer({ ...blocked, workshop: { month } }).value!.asFound.p50;

  test("left out, the seasons are averaged: the geometric mean of the twelve", () => {
    const logs = MONTHS.map((month) => Math.log(middle(month)));
    expect(logs.reduce((sum, one) => sum + one, 0) / 12).toBeCloseTo(Math.log(middle(undefined)), 6);
  });

  test("a bicycle fetches more in spring than in winter (common practice, no source)", () => {
    expect(middle(4)).toBeGreaterThan(middle(undefined));
    expect(middle(12)).toBeLessThan(middle(undefined));
  });

  test("changes no cost and no hour of selling as found", () => {
    const at = (month: number) => courseOf(answer({ ...CLEAR, workshop: { month } }), "sell-as-found");
    expect([at(1).hours, at(1).plan]).toEqual([at(6).hours, at(6).plan]);
  });
});

describe("the user's own selling minutes", () => {
  test("stand for photographs and hand-over in every course that sells the bike whole, and in no other", () => {
    const hours = (sellingMinutes: number, id: string) =>
      courseOf(answer({ ...CLEAR, workshop: { sellingMinutes } }), id).hours!.mean;
    for (const id of ["restore", "make-safe", "sell-as-found"])
      expect(hours(90, id) - hours(30, id)).toBeCloseTo(1, 9);
    for (const id of ["break-for-parts", "leave"]) expect(hours(90, id)).toBe(hours(30, id));
  });
});

describe("the user's own prices", () => {
  const tyres: Found = { bike: { componentTier: "upper" }, found: { "tyre-condition": "perished" } };

  test("stand in the shopping list as given, and the course costs so much more", () => {
    const at = (price: number) => {
      const { plan, margin } = courseOf(
        answer({ ...tyres, workshop: { partPrices: { tyre: price } } }),
        "make-safe",
      );
      return { line: plan!.shoppingList.find(({ part }) => part === "tyre")!, margin: margin!.mean };
    };
    expect(at(20).line).toMatchObject({ quantity: 2, price: 20 });
    expect(at(20).margin - at(35).margin).toBeCloseTo(2 * 15, 6);
  });

  test("for a part that no course buys change nothing", () => {
    const plain = answer(tyres);
    expect(answer({ ...tyres, workshop: { partPrices: { "fork-suspension": 1 } } })).toEqual(plain);
  });
});

describe("what was spent so far", () => {
  test("is shown and changes nothing else: it is sunk", () => {
    fc.assert(
      fc.property(
        likelyFind,
        fc.integer({ min: 0, max: 500 }),
        fc.integer({ min: 0, max: 900 }),
        (request, money, minutes) => {
          const spent = (soFar: { money: number; minutes: number } | undefined) =>
            plainAnswer({ ...request, find: { ...request.find, soFar } });
          const { soFar, ...rest } = spent({ money, minutes });
          const { soFar: none, ...same } = spent(undefined);
          expect(soFar).toEqual({ money, hours: minutes / 60, done: [], bought: [] });
          expect(none).toEqual({ money: 0, hours: 0, done: [], bought: [] });
          expect(rest).toEqual(same);
        },
      ),
      { seed: SEED, numRuns: 20 },
    );
  });
});

describe("the currency", () => {
  test("is a label: it stands in the answer and its sentences and moves no figure", () => {
    const request = lookedOver(CLEAR);
    const crowns = plainAnswer({ ...request, currency: "SEK" });
    const plain = plainAnswer(request);
    expect([crowns.currency, plain.currency]).toEqual(["SEK", defaults.currency]);
    expect(crowns.courses).toEqual(plain.courses);
    expect(crowns.decision.reasons.join(" ")).toContain("SEK");
    expect(crowns.decision.reasons.join(" ")).not.toContain(defaults.currency);
  });
});

describe("a setting left out", () => {
  test("is the table's default, given in so many words", () => {
    const { hourlyGoal, skill, speedFactor, fee, packing, priceLevel } = defaults;
    fc.assert(
      fc.property(likelyFind, (request) => {
        const left = { ...request, workshop: undefined };
        const given = set(left, { hourlyGoal, skill, speedFactor, fee, packing, priceLevel });
        expect(given).toEqual(plainAnswer(left));
      }),
      { seed: SEED, numRuns: 20 },
    );
  });
});
