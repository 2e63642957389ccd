import { describe, expect, test } from "vitest";
import { setAside } from "../../../dashboard/words/plan.ts";

describe("what a plan sets aside", () => {
  const aside = (minutes: number, money: number) => setAside({ minutes, money }, "EUR");
  const FOR = "Set aside for what nobody has seen yet and for work that may fail:";

  test("tells time and money", () => {
    expect(aside(30, 12)).toBe(`${FOR} 30 min and €12, on average.`);
  });

  test("tells of the two what is set aside alone: one may be below nought", () => {
    expect(aside(30, -2)).toBe(`${FOR} 30 min, on average.`);
    expect(aside(-4, 12)).toBe(`${FOR} €12, on average.`);
    expect(aside(0.4, 0.4)).toBeNull();
    expect(aside(-4, -2)).toBeNull();
  });
});
