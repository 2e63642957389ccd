import { describe, expect, test } from "vitest";
import { confidenceWords, flipWords, knowingWords } from "../../../dashboard/words/certainty.ts";
import { chance, fineChance, fineness } from "../../../dashboard/words/chance.ts";
import { decided } from "../fixtures/appraisal.ts";

describe("a chance", () => {
  test("is told of 10, and only where that would round it away or double it of 20 or of 100", () => {
    expect([0.3, 0.08, 0.05, 0.96, 0.02, 0.985].map(fineChance)).toEqual([
      "3 in 10",
      "1 in 10",
      "1 in 20",
      "19 in 20",
      "2 in 100",
      "99 in 100",
    ]);
    expect(fineness(0)).toBe(10);
    expect(chance(0.001, 100)).toBe("fewer than 1 in 100");
    expect(fineChance(0.001)).toBe("fewer than 1 in 100");
    expect(fineChance(1)).toBe("10 in 10");
  });
});

describe("how sure the decision is", () => {
  test.each([
    [0.68, "Best in 7 of 10 ways it can turn out."],
    [0.97, "Best in 19 of 20 ways it can turn out."],
    [0.999, "Best in more than 19 of 20 ways it can turn out."],
    [0.04, "Best in 1 of 20 ways it can turn out."],
    [1, "Best in every way it can turn out."],
  ])("%d is told as %s", (confidence, words) => {
    expect(confidenceWords({ confidence })).toBe(words);
  });

  test("and what knowing more is worth are not told where the answer does not say", () => {
    expect(confidenceWords({ confidence: null })).toBeNull();
    expect(knowingWords({ perfectInformation: null }, "EUR")).toBeNull();
  });

  test.each([
    [18.4, "Knowing everything beforehand would be worth €18 to you."],
    [0.3, "Knowing everything beforehand would be worth less than €1 to you."],
    [0, "Nothing you could still find out would change the course."],
    [1e-12, "Nothing you could still find out would change the course."],
  ])("knowing everything, for %d, is told as %s", (perfectInformation, words) => {
    expect(knowingWords({ perfectInformation }, "EUR")).toBe(words);
  });
});

describe("the goals at which another course is best", () => {
  const spans = decided({
    course: "make-safe",
    courseByGoal: [
      { fromGoal: 0, course: "restore" },
      { fromGoal: 8.2, course: "make-safe" },
      { fromGoal: 20.7, course: "sell-as-found" },
      { fromGoal: 23, course: "leave" },
    ],
  });

  test("are the nearest below and above the user's own", () => {
    expect(flipWords(spans, 12, "EUR")).toEqual([
      "Below €8 an hour, restore it.",
      "From €21 an hour on, sell it as found.",
    ]);
  });

  test("are left out where they are more than twice as far, or less than half", () => {
    expect(flipWords(spans, 10, "EUR")).toEqual(["Below €8 an hour, restore it."]);
    expect(flipWords(spans, 18, "EUR")).toEqual(["From €21 an hour on, sell it as found."]);
    expect(flipWords({ ...spans, course: "restore" }, 0, "EUR")).toEqual([
      "From €8 an hour on, make it safe.",
    ]);
  });

  test("are told to the cent where they would read like the user's own goal", () => {
    expect(flipWords({ ...spans, course: "sell-as-found" }, 21, "EUR")).toEqual([
      "Below €20.70 an hour, make it safe.",
      "From €23 an hour on, leave it.",
    ]);
  });

  test("are none where the same course is best at every goal", () => {
    const always = decided({ courseByGoal: [{ fromGoal: 0, course: "sell-as-found" }] });
    expect(flipWords(always, 12, "EUR")).toEqual([]);
    expect(flipWords(decided({}), 12, "EUR")).toEqual([]);
  });
});
