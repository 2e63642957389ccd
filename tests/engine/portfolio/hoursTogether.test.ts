import { describe, expect, test } from "vitest";
import type { Branch } from "../../../worker/engine/decision/branch.ts";
import type { OpenCourse } from "../../../worker/engine/decision/weighedCourse.ts";
import { hoursTogether } from "../../../worker/engine/portfolio/hoursTogether.ts";
import { logNormalCdf, logNormalFromMean } from "../../../worker/engine/statistics/logNormal.ts";
import { uniforms } from "../decision/drawnOutcomes.ts";

const PACE = { hourlyGoal: 10, speedFactor: 1.2, speedSpread: 0.15 };

interface Way {
  readonly chance: number;
  readonly mean: number;
  readonly sd: number;
}

function course(ways: readonly Way[], otherMinutes = 0): OpenCourse {
  const branches = ways.map(
    ({ chance, mean, sd }): Branch => ({
      chance,
      price: null,
      share: 0,
      outlay: { mean: 0, variance: 0, third: 0 },
      covariance: 0,
      minutes: { mean, variance: sd * sd },
      otherMinutes,
    }),
  );
  return { branches } as unknown as OpenCourse;
}

const RESTORE = course([
  { chance: 0.9, mean: 420, sd: 70 },
  { chance: 0.1, mean: 60, sd: 15 },
]);
const QUICK = course([{ chance: 1, mean: 150, sd: 25 }], 40);
const FIXED = course([{ chance: 1, mean: 90, sd: 0 }]);

describe("the hours of several finds together", () => {
  test("of one find are its work times the user's pace: two log-normals multiply to one", () => {
    const work = logNormalFromMean(150, 25);
    const product = {
      logMedian: work.logMedian + Math.log(PACE.speedFactor) - PACE.speedSpread ** 2 / 2,
      logSd: Math.hypot(work.logSd, PACE.speedSpread),
    };
    const { chanceAbove } = hoursTogether([QUICK], PACE);
    for (const minutes of [150, 180, 200, 220, 260, 320])
      expect(chanceAbove(minutes / 60)).toBeCloseTo(1 - logNormalCdf(product, minutes - 40), 4);
  });

  test.each([
    ["two", [RESTORE, QUICK]],
    ["five", [RESTORE, RESTORE, QUICK, FIXED, QUICK]],
    ["thirty", Array.from({ length: 30 }, (_, index) => [RESTORE, QUICK, FIXED][index % 3]!)],
  ])("of %s finds overrun as often as 200,000 months drawn one by one", (_, courses) => {
    const next = uniforms(11);
    const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
    const months = Array.from({ length: 200_000 }, () => {
      const pace =
        PACE.speedFactor * Math.exp(PACE.speedSpread * normal() - (PACE.speedSpread * PACE.speedSpread) / 2);
      return courses.reduce((sum, { branches }) => {
        const way = branches.length > 1 && next() >= branches[0]!.chance ? branches[1]! : branches[0]!;
        const { mean, variance } = way.minutes;
        const { logMedian, logSd } = logNormalFromMean(mean, Math.sqrt(variance));
        return sum + way.otherMinutes + pace * Math.exp(logMedian + logSd * normal());
      }, 0);
    }).sort((a, b) => a - b);
    const together = hoursTogether(courses, PACE);
    const told = together.quantiles([0.1, 0.5, 0.8, 0.9]);
    [0.1, 0.5, 0.8, 0.9].forEach((chance, index) => {
      const drawn = months[Math.floor(chance * months.length)]! / 60;
      expect(told[index]! / drawn).toBeGreaterThan(0.993);
      expect(told[index]! / drawn).toBeLessThan(1.007);
      expect(together.chanceAbove(drawn)).toBeCloseTo(1 - chance, 2);
    });
  });

  test("never overrun less often with less time, nor with one find more", () => {
    const few = hoursTogether([RESTORE, QUICK], PACE);
    const more = hoursTogether([RESTORE, QUICK, FIXED], PACE);
    for (let hours = 0; hours < 25; hours += 0.5) {
      expect(few.chanceAbove(hours)).toBeGreaterThanOrEqual(few.chanceAbove(hours + 0.5));
      expect(more.chanceAbove(hours)).toBeGreaterThanOrEqual(few.chanceAbove(hours) - 1e-6);
    }
  });

  test("of a pace that is certain are the work itself", () => {
    const { chanceAbove, quantiles } = hoursTogether([FIXED], { ...PACE, speedSpread: 0 });
    expect(quantiles([0.5])[0]).toBeCloseTo((90 * 1.2) / 60, 2);
    expect([chanceAbove(1.7), chanceAbove(1.9)]).toEqual([1, 0]);
  });

  test("of nothing are none, and no chance is a number past its bounds", () => {
    const nothing = hoursTogether([], PACE);
    expect(nothing.chanceAbove(0)).toBe(0);
    expect(nothing.quantiles([0.1, 0.9])).toEqual([0, 0]);
    const { chanceAbove } = hoursTogether([RESTORE], PACE);
    expect(chanceAbove(0)).toBe(1);
    expect(chanceAbove(1e6)).toBe(0);
  });
});
