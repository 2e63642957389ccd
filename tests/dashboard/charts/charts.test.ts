import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { percent, rateScale, scaleOver } from "../../../dashboard/charts/scale.ts";
import { dotWidth, stackDots } from "../../../dashboard/charts/stackDots.ts";

describe("an axis", () => {
  test("holds its ends with some room, and its ticks are multiples of 1, 2 or 5 times a power of ten", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -500, max: 0, noNaN: true }),
        fc.double({ min: 1, max: 900, noNaN: true }),
        (low, high) => {
          const { min, max, ticks } = scaleOver(low, high, 6);
          expect(min).toBeLessThan(low);
          expect(max).toBeGreaterThan(high);
          expect(ticks.length).toBeLessThanOrEqual(7);
          const step = ticks[1]! - ticks[0]!;
          const lead = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
          expect([1, 2, 5].some((one) => Math.abs(one - lead) < 1e-6)).toBe(true);
          for (const tick of ticks) expect(tick >= min && tick <= max).toBe(true);
        },
      ),
    );
  });

  test("puts its ends at 0 and 100 per cent", () => {
    const scale = scaleOver(-10, 30, 5);
    expect(percent(scale.min, scale)).toBe(0);
    expect(percent(scale.max, scale)).toBe(100);
    expect(scale.ticks).toEqual([-10, 0, 10, 20, 30]);
  });
});

describe("the axis of rates", () => {
  const row = (rate: number, p10: number, p90: number) => ({ rate, p10, p90 });

  test("shows nought, the goal and every rate", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -60, max: 120 }), { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 0, max: 60 }),
        (rates, goal) => {
          const { min, max } = rateScale(
            rates.map((rate) => row(rate, rate - 20, rate + 20)),
            goal,
            6,
          );
          for (const value of [0, goal, ...rates]) expect(value > min && value < max).toBe(true);
        },
      ),
    );
  });

  test("does not stretch for one range that runs on alone", () => {
    const rows = [row(22, 13, 31), row(16, 5, 28), row(20, 0, 200)];
    expect(rateScale(rows, 12, 6).max).toBeLessThan(60);
    expect(rateScale(rows.slice(0, 2), 12, 6).max).toBeGreaterThan(31);
  });
});

describe("the dots of a course", () => {
  const x = (value: number) => 100 + value;

  test("are all there, and none stands on another", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -90, max: 300 }), { maxLength: 20 }), (values) => {
        const dots = stackDots(values, x, 10);
        expect(dots).toHaveLength(values.length);
        expect(new Set(dots.map((dot) => `${dot.x} ${dot.level}`)).size).toBe(values.length);
      }),
    );
  });

  test("that lose stand left of nought, those that do not stand right of it", () => {
    for (const { value, x: at } of stackDots([-30, -1, -0.01, 0, 0.01, 25], x, 10)) {
      expect(value < 0 ? at < 100 : at > 100).toBe(true);
    }
  });

  test("stand within a dot of their value", () => {
    for (const { value, x: at } of stackDots([-33, 7, 154], x, 10))
      expect(Math.abs(at - x(value))).toBeLessThanOrEqual(10);
  });

  test("shrink until the highest pile fits, but not until they cannot be told apart", () => {
    const pile = Array.from({ length: 20 }, () => 5);
    const across = dotWidth([pile], x, 120, 13, 5);
    expect(across * 20).toBeLessThanOrEqual(120);
    expect(dotWidth([[1, 50, 100]], x, 120, 13, 5)).toBe(13);
    expect(dotWidth([pile], x, 60, 13, 8.5)).toBe(8.5);
    expect(dotWidth([pile], x, 60, 7, 8.5)).toBe(7);
  });

  test("of a full column stand on the nearest with room, none on another, and on their side of nought", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -30, max: 30 }), { maxLength: 20 }),
        fc.integer({ min: 1, max: 6 }),
        (values, most) => {
          const dots = stackDots(values, x, 10, most);
          expect(new Set(dots.map((dot) => `${dot.x} ${dot.level}`)).size).toBe(values.length);
          for (const { value, x: at, level } of dots) {
            expect(level).toBeLessThan(most);
            expect(value < 0 ? at < 100 : at > 100).toBe(true);
          }
        },
      ),
    );
    const pile = Array.from({ length: 20 }, () => 25);
    const columns = new Set(stackDots(pile, x, 10, 5).map((dot) => dot.x));
    expect([...columns].sort((a, b) => a - b)).toEqual([115, 125, 135, 145]);
  });
});
