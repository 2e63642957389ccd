import { describe, expect, test } from "vitest";
import {
  cautionsTitle,
  coursesTitle,
  lookedTitle,
  lossWords,
  planTitle,
  readinessTitle,
  valueTitle,
} from "../../../dashboard/words/titles.ts";
import { appraisal, COURSES, closed, open } from "../fixtures/appraisal.ts";

describe("the title of the courses", () => {
  test("names the course that brings most and the calmer second", () => {
    const courses = [
      open("restore", 145, 9, { width: 200 }),
      open("make-safe", 76, 5.6, { width: 90 }),
      open("leave", 0, 0),
    ];
    expect(coursesTitle(courses, "restore", 12, "EUR")).toBe(
      "Restoring brings most and rarely loses; making safe is the calmer second",
    );
  });

  test("calls nothing calmer that loses more often", () => {
    const courses = [
      open("restore", 100, 9, { width: 160 }),
      open("make-safe", 40, 5.6, { width: 150 }),
      open("leave", 0, 0),
    ];
    expect(coursesTitle(courses, "restore", 8, "EUR")).not.toContain("calmer");
  });

  test("says how often the best one loses", () => {
    const courses = [open("restore", 30, 9, { width: 200 }), open("leave", 0, 0)];
    expect(lossWords(courses[0]!)).toBe("loses in 7 of 20");
    expect(coursesTitle(courses, "restore", 12, "EUR")).toBe("Restoring brings most but loses in 7 of 20");
  });

  test("says why the one that brings most is not taken", () => {
    expect(coursesTitle(COURSES, "sell-as-found", 12, "EUR")).toBe(
      "Restoring brings most, but the last 6 h earn €7 each: below your €12",
    );
  });

  test("is plain where all lose, or none is open", () => {
    expect(coursesTitle([open("restore", -5, 9), open("leave", 0, 0)], "leave", 12, "EUR")).toBe(
      "Every course loses money",
    );
    expect(coursesTitle([closed("restore"), open("leave", 0, 0)], "leave", 12, "EUR")).toBe(
      "No course but leaving is open",
    );
  });
});

describe("titles of what was seen", () => {
  const finding = (check: string, severity: 0 | 2) =>
    ({
      check,
      severity,
      position: "bike",
      level: "x",
      rank: 0,
      safety: "none",
      source: "observed",
      note: "",
      safetyBlock: false,
      curedBy: [],
    }) as const;

  test("count the checks without a fault and those not made; a check with two faults is one", () => {
    const looked = { made: 4, applicable: 44, groups: [] };
    const findings = [
      finding("tyre-condition", 2),
      finding("tyre-condition", 2),
      finding("headset", 2),
      finding("rust", 0),
      finding("serial", 0),
    ];
    expect(lookedTitle(appraisal({ looked, findings }))).toBe(
      "No fault found in 2 of 4 checks made; 40 not made",
    );
    const oneWheel = [finding("tyre-condition", 2), finding("rust", 0)];
    expect(
      lookedTitle(appraisal({ looked: { made: 1, applicable: 44, groups: [] }, findings: oneWheel })),
    ).toBe("No fault found in 1 of 1 checks made; 43 not made");
    expect(lookedTitle(appraisal({ looked: { made: 0, applicable: 44, groups: [] } }))).toBe(
      "Not looked at yet: 44 checks not made",
    );
  });

  test("say what keeps it off the road, and never that it is sound", () => {
    const title = (blocking: string[], owed: string[], papers: string[] = []) =>
      readinessTitle(
        appraisal({ readiness: { ready: blocking.length + owed.length === 0, blocking, owed } }),
        (id) => papers.includes(id),
      );
    expect(title(["a", "b"], ["c"])).toBe("Not roadworthy yet: two faults to cure, one look owed");
    expect(title([], [])).toBe("No fault that blocks riding was found, and no look is owed");
    // Papers are cured by no work, and stop no ride.
    expect(title(["a", "b"], ["c"], ["b"])).toBe(
      "Not roadworthy yet: one fault to cure, papers that forbid a sale, one look owed",
    );
    expect(title(["b"], ["c"], ["b", "c"])).toBe(
      "Not to be sold yet: papers that forbid a sale, one look owed",
    );
  });

  test("count hard and soft cautions apart", () => {
    const caution = (kind: "hard" | "soft") => ({
      id: kind,
      title: "",
      text: "",
      because: "",
      kind,
      bears: { checks: [], operations: [] },
    });
    expect(cautionsTitle([caution("hard"), caution("soft"), caution("soft")])).toBe(
      "One hard caution, two to bear in mind",
    );
    expect(cautionsTitle([caution("soft")])).toBe("One caution to bear in mind");
    expect(cautionsTitle([])).toBe("No caution raised by what was seen");
  });
});

describe("titles of money and work", () => {
  const band = (p50: number) => ({ p10: p50 - 20, p25: p50 - 10, p50, p75: p50 + 10, p90: p50 + 20 });
  const value = {
    asFound: band(60),
    madeSafe: band(203),
    restored: band(321),
    parts: band(120),
    referencePrice: 220,
    pieces: [],
    drivers: [],
    extrapolates: false,
    comparables: [],
    ownShare: 0,
    askedFactor: 1.05,
    threeMore: { state: "madeSafe", now: { p10: 183, p90: 223 }, after: { p10: 190, p90: 216 } },
  } as const;

  test("compare the states it can be sold in", () => {
    expect(valueTitle(value, "EUR")).toBe("Made safe it brings about €205, restored about €320");
    expect(valueTitle({ ...value, restored: null }, "EUR")).toBe(
      "Made safe it brings about €205, as found about €60",
    );
    expect(valueTitle({ ...value, madeSafe: null, restored: null }, "EUR")).toBe(
      "As found it brings about €60, as parts about €120",
    );
  });

  test("say hours and money of a plan", () => {
    const spread = (mean: number) => ({ mean, p10: mean, p50: mean, p90: mean });
    const plan = {
      operations: [],
      sharedSteps: [],
      shoppingList: [],
      minutes: spread(534),
      cost: spread(118),
      allowance: { money: 0, minutes: 0 },
      disclosed: [],
      stopLimits: [],
    };
    expect(planTitle(open("restore", 145, 2, { plan }), "EUR")).toBe("8.9 hours and €120 to restore it");
  });
});
