import { describe, expect, test } from "vitest";
import type { Check, Measurement } from "../../../worker/engine/inspection/check.ts";
import { compileInspection } from "../../../worker/engine/inspection/compileInspection.ts";
import type { InspectionTables } from "../../../worker/engine/inspection/inspectionTables.ts";
import { SMALL_TABLES } from "./smallTables.ts";

function withCheck(id: string, change: (check: Check) => Partial<Check>): InspectionTables {
  return {
    ...SMALL_TABLES,
    checks: SMALL_TABLES.checks.map((one) => (one.id === id ? { ...one, ...change(one) } : one)),
  };
}

function withMeasurement(id: string, change: Partial<Measurement>): InspectionTables {
  return withCheck(id, (check) => ({ measurement: { ...check.measurement!, ...change } }));
}

const [prior, ...priors] = SMALL_TABLES.priors;
const gap = [
  { level: "good", from: 0, below: 1 },
  { level: "bad", from: 2, below: null },
];

describe("tables that would fail later are refused at once", () => {
  test.each<[string, InspectionTables, RegExp]>([
    [
      "a check twice",
      { ...SMALL_TABLES, checks: [...SMALL_TABLES.checks, SMALL_TABLES.checks[0]!] },
      /only once/,
    ],
    ["limits with a gap", withMeasurement("spokes", { thresholds: gap }), /without gap or overlap/],
    [
      "a limit of a level that is not there",
      withMeasurement("spokes", { thresholds: [{ level: "awful", from: 0, below: null }] }),
      /one of good, poor, bad, got awful/,
    ],
    [
      "a flag that sets such a level",
      withMeasurement("spokes", { flags: [{ id: "f", label: "f", setsLevel: "awful" }] }),
      /got awful/,
    ],
    [
      "an adjustment of such a level",
      withCheck("fork", () => ({ adjustments: [{ level: "awful", when: [], safety: "block", note: "n" }] })),
      /got awful/,
    ],
    [
      "chances that do not sum to 1",
      { ...SMALL_TABLES, priors: [{ ...prior!, probabilities: [0.5, 0.4, 0] }, ...priors] },
      /summing to 1/,
    ],
    [
      "too few chances",
      { ...SMALL_TABLES, priors: [{ ...prior!, probabilities: [0.5, 0.5] }, ...priors] },
      /a chance for each level/,
    ],
    [
      "chances of an unknown check",
      { ...SMALL_TABLES, priors: [{ ...prior!, check: "wings" }] },
      /the id of a check, got wings/,
    ],
    [
      "a modifier without odds",
      { ...SMALL_TABLES, priorModifiers: [{ check: "fork", fromLevel: "bad", when: [], odds: 0 }] },
      /odds above 0/,
    ],
    [
      "an acquittal at an unknown level",
      { ...SMALL_TABLES, acquittals: [{ check: "fork", level: "superb", acquits: ["pads"], when: [] }] },
      /one of its levels, got superb/,
    ],
    [
      "an acquittal of an unknown check",
      { ...SMALL_TABLES, acquittals: [{ check: "fork", level: "good", acquits: ["wings"], when: [] }] },
      /got wings/,
    ],
    ["no defaults", { ...SMALL_TABLES, attributeDefaults: [] }, /without conditions/],
  ])("%s", (_, tables, message) => {
    expect(() => compileInspection(tables)).toThrow(message);
  });

  test("limits may stand in any order in the table", () => {
    const string = compileInspection(SMALL_TABLES).byId.get("string")!.check.measurement!;
    expect(string.thresholds.map((one) => one.level)).toEqual(["good", "poor", "bad"]);
  });
});
