import { describe, expect, test } from "vitest";
import { chance, outOf } from "../../../dashboard/words/chance.ts";
import { capital, count, counted, listed, small, uncapital } from "../../../dashboard/words/count.ts";
import { levelWords, plain, sentence } from "../../../dashboard/words/plain.ts";
import { between, likelyRate, moneyRange, rateRange } from "../../../dashboard/words/range.ts";
import { days, hours, minutes, withHours } from "../../../dashboard/words/time.ts";
import checks from "../../../data/checks.json" with { type: "json" };

describe("a range", () => {
  test("stands in words beside its figure", () => {
    expect(likelyRate({ rate: 16.2, p10: 4.6, p90: 28.3 }, "EUR")).toBe(
      "€16 an hour, likely between €5 and €28",
    );
    expect(rateRange(-2.4, 29, "EUR")).toBe("\u2212€2 to €29");
    expect(moneyRange(251, 399, "EUR")).toBe("€250 to €400");
  });

  test("whose ends round to the same figure is said as one", () => {
    expect(rateRange(4.6, 5.4, "EUR")).toBe("about €5");
    expect(likelyRate({ rate: 5, p10: 4.9, p90: 5.1 }, "EUR")).toBe("€5 an hour, hardly more or less");
    expect(between("2", "3", " and ")).toBe("2 and 3");
  });
});

describe("a time", () => {
  test("in hours goes to the tenth, without a trailing nought", () => {
    expect([8.94, 6, 0.04, 2.25].map(hours)).toEqual(["8.9 h", "6 h", "0 h", "2.3 h"]);
  });

  test("in a sentence of the API's goes without its trailing nought", () => {
    expect(withHours("It brings 54 EUR for 5.0 h, or 8.5 h in all")).toBe(
      "It brings 54 EUR for 5 h, or 8.5 h in all",
    );
  });

  test("in minutes is whole, and carries the minus sign U+2212", () => {
    expect(minutes(39.6)).toBe("40 min");
    expect(minutes(-12)).toBe("\u221212 min");
  });

  test("in days turns to weeks from a fortnight on", () => {
    expect([1, 9.4, 13.4, 14, 24].map(days)).toEqual(["1 day", "9 days", "13 days", "2 weeks", "3 weeks"]);
  });
});

describe("a chance", () => {
  test.each([
    [0.31, 10, "3 in 10"],
    [0.31, 20, "6 in 20"],
    [0, 10, "0 in 10"],
    [1, 20, "20 in 20"],
  ] as const)("of %f in %i is %s", (probability, of, shown) => {
    expect(chance(probability, of)).toBe(shown);
  });

  test("is never rounded to a certainty that is not there", () => {
    expect(chance(0.001, 20)).toBe("fewer than 1 in 20");
    expect(chance(0.999, 10)).toBe("more than 9 in 10");
    expect(outOf(0.001, 20)).toBe("in fewer than 1 of 20");
  });
});

describe("counts and lists", () => {
  test("go in words up to twelve", () => {
    expect([0, 1, 12, 13].map(count)).toEqual(["none", "one", "twelve", "13"]);
    expect(counted(1, "check")).toBe("one check");
    expect(counted(0, "check")).toBe("no checks");
    expect(counted(3, "look")).toBe("three looks");
  });

  test("join with commas and a last and", () => {
    expect(listed([])).toBe("");
    expect(listed(["a"])).toBe("a");
    expect(listed(["a", "b", "c"])).toBe("a, b and c");
  });

  test("an id of the catalogue reads as words", () => {
    expect(plain("stuck-cut")).toBe("Stuck cut");
    expect(plain("ok")).toBe("OK");
    expect(capital("")).toBe("");
  });

  test("a level that blocks riding never reads as if all were well", () => {
    const blocking = checks
      .filter(({ group }) => group !== "paperwork")
      .flatMap((check) =>
        check.levels.filter(({ safety }) => safety === "block").map(({ id }) => levelWords(check, id)),
      );
    expect(blocking.length).toBeGreaterThan(30);
    expect(blocking.filter((words) => /^(clear|none|ok|sound|good|strong|true|free)$/i.test(words))).toEqual(
      [],
    );
  });

  test("a sentence gets its capitals and one full stop", () => {
    expect(sentence("loose")).toBe("Loose.");
    expect(sentence("Filed off. do not buy.")).toBe("Filed off. Do not buy.");
    expect(sentence("  ")).toBe("");
  });
});

describe("small letters inside a sentence", () => {
  test("leave an abbreviation its capitals", () => {
    expect(small("BMX")).toBe("BMX");
    expect(small("Track or Single-speed")).toBe("track or single-speed");
    expect(uncapital("BMX, 1990s")).toBe("BMX, 1990s");
    expect(uncapital("Steel")).toBe("steel");
  });
});
