import { describe, expect, test } from "vitest";
import { planInSight } from "../../../dashboard/courses/planInSight.ts";
import { bestOther, hardlyLooked, standing } from "../../../dashboard/courses/standing.ts";
import { stepFrom, stepTo } from "../../../dashboard/courses/step.ts";
import { addedHours, lastHours, moreHours } from "../../../dashboard/words/addedHours.ts";
import { appraisal, COURSES, closed, decided, open } from "../fixtures/appraisal.ts";

const course = (id: string) => COURSES.find((one) => one.course === id)!;

describe("added hours", () => {
  test("a step starts from the course against which the reported added rate is the slope", () => {
    // (70 - 28) / (8 - 2) = 7: restoring is compared with selling as found, not with making safe.
    expect(stepTo(course("restore"), COURSES)).toMatchObject({ from: "sell-as-found", hours: 6, rate: 7 });
    expect(stepFrom(course("sell-as-found"), COURSES)).toMatchObject({ course: "restore", hours: 6 });
  });

  test("a course off the envelope has no step", () => {
    expect(stepTo(course("make-safe"), COURSES)).toBeNull();
    expect(stepFrom(course("make-safe"), COURSES)).toBeNull();
  });

  test("are said with what they earn against the goal", () => {
    expect(lastHours(course("restore"), COURSES, 12, "EUR")).toBe(
      "the last 6 h earn €7 each: below your €12",
    );
    expect(lastHours(course("restore"), COURSES, 5, "EUR")).toBe("the last 6 h earn €7 each: above your €5");
    expect(moreHours(course("sell-as-found"), COURSES, 12, "EUR")).toBe(
      "restoring takes 6 h more, at €7 each: below your €12",
    );
  });

  test("of the first course worth any hours are those of the next one", () => {
    expect(lastHours(course("sell-as-found"), COURSES, 12, "EUR")).toBeNull();
    expect(addedHours(course("sell-as-found"), COURSES, 12, "EUR")).toMatch(/^restoring takes/);
    expect(addedHours(course("restore"), COURSES, 12, "EUR")).toMatch(/^the last 6 h/);
    expect(addedHours(course("break-for-parts"), COURSES, 12, "EUR")).toBeNull();
  });
});

describe("how a find stands", () => {
  test("the decision's own course is shown", () => {
    expect(standing(appraisal())?.shown?.course).toBe("sell-as-found");
  });

  test("where the answer is to leave, the best other course is shown", () => {
    const answer = appraisal({ decision: decided({ course: "leave" }) });
    expect(standing(answer)).toMatchObject({
      verdict: { course: "leave" },
      shown: { course: "sell-as-found" },
    });
  });

  test("a stopped find has no figures at all", () => {
    expect(standing(appraisal({ decision: decided({ stop: "serial" }) }))).toBeNull();
  });

  test("a closed course is never the best other", () => {
    expect(bestOther([closed("restore"), open("make-safe", -90, 5), open("leave", 0, 0)])?.course).toBe(
      "make-safe",
    );
    expect(bestOther([closed("restore"), open("leave", 0, 0)])).toBeNull();
  });

  test("fewer than half of the checks made counts as hardly looked at", () => {
    expect(hardlyLooked({ looked: { made: 21, applicable: 44, groups: [] } })).toBe(true);
    expect(hardlyLooked({ looked: { made: 22, applicable: 44, groups: [] } })).toBe(false);
  });
});

describe("the plan in sight", () => {
  const plan = { operations: [{}] } as unknown as NonNullable<(typeof COURSES)[number]["plan"]>;
  const courses = COURSES.map((one) => (one.course === "leave" ? one : { ...one, plan }));

  test("is the one picked, else that of the decision, else that of the best other course", () => {
    const left = appraisal({ courses, decision: decided({ course: "leave" }) });
    expect(planInSight(appraisal({ courses }), "break-for-parts")?.course).toBe("break-for-parts");
    expect(planInSight(appraisal({ courses }), null)?.course).toBe("sell-as-found");
    expect(planInSight(left, null)?.course).toBe(bestOther(courses)?.course);
  });

  test("is none where no course has work", () => {
    expect(planInSight(appraisal(), "restore")).toBeUndefined();
  });
});
