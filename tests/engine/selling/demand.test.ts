import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buyingRates, poissonBuyers } from "../../../worker/engine/selling/demand/arrivals.ts";
import { curveOfBand, goingRates } from "../../../worker/engine/selling/demand/goingRates.ts";
import { postedWeeks } from "../../../worker/engine/selling/demand/postedWeeks.ts";
import { postedSale } from "../../../worker/engine/selling/demand/posting.ts";
import { writtenPrices } from "../../../worker/engine/selling/demand/priceGrid.ts";
import { optimalPath } from "../../../worker/engine/selling/demand/pricePath.ts";
import { ratePoints } from "../../../worker/engine/selling/demand/ratePoints.ts";
import { weekFigures } from "../../../worker/engine/selling/demand/saleWeek.ts";
import { seasonsOf, seasonWeeks } from "../../../worker/engine/selling/demand/season.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { posting } from "./anyPosting.ts";

const BAND = { p10: 70, p50: 120, p90: 260 };
const anyPrice = fc.double({ min: 5, max: 900, noNaN: true });

describe("nodes of a going rate", () => {
  test("their points are those of the band, as near as the nodes lie", () => {
    const { logRates, weights } = goingRates([curveOfBand(BAND)], 0.2, 8);
    const points = ratePoints(logRates, weights);
    for (const point of ["p10", "p50", "p90"] as const) expect(points[point] / BAND[point]).toBeCloseTo(1, 2);
    expect(weights.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
  });

  test.each([1, 1.3, 2])(
    "are close enough: six times as many change a plan's worth by less than a thousandth (spread %d)",
    (spread) => {
      const terms = {
        p50: 200,
        above: spread,
        below: spread ** 0.7,
        weeks: 10,
        arrivals: 2,
        storage: 1,
        quickSale: 0.5,
        fee: 0,
      };
      const [few, many] = [1, 6].map((fineness) => optimalPath(postedSale(posting(terms), fineness))) as [
        ReturnType<typeof optimalPath>,
        ReturnType<typeof optimalPath>,
      ];
      expect(Math.abs(few.worth / many.worth - 1)).toBeLessThan(1e-3);
      expect(few.prices[0]! / many.prices[0]!).toBeCloseTo(1, 2);
    },
  );
});

describe("a week at a price", () => {
  const rates = goingRates([curveOfBand(BAND)], 0.2);
  const season = [{ arrivals: 1.5, logRate: 0.05 }];
  const arrivals = poissonBuyers(rates, { logCentre: -0.25, logSd: 0.2 }, season);

  test("slopes are those of the figures", () => {
    const sale = postedWeeks(arrivals, {
      storagePerWeek: 2,
      fee: { rate: 0.05, fixed: 3 },
      discountPerWeek: 0.001,
    });
    const [here, up, down] = [0, 1, 2].map(() => weekFigures(arrivals.nodes)) as [
      ReturnType<typeof weekFigures>,
      ReturnType<typeof weekFigures>,
      ReturnType<typeof weekFigures>,
    ];
    fc.assert(
      fc.property(anyPrice, (price) => {
        const by = 1e-5 * price;
        sale.at(0, price, here);
        sale.at(0, price + by, up);
        sale.at(0, price - by, down);
        for (let node = 0; node < arrivals.nodes; node++) {
          const size = 1 + Math.abs(here.gainSlope[node]!);
          expect(
            Math.abs(here.gainSlope[node]! - (up.gain[node]! - down.gain[node]!) / (2 * by)),
          ).toBeLessThan(1e-4 * size);
          expect(here.leftSlope[node]!).toBeCloseTo((up.left[node]! - down.left[node]!) / (2 * by), 6);
        }
      }),
    );
  });

  test("in seven days a week: the same price for parts of it comes to the same", () => {
    const terms = { storagePerWeek: 2, fee: { rate: 0.05, fixed: 0 }, discountPerWeek: 0.02 };
    const [whole, day] = [weekFigures(arrivals.nodes), weekFigures(arrivals.nodes)];
    postedWeeks(arrivals, terms).at(0, 110, whole);
    postedWeeks(arrivals, terms, 1 / 7).at(0, 110, day);
    for (let node = 0; node < arrivals.nodes; node++) {
      let [gain, left] = [0, 1];
      for (let at = 0; at < 7; at++) [gain, left] = [gain + left * day.gain[node]!, left * day.left[node]!];
      expect(gain).toBeCloseTo(whole.gain[node]!, 9);
      expect(left).toBeCloseTo(whole.left[node]!, 12);
    }
  });

  test("fewer buyers take a higher price, and more where the going rate is higher", () => {
    const [low, high] = [buyingRates(arrivals.nodes), buyingRates(arrivals.nodes)];
    arrivals.at(0, 90, low);
    arrivals.at(0, 95, high);
    for (let node = 0; node < arrivals.nodes; node++) {
      expect(high.rate[node]!).toBeLessThanOrEqual(low.rate[node]!);
      if (node > 0) expect(low.rate[node]!).toBeGreaterThanOrEqual(low.rate[node - 1]!);
    }
  });
});

describe("asking prices that people write", () => {
  const STEPS = BOOK.catalogue.selling.priceSteps;

  test("are steps that grow with the price, on and on", () => {
    expect(writtenPrices(STEPS, 93, 121)).toEqual([90, 95, 100, 110, 120, 130]);
    expect(writtenPrices(STEPS, 290, 340)).toEqual([290, 300, 325, 350]);
    expect(writtenPrices(STEPS, 980, 1190)).toEqual([975, 1000, 1100, 1200]);
    expect(writtenPrices(STEPS, 29_500, 33_000)).toEqual([29_000, 30_000, 32_500, 35_000]);
    expect(writtenPrices(STEPS, 7.4, 8)).toEqual([7, 8]);
    expect(writtenPrices(STEPS, 0.42, 0.52)).toEqual([0.4, 0.5, 0.6].map((one) => expect.closeTo(one, 9)));
  });

  test("enclose what they are asked to, rising", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 1e8, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        (low, factor) => {
          const prices = writtenPrices(STEPS, low, low * factor);
          expect(prices[0]!).toBeLessThanOrEqual(low * (1 + 1e-8));
          expect(prices.at(-1)!).toBeGreaterThanOrEqual(low * factor * (1 - 1e-8));
          for (let at = 1; at < prices.length; at++) expect(prices[at]!).toBeGreaterThan(prices[at - 1]!);
          expect(prices.length).toBeLessThan(200);
        },
      ),
    );
  });
});

describe("seasons", () => {
  const seasons = seasonsOf(BOOK.catalogue.selling, BOOK.value.initial);

  test("start from the month of listing as it is, and pass evenly into the next", () => {
    const weeks = seasonWeeks(seasons, 12, 10, 2);
    expect(weeks).toHaveLength(11);
    expect(weeks[0]).toEqual({ arrivals: 2 * seasons.arrivals[11]!, logRate: 0 });
    expect(weeks[10]!.logRate).toBeGreaterThan(weeks[2]!.logRate);
    for (let week = 1; week <= 10; week++)
      expect(Math.abs(weeks[week]!.arrivals - weeks[week - 1]!.arrivals)).toBeLessThan(0.25);
  });

  test("held for a year, all is as it was; with no month every week is alike", () => {
    const now = seasonWeeks(seasons, 3, 6, 1.5);
    seasonWeeks(seasons, 3, 6, 1.5, 12).forEach(({ arrivals, logRate }, week) => {
      expect(arrivals).toBeCloseTo(now[week]!.arrivals, 9);
      expect(logRate).toBeCloseTo(now[week]!.logRate, 9);
    });
    expect(new Set(seasonWeeks(seasons, null, 6, 1.5).map(({ arrivals }) => arrivals))).toEqual(
      new Set([1.5]),
    );
  });
});
