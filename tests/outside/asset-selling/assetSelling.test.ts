import { describe, expect, test } from "vitest";
import { optimalPath } from "../../../worker/engine/selling/demand/pricePath.ts";
import { writtenPath } from "../../../worker/engine/selling/demand/writtenPath.ts";
import { logNormalCdf, logNormalDensity } from "../../../worker/engine/statistics/logNormal.ts";
import { logNormalPartialMean } from "../../engine/statistics/logNormalPartialMean.ts";
import { exponential, type Offers, oneOfferAWeek, UNIFORM } from "./oneOfferAWeek.ts";

// Values and sources: SOURCE.md.

describe("offers without recall, against Moser 1956 and Gilbert & Mosteller 1966", () => {
  const E = [1 / 2, 5 / 8, 89 / 128, 24305 / 32768, 1664474849 / 2147483648, 0.800375666500635];

  test.each(E.map((value, at) => [at + 1, value]))("%i offers are worth %d", (offers, value) => {
    expect(optimalPath(oneOfferAWeek(UNIFORM, offers)).worth).toBeCloseTo(value, 12);
  });

  test("an offer is taken where it exceeds what those to come are worth", () => {
    const { prices } = optimalPath(oneOfferAWeek(UNIFORM, 6));
    E.slice(0, 5).forEach((value, toCome) => {
      expect(prices[4 - toCome]).toBeCloseTo(value, 7);
    });
  });
});

describe("selling within a time, against Bertsekas", () => {
  const cases: readonly [string, Offers, number, readonly number[]][] = [
    ["uniform, 100 % interest", UNIFORM, 1, [0, 1 / 4, 17 / 64]],
    [
      "uniform, 5 %",
      UNIFORM,
      0.05,
      [0, 0.47619047619047616, 0.5841701760069107, 0.638692759302831, 0.6704421146599352, 0.6902345852903266],
    ],
    [
      "exponential, 2 %",
      exponential(100),
      0.02,
      [0, 98.03921568627452, 132.8976572300273, 156.24751426566928, 173.73448433870203, 187.58155856874527],
    ],
  ];

  test.each(cases)("%s: thresholds from the last week back", (_, offers, interest, thresholds) => {
    const weeks = thresholds.length;
    const { prices } = optimalPath(oneOfferAWeek(offers, weeks, { factor: 1 / (1 + interest) }));
    thresholds.forEach((threshold, toCome) => {
      const price = prices[weeks - 1 - toCome]!;
      expect(Math.abs(price - threshold)).toBeLessThan(1e-6 * (1 + threshold));
    });
  });

  test("with time without end the threshold comes to its limit", () => {
    const uniform = optimalPath(oneOfferAWeek(UNIFORM, 150, { factor: 1 / 1.05 }));
    expect(uniform.prices[0]).toBeCloseTo(0.7298437881283576, 6);
    const long = optimalPath(oneOfferAWeek(exponential(100), 300, { factor: 1 / 1.02 }));
    expect(long.prices[0]).toBeCloseTo(286.0890177982211, 3);
  });
});

describe("search at a cost for each offer, against Karlin 1962 and McCall 1970", () => {
  const fourSix: Offers = {
    below: (x) => logNormalCdf({ logMedian: 4.6, logSd: 0.25 }, x),
    above: (x) => logNormalPartialMean({ logMedian: 4.6, logSd: 0.25 }, x, Number.POSITIVE_INFINITY),
    density: (x) => logNormalDensity({ logMedian: 4.6, logSd: 0.25 }, x),
    range: { lowest: 20, highest: 400 },
  };
  const cases: readonly [string, Offers, number, number][] = [
    ["uniform", UNIFORM, 0.02, 0.8],
    ["uniform", UNIFORM, 0.08, 0.6],
    ["exponential", exponential(100), 5, 299.5732273553991],
    ["log-normal", fourSix, 2, 135.22310058756355],
  ];

  test.each(cases)("%s at %d an offer", (_, offers, cost, value) => {
    const { worth, prices } = optimalPath(oneOfferAWeek(offers, 400, { cost }));
    expect(worth / value).toBeCloseTo(1, 7);
    expect(prices[0]! / value).toBeCloseTo(1, 5);
  });

  test.each([
    [25, 0.99, 47.31649976652628],
    [10, 0.9, 40.39579058733],
  ])("wages of a job, benefit %d and factor %d", (benefit, factor, reservation) => {
    const { offers, wages } = betaBinomialWages();
    const problem = oneOfferAWeek(offers, 600, { factor });
    const sale: typeof problem.sale = {
      at: (week, price, figures) => {
        problem.sale.at(week, price, figures);
        figures.gain[0]! += (1 - factor) * benefit * offers.below(price);
      },
    };
    const between = [9.5, ...wages.map((wage) => wage + 0.5)];
    const { carryingOn } = writtenPath({ ...problem, sale }, new Float64Array(600).fill(40), between);
    expect((1 - factor) * benefit + factor * carryingOn[1]!).toBeCloseTo(reservation, 9);
  });
});

/** Wages 10 to 60 with beta-binomial(50, 200, 100) weights: n! B(k + a, n - k + b) / (k! (n - k)! B(a, b)), by the ratio of neighbours. */
function betaBinomialWages(): { readonly offers: Offers; readonly wages: readonly number[] } {
  const [n, a, b] = [50, 200, 100];
  const weights = [1];
  for (let k = 0; k < n; k++) weights.push((weights[k]! * (n - k) * (k + a)) / ((k + 1) * (n - k - 1 + b)));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const wages = weights.map((_, k) => 10 + k);
  const sum = (of: (wage: number) => number) =>
    wages.reduce((all, wage, k) => all + of(wage) * weights[k]!, 0) / total;
  return {
    wages,
    offers: {
      below: (x) => sum((wage) => (wage < x ? 1 : 0)),
      above: (x) => sum((wage) => (wage >= x ? wage : 0)),
      density: () => 0,
      range: { lowest: 9, highest: 61 },
    },
  };
}
