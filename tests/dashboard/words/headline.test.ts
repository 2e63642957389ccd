import { describe, expect, test } from "vitest";
import { type Headed, headline } from "../../../dashboard/words/headline.ts";

const find = (called: string, beats: boolean, misses = 0.5): Headed => ({ called, beats, misses });
const poor = (n: number) => Array.from({ length: n }, (_, i) => find(`poor ${i}`, false));

describe("the headline is written from the figures", () => {
  test("it counts what beats the goal and names the only one that nearly always does", () => {
    const finds = [
      find("the plum hybrid", true, 0.06),
      find("b", true),
      find("c", true),
      find("d", true),
      ...poor(3),
    ];
    expect(headline(finds, 12, "EUR")).toBe(
      "Four of seven earn more than your €12 an hour. Only the plum hybrid does so in nearly every outcome.",
    );
  });

  test("two that nearly always do are both named, more are counted", () => {
    const two = [find("the plum hybrid", true, 0), find("the folder", true, 0.1), find("c", true)];
    expect(headline(two, 12, "EUR")).toBe(
      "All three earn more than your €12 an hour. The plum hybrid and the folder do so in nearly every outcome.",
    );
    const three = [...[1, 2, 3].map((n) => find(`${n}`, true, 0)), find("d", true)];
    expect(headline(three, 12, "EUR")).toMatch(/Three of them do so in nearly every outcome\.$/);
  });

  test("none beating the goal is said as it is", () => {
    expect(headline(poor(7), 12, "EUR")).toBe("None of seven earns more than your €12 an hour.");
  });

  test("a single one among several takes the singular, with its chance to miss", () => {
    expect(headline([find("the folder", true, 0.4), ...poor(2)], 12.5, "EUR")).toBe(
      "One of three earns more than your €12.50 an hour. It misses in 4 of 10 outcomes.",
    );
  });

  test("a single find is called by its name", () => {
    expect(headline([find("the folder", true, 0.02)], 12, "EUR")).toBe(
      "The folder earns more than your €12 an hour. It does so in nearly every outcome.",
    );
    expect(headline([find("the folder", false)], 12, "EUR")).toBe(
      "The folder does not earn your €12 an hour.",
    );
  });

  test("no find at all is no error", () => {
    expect(headline([], 12, "EUR")).toBe("No find here yet to hold against your €12 an hour.");
  });
});
