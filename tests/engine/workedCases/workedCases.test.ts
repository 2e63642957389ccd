import { describe, expect, test } from "vitest";
import type { Appraisal, CourseOutcome } from "../../../worker/engine/decision/appraisal.ts";
import { appraise } from "../../../worker/engine/decision/appraise.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { TRIGGERS } from "./cautionTriggers.ts";
import { expectedCautions, raisedCautions } from "./expectedCautions.ts";
import { CASES, type Change, caseOf, requestOf, type WorkedCase } from "./workedCase.ts";

/**
 * Twelve bikes worked through by a practitioner. The expected figures are that expert's: common practice, no source. Agreement shows that the method is
 * carried out as meant, not that the invented prices are true. Tolerances: value 25 %, money out 30 % or 3 units, hours 40 %, plan four fifths either way.
 */

const ANSWERS = new Map(CASES.map((one) => [one.id, appraise(requestOf(one), BOOK)]));
const each = CASES.map((one) => [one.id, one] as const);
const decidedCases = each.filter(([, { expect: e }]) => !e.stop && e.course !== "inspect-first");

/** The course the expert would follow: the one decided, where it is listed or acceptable. */
function followed({ id }: WorkedCase): CourseOutcome {
  const answer = ANSWERS.get(id)!;
  return answer.courses.find(({ course }) => course === answer.decision.course)!;
}

function middleValue({ value }: Appraisal, course: string): number {
  const bands = {
    restore: value!.restored,
    "make-safe": value!.madeSafe,
    "sell-as-found": value!.asFound,
    "break-for-parts": value!.parts,
  };
  return bands[course as keyof typeof bands]!.p50;
}

const ids = (course: CourseOutcome) => course.plan!.operations.map(({ operation }) => operation);
const decided = (id: string, change: Change = {}) => appraise(requestOf(caseOf(id), change), BOOK).decision;

describe("the twelve worked cases (an expert's figures, common practice, no source)", () => {
  test.each(each)("%s comes to the expert's course, look-first or stop", (id, { expect: wanted }) => {
    const { decision, courses } = ANSWERS.get(id)!;
    expect(decision.stop !== null).toBe(wanted.stop);
    if (wanted.course === "inspect-first") expect([decision.lookFirst]).toEqual(wanted.plan);
    else {
      expect([wanted.course, ...wanted.alsoAcceptable]).toContain(decision.course);
      expect(decision.lookFirst).toBeNull();
    }
    expect(courses).toHaveLength(wanted.stop ? 0 : 5);
  });

  test.each(each)("%s warns of what the expert would warn of", (id, { expect: wanted }) => {
    expect(ANSWERS.get(id)!.cautions.map((one) => one.id)).toEqual(
      expect.arrayContaining([...wanted.mustWarn]),
    );
  });

  test.each(each)(
    "%s raises each caution whose trigger holds, as hard as its words say, and no other",
    (id, one) => {
      const answer = ANSWERS.get(id)!;
      expect(raisedCautions(answer)).toEqual(expectedCautions(requestOf(one), answer));
    },
  );

  test("the triggers know every caution of the tables", () => {
    expect(Object.keys(TRIGGERS).sort()).toEqual(BOOK.catalogue.cautions.map(({ id }) => id).sort());
  });

  test.each(decidedCases)(
    "%s plans the expert's work: four fifths of it, and four fifths of its own",
    (_, one) => {
      const plan = ids(followed(one));
      if (one.expect.plan.length === 0) {
        expect(plan).toEqual([]);
        return;
      }
      const wanted = one.expect.plan;
      const common = plan.filter((id) => wanted.includes(id)).length;
      expect(common / wanted.length).toBeGreaterThanOrEqual(0.8);
      expect(common / plan.length).toBeGreaterThanOrEqual(0.8);
    },
  );

  test.each(each)(
    "%s plans nothing that the expert forbids, in any course",
    (id, { expect: { forbidden } }) => {
      const planned = ANSWERS.get(id)!.courses.flatMap((course) => (course.available ? ids(course) : []));
      expect(planned.filter((operation) => forbidden.includes(operation))).toEqual([]);
    },
  );

  const valued = decidedCases.filter(([, { expect: e }]) => e.saleValue !== null && e.saleValue[1]! > 0);
  test.each(valued)("%s: the middle of the value lies within 25 %% of the expert's", (id, one) => {
    const expected = one.expect.saleValue![1]!;
    const { course } = followed(one);
    expect(Math.abs(middleValue(ANSWERS.get(id)!, course) - expected)).toBeLessThanOrEqual(0.25 * expected);
  });

  test.each(decidedCases)("%s: money out lies within 30 %% or 3 units of the expert's", (_, one) => {
    const expected = one.expect.moneyOut[1]!;
    const { cost } = followed(one).plan!;
    expect(Math.abs(cost.mean - expected)).toBeLessThanOrEqual(Math.max(3, 0.3 * expected));
  });

  const timed = decidedCases.filter(([, { expect: e }]) => e.plan.length > 0 && e.course !== "leave");
  test.each(timed)("%s: hours lie within 40 %% of the expert's", (_, one) => {
    const expected = one.expect.hours[1]!;
    expect(Math.abs(followed(one).hours!.mean - expected)).toBeLessThanOrEqual(0.4 * expected);
  });

  const listed = CASES.flatMap((one) => one.flips.map((flip) => [one.id, flip] as const));
  test.each(listed)("%s turns where the expert says it turns: %j", (id, { course, ...change }) => {
    expect(course).toContain(decided(id, change).course);
  });
});

/** Changes that must turn the answer, each for one reason. */
const TURNS: readonly (readonly [string, string, Change, readonly string[]])[] = [
  [
    "A1",
    "rust through the tube leaves nothing to restore",
    { answers: { rust: "holed" } },
    ["break-for-parts", "leave"],
  ],
  [
    "A2",
    "a front-end collision turns good transport into parts or scrap",
    { answers: { "front-impact": "clear" } },
    ["break-for-parts", "leave"],
  ],
  ["A2", "at 40 an hour nobody mends cheap transport", { hourlyGoal: 40 }, ["sell-as-found", "leave"]],
  [
    "A3",
    "without the two dear faults the bike is worth finishing",
    { answers: { "suspension-fork": "ok", hydraulic: "firm", "brake-function": "strong" } },
    ["make-safe", "restore"],
  ],
  [
    "A4",
    "the same bike without the collision is one to finish",
    { answers: { "front-impact": "none", "fork-alignment": "true" } },
    ["restore", "make-safe"],
  ],
  [
    "A5",
    "the same wreck with upper parts carries a small price and a quick sale",
    { find: { componentTier: "upper" } },
    ["sell-as-found", "break-for-parts"],
  ],
  [
    "A6",
    "sound tubes, good tyres and an hour worth little: it is sold instead of scrapped",
    { answers: { rust: "none", "seatpost-free": "free", "tyre-condition": "good" }, hourlyGoal: 3 },
    ["sell-as-found", "make-safe", "restore"],
  ],
  [
    "A7",
    "asked more than it can bring, it is left",
    { find: { purchase: { price: 450, paid: false } } },
    ["leave"],
  ],
  [
    "A7",
    "at 25 an hour the long restoration gives way to a quick sale",
    { hourlyGoal: 25 },
    ["sell-as-found"],
  ],
  [
    "A8",
    "with the post free the bike is worth its wear parts",
    { answers: { "seatpost-free": "free" } },
    ["make-safe", "restore"],
  ],
  [
    "A9",
    "with a number and a paper it is a bike like any other, and a good one",
    { answers: { serial: "clear", ownership: "document" } },
    ["restore", "make-safe", "sell-as-found"],
  ],
  [
    "A10",
    "broken carbon needs no test: parts",
    { answers: { "carbon-damage": "broken" } },
    ["break-for-parts"],
  ],
  [
    "A10",
    "sound carbon needs no test: finish it",
    { answers: { "carbon-damage": "none" } },
    ["restore", "make-safe"],
  ],
  ["A11", "at 20 an hour the roadster goes as it stands", { hourlyGoal: 20 }, ["sell-as-found"]],
  ["A12", "at 15 an hour the mountain bike goes as it stands", { hourlyGoal: 15 }, ["sell-as-found"]],
  [
    "A12",
    "a front-end collision leaves its good parts",
    { answers: { "front-impact": "clear" } },
    ["break-for-parts"],
  ],
];

describe("what must turn a case does (common practice, no source)", () => {
  test.each(TURNS)("%s: %s", (id, _, change, courses) => {
    const turned = decided(id, change);
    const before = ANSWERS.get(id)!.decision;
    expect(courses).toContain(turned.course);
    expect([turned.course, turned.lookFirst, turned.stop]).not.toEqual([
      before.course,
      before.lookFirst,
      before.stop,
    ]);
  });

  test("every case is turned at least once", () => {
    expect([...new Set(TURNS.map(([id]) => id))]).toEqual(CASES.map(({ id }) => id));
  });

  test("a damage taken back gives the answer of before, to the last figure", () => {
    for (const id of ["A1", "A12"]) {
      const mended = requestOf(caseOf(id), { answers: { "front-impact": "none" } });
      expect(appraise(mended, BOOK)).toEqual(ANSWERS.get(id));
    }
  });
});
