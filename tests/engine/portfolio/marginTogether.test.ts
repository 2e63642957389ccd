import { describe, expect, test } from "vitest";
import { outcomeOf } from "../../../worker/engine/decision/outcome.ts";
import { marginTogether } from "../../../worker/engine/portfolio/marginTogether.ts";
import { marketLoadings } from "../../../worker/engine/portfolio/marketLoadings.ts";
import type { Taken } from "../../../worker/engine/portfolio/taken.ts";
import { targetRow } from "../../../worker/engine/valuation/prediction.ts";
import { medianVariance } from "../../../worker/engine/valuation/valueBelief.ts";
import { pick, uniforms } from "../decision/drawnOutcomes.ts";
import { CANDIDATES } from "./shed.ts";

const taken: readonly Taken[] = CANDIDATES.flatMap((candidate) =>
  candidate.options
    .filter(({ course }) => course.course !== "leave")
    .map((option) => ({ candidate, option })),
);
const spreadOf = (set: readonly Taken[]) => {
  const { quantile } = marginTogether(set);
  return quantile(0.9) - quantile(0.1);
};

describe("the margin of several finds together", () => {
  test("has the sum of their means", () => {
    const sum = taken.reduce((all, { option }) => all + option.course.expected.margin, 0);
    expect(marginTogether(taken).mean).toBeCloseTo(sum, 8);
  });

  test("of one find is the find's own", () => {
    for (const one of taken) {
      const { margin } = outcomeOf(one.option.course.branches, one.candidate.find.settled.workshop);
      const { quantile } = marginTogether([one]);
      const near = 0.01 * (margin.p90 - margin.p10) + 1;
      for (const [told, chance] of [
        [margin.p10, 0.1],
        [margin.p50, 0.5],
        [margin.p90, 0.9],
      ] as const)
        expect(
          Math.abs(quantile(chance) - told),
          `${one.candidate.id} ${one.option.course.course}`,
        ).toBeLessThan(near);
    }
  });

  test("of two in one market is spread as 200,000 pairs of sales drawn with the regression's covariance", () => {
    const pair = ["make-safe", "sell-as-found"].map(
      (course) =>
        taken.find(({ option }) => option.course.course === course && option.course.branches.length > 0)!,
    );
    const [a, b] = marketLoadings(pair);
    const next = uniforms(5);
    const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
    const sums = Array.from({ length: 200_000 }, () => {
      const market = normal();
      return pair.reduce((sum, { option }, index) => {
        const way = pick(option.course.branches, next());
        const spent = way.outlay.mean + Math.sqrt(way.outlay.variance) * normal();
        if (way.price === null) return sum - spent;
        const loading = [a!, b!][index]!;
        const own = Math.sqrt(way.price.logSd ** 2 - loading ** 2);
        return sum + way.share * Math.exp(way.price.logMedian + loading * market + own * normal()) - spent;
      }, 0);
    }).sort((x, y) => x - y);
    const { quantile } = marginTogether(pair);
    for (const chance of [0.1, 0.5, 0.9])
      expect(Math.abs(quantile(chance) - sums[chance * sums.length]!)).toBeLessThan(
        0.015 * (sums[0.9 * sums.length]! - sums[0.1 * sums.length]!),
      );
  });

  test("has as loadings the root of a covariance that all share (Thurstone's centroid method)", () => {
    const [one] = taken.filter(({ option }) => option.course.course === "make-safe");
    const { belief } = one!.candidate.find.settled.market;
    const { row } = targetRow(
      belief,
      one!.candidate.find.situation.pricing.rideableSale(0, { polished: false, repainted: false }),
    );
    const shared = Math.sqrt(belief.variance * medianVariance(belief, row));
    for (const loading of marketLoadings([one!, one!, one!])) expect(loading).toBeCloseTo(shared, 9);
    expect(marketLoadings([one!])).toEqual([0]);
  });

  test("is surer than single finds, but not as sure as if the market were known", () => {
    for (const one of taken) {
      const alone = spreadOf([one]);
      const nine = spreadOf(Array.from({ length: 9 }, () => one));
      expect(nine).toBeLessThan(9 * alone);
      expect(nine).toBeGreaterThanOrEqual(2.5 * alone);
    }
    const sold = taken.filter(({ option }) => option.course.branches.some(({ price }) => price !== null));
    for (const one of sold.slice(0, 6)) {
      const forty = spreadOf(Array.from({ length: 40 }, () => one)) / (Math.sqrt(40) * spreadOf([one]));
      expect(forty).toBeGreaterThan(1.2);
    }
  });

  test("counts what leaving a find that was paid for costs", () => {
    const left = CANDIDATES.flatMap((candidate) =>
      candidate.options
        .filter(({ course }) => course.course === "leave")
        .map((option) => ({ candidate, option })),
    );
    const sum = left.reduce((all, { option }) => all + option.course.expected.margin, 0);
    expect(marginTogether(left).mean).toBeCloseTo(sum, 9);
    expect(spreadOf(left)).toBe(0);
  });
});
