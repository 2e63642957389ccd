import { describe, expect, test } from "vitest";
import type { AttributeDefault } from "../../../dashboard/api/types.ts";
import { applicable, settled } from "../../../dashboard/checks/applies.ts";
import { isMade } from "../../../dashboard/checks/made.ts";
import { spokes } from "../../../dashboard/checks/spokes.ts";
import checks from "../../../data/checks.json" with { type: "json" };
import { check } from "../fixtures/check.ts";

const DEFAULTS: readonly AttributeDefault[] = [
  { attribute: "drivetrain", when: [{ attribute: "category", isOneOf: ["folding"] }], value: "hub-gear" },
  { attribute: "drivetrain", when: [], value: "derailleur" },
  { attribute: "hasCarbon", when: [{ attribute: "frameMaterial", isOneOf: ["carbon"] }], value: "yes" },
  { attribute: "hasCarbon", when: [], value: "no" },
];

describe("which checks apply", () => {
  test("a gap in the description is filled by the first row that holds; what was said stays", () => {
    expect(settled({ category: "folding", frameMaterial: "carbon" }, DEFAULTS)).toMatchObject({
      drivetrain: "hub-gear",
      hasCarbon: "yes",
    });
    expect(settled({ category: "folding", drivetrain: "single-speed" }, DEFAULTS).drivetrain).toBe(
      "single-speed",
    );
  });

  test("a check applies where all its conditions hold", () => {
    const gears = check({
      id: "shifting",
      appliesTo: [{ attribute: "drivetrain", isOneOf: ["derailleur"] }],
    });
    const ids = (category: string) =>
      applicable([check(), gears], settled({ category }, DEFAULTS)).map(({ id }) => id);
    expect(ids("hybrid")).toEqual(["headset", "shifting"]);
    expect(ids("folding")).toEqual(["headset"]);
  });

  test("looked at means the whole bike, or both wheels", () => {
    expect(isMade(undefined)).toBe(false);
    expect(isMade({ level: "smooth" })).toBe(true);
    expect(isMade({ front: { level: "good" } })).toBe(false);
    expect(isMade({ front: { level: "good" }, rear: { level: "good" } })).toBe(true);
  });
});

describe("the wheel", () => {
  test("has twelve spokes for the catalogue's checks", () => {
    expect(new Set(checks.map(({ spoke }) => spoke)).size).toBe(12);
  });

  test("a spoke is long, short, faint or absent by what was looked at", () => {
    const all = [
      check({ id: "a", spoke: "frame" }),
      check({ id: "b", spoke: "frame" }),
      check({ id: "c", spoke: "fork" }),
      check({ id: "d", spoke: "bar" }),
      check({ id: "e", spoke: "hubs" }),
    ];
    const made = new Set(["a", "c"]);
    const wheel = spokes(all, all.slice(0, 4), (id) => made.has(id));
    expect(wheel.map(({ name, looked }) => [name, looked])).toEqual([
      ["frame", "partly"],
      ["fork", "fully"],
      ["bar", "not"],
      ["hubs", "absent"],
    ]);
  });
});
