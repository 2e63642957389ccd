import { describe, expect, test } from "vitest";
import type { Arrivals } from "../../../worker/engine/selling/demand/arrivals.ts";
import { postedWeeks } from "../../../worker/engine/selling/demand/postedWeeks.ts";
import { optimalPath, type PricePath } from "../../../worker/engine/selling/demand/pricePath.ts";

// Values and sources: SOURCE.md.

interface Case {
  readonly a: number;
  readonly alpha: number;
  readonly T: number;
  readonly salvage: number;
  readonly J: number;
  readonly price: number;
  readonly unsold: number;
  readonly fixed: { readonly price: number; readonly revenue: number };
}

const CASES: readonly Case[] = [
  {
    a: 2,
    alpha: 1,
    T: 5,
    salvage: 0,
    J: 1.5430404724093345,
    price: 2.5430404724093343,
    unsold: 0.2137302715195763,
    fixed: { price: 2.045237598017127, revenue: 1.4842074100583458 },
  },
  {
    a: 30,
    alpha: 0.02,
    T: 4,
    salvage: 0,
    J: 190.49456683875005,
    price: 240.49456683875005,
    unsold: 0.02215058578035486,
    fixed: { price: 197.35938810441903, revenue: 177.90728569679789 },
  },
  {
    a: 1.5,
    alpha: 0.01,
    T: 8,
    salvage: 40,
    J: 177.6032782577253,
    price: 277.6032782577253,
    unsold: 0.2525786022733445,
    fixed: { price: 231.56003885117397, revenue: 172.96099184944737 },
  },
  {
    a: 4,
    alpha: 0.03,
    T: 10,
    salvage: 0,
    J: 91.82089914906139,
    price: 125.15423248239473,
    unsold: 0.06363275188301505,
    fixed: { price: 101.18506448234191, revenue: 86.37916497851752 },
  },
];

const FREE = { storagePerWeek: 0, fee: { rate: 0, fixed: 0 }, discountPerWeek: 0 };

function planned({ a, alpha, T, salvage }: Case, steps: number): PricePath {
  const arrivals: Arrivals = {
    nodes: 1,
    at: (_, price, { rate, slope }) => {
      rate[0] = a * Math.exp(-alpha * price);
      slope[0] = -alpha * rate[0];
    },
  };
  return optimalPath({
    weeks: steps,
    weights: Float64Array.of(1),
    sale: postedWeeks(arrivals, FREE, T / steps),
    fallback: new Float64Array(steps + 1).fill(salvage),
    range: { lowest: 0.01 / alpha, highest: 20 / alpha + salvage },
  });
}

describe("fine steps and exponential demand, against Gallego & van Ryzin 1994", () => {
  test.each(CASES)("a $a, alpha $alpha, time $T, at the end $salvage", (one) => {
    const path = planned(one, 400);
    expect(path.worth / one.J).toBeCloseTo(1, 5);
    // The first step's price stands for a stretch of time, the formula's for a moment.
    expect(path.prices[0]! / one.price).toBeCloseTo(1, 2);
    expect(path.reach[400]! / one.unsold).toBeCloseTo(1, 2);
  });

  test.each(CASES)("half the step, a quarter of the loss: a $a, alpha $alpha", (one) => {
    const [coarse, fine] = [100, 200].map((steps) => one.J - planned(one, steps).worth) as [number, number];
    expect(fine).toBeGreaterThan(0);
    expect(coarse / fine).toBeGreaterThan(3.5);
    expect(coarse / fine).toBeLessThan(4.5);
    // What is lost falls as the square of the step: the limit by Richardson.
    const limit = planned(one, 200).worth + (coarse - fine) / 3;
    expect(limit / one.J).toBeCloseTo(1, 6);
  });

  test.each(CASES)("one price for all the time: a $a, alpha $alpha", (one) => {
    const path = planned(one, 1);
    expect(path.worth / one.fixed.revenue).toBeCloseTo(1, 12);
    expect(path.prices[0]! / one.fixed.price).toBeCloseTo(1, 6);
    expect(path.worth).toBeLessThan(one.J);
  });
});
