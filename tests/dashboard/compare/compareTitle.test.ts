import { describe, expect, test } from "vitest";
import { compareTitle, type SideBySide } from "../../../dashboard/words/compareTitle.ts";

/** A find worth doing that misses the goal in 3 of 10 and earns between €5 and €20 an hour. */
const find = (called: string, more: Partial<SideBySide> = {}): SideBySide => ({
  called,
  leave: false,
  misses: 0.3,
  p10: 5,
  p90: 20,
  lookFirst: false,
  hardlyLooked: false,
  ...more,
});
const SURE = find("the plum hybrid", { misses: 0.1, p10: 13, p90: 31 });
const WILD = find("the orange racer", { misses: 0.6, p10: -14, p90: 45 });
const say = (finds: readonly SideBySide[], stopped: readonly string[] = []) =>
  compareTitle(finds, stopped, 12, "EUR");

describe("the heading names the surest, and the ends of the ranges", () => {
  test("one that could earn most and lose most, and what would tell", () => {
    const told = "The plum hybrid is the surest. The orange racer could earn most or lose most";
    expect(say([SURE, find("the folder"), WILD])).toBe(`${told}.`);
    expect(say([SURE, { ...WILD, lookFirst: true, hardlyLooked: true }])).toBe(
      `${told}, and one look would tell.`,
    );
    expect(say([SURE, { ...WILD, hardlyLooked: true }])).toBe(`${told}: it is hardly looked at yet.`);
  });

  test("two finds at the two ends are both named", () => {
    const losing = find("the folder", { p10: -30 });
    expect(say([SURE, WILD, losing])).toBe(
      "The plum hybrid is the surest. The orange racer could earn most, the folder lose most.",
    );
  });

  test("the surest may be the one that could earn most", () => {
    const best = { ...SURE, p90: 60 };
    expect(say([best, find("the folder")])).toBe("The plum hybrid is the surest and could earn most.");
    expect(say([best, WILD])).toBe(
      "The plum hybrid is the surest and could earn most. The orange racer could lose most.",
    );
    expect(say([{ ...best, p10: -40 }, find("the folder")])).toBe(
      "The plum hybrid is the surest and could earn most or lose most.",
    );
  });

  test("nobody loses most where no range reaches into loss", () => {
    expect(say([SURE, find("the folder", { p90: 50 })])).toBe(
      "The plum hybrid is the surest. The folder could earn most.",
    );
  });
});

describe("ties, as far as the page shows figures", () => {
  test("finds that miss the goal in the same number of tenths are told together", () => {
    const [a, b] = [find("a", { misses: 0.31 }), find("b", { misses: 0.28, p90: 30 })];
    expect(say([a, b])).toBe("A and b are equally sure. B could earn most.");
    expect(say([a, b, find("c", { p90: 25 })])).toBe("All three are equally sure. B could earn most.");
    expect(say([a, b, WILD])).toMatch(/^A and b are the surest\. The orange racer/);
    expect(say([a, b, find("c"), WILD])).toMatch(/^Three of four are equally sure\. /);
  });

  test("where two could earn the same to the euro, none is named for it", () => {
    expect(say([SURE, find("the folder", { p90: 31.3 })])).toBe("The plum hybrid is the surest.");
  });
});

describe("finds to leave, and finds that are stopped", () => {
  const leave = (called: string) => find(called, { leave: true, misses: 1 });

  test("all to be left", () => {
    expect(say([leave("a"), leave("b")])).toBe("Leave both: neither earns your €12 an hour.");
    expect(say([leave("a"), leave("b"), leave("c"), leave("d")])).toBe(
      "Leave all four: none earns your €12 an hour.",
    );
  });

  test("one alone worth doing is held against the goal", () => {
    expect(say([SURE, leave("b")])).toBe(
      "Leave the other. The plum hybrid misses your €12 an hour in 1 of 10.",
    );
    expect(say([leave("a"), { ...WILD, lookFirst: true }, leave("c")])).toBe(
      "Leave the other two. The orange racer misses your €12 an hour in 6 of 10, and one look would tell.",
    );
  });

  test("what is left is not among the surest", () => {
    expect(say([SURE, find("the folder", { p90: 50 }), find("b", { leave: true, misses: 0 })])).toMatch(
      /^The plum hybrid is the surest\./,
    );
  });

  test("a stop comes first, before any figure", () => {
    expect(say([SURE, WILD], ["the white racer"])).toMatch(
      /^The white racer is stopped\. The plum hybrid is the surest\./,
    );
    expect(say([SURE, WILD], ["a", "b"])).toMatch(/^A and b are stopped\. /);
    expect(say([SURE], ["the white racer"])).toBe(
      "The white racer is stopped. The plum hybrid misses your €12 an hour in 1 of 10.",
    );
    expect(say([leave("b")], ["a"])).toBe("A is stopped. Leave b: it does not earn your €12 an hour.");
  });

  test("nothing but stops", () => {
    expect(say([], ["a", "b"])).toBe("Both are stopped.");
    expect(say([], ["a", "b", "c"])).toBe("All three are stopped.");
  });
});
