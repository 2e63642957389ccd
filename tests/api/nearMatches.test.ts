import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { didYouMean, nearMatches } from "../../worker/api/nearMatches.ts";

const KNOWN = ["chain", "chainrings", "rim-sidewall", "rim-lateral", "saddle", "hourlyGoal"];

describe("the names a misspelt one may stand for", () => {
  test.each([
    ["chian", ["chain"]],
    ["rim-sidewal", ["rim-sidewall"]],
    ["rim_sidewall", ["rim-sidewall"]],
    ["hourly_goal", ["hourlyGoal"]],
    ["sadel", ["saddle"]],
    ["cable", []],
    ["", []],
  ])("%s: %j", (word, names) => {
    expect(nearMatches(word, KNOWN)).toEqual(names);
  });

  test("a name that is known comes first, whatever else is near", () => {
    fc.assert(
      fc.property(fc.constantFrom(...KNOWN), (name) => {
        expect(nearMatches(name, KNOWN)[0]).toBe(name);
      }),
    );
  });

  test("nothing near, nothing said", () => {
    expect(didYouMean("cable", KNOWN)).toBe("");
    expect(didYouMean("chian", KNOWN)).toBe("; did you mean chain?");
  });

  test("at most three are offered, of any word", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 500 }), (word) => {
        expect(nearMatches(word, KNOWN).length).toBeLessThanOrEqual(3);
      }),
    );
  });
});
