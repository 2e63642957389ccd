import { describe, expect, test } from "vitest";
import { planSale } from "../../../worker/engine/selling/planSale.ts";
import type { SellingRequest } from "../../../worker/engine/selling/sellingRequest.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { playSales } from "./played.ts";

const COUNT = 100_000;
const TENTH = 1.2815515655446004;
const { selling, defaults } = BOOK.catalogue;

const CASES: readonly [string, { p10: number; p50: number; p90: number }, SellingRequest["market"]][] = [
  ["a usual range", { p10: 160, p50: 200, p90: 250 }, {}],
  ["a wide range with unequal sides", { p10: 70, p50: 120, p90: 260 }, { weeks: 20, storagePerWeek: 4 }],
  ["a going rate as good as known", { p10: 399, p50: 400, p90: 401 }, { arrivalsPerWeek: 0.6, weeks: 8 }],
  ["firm prices, many buyers", { p10: 35, p50: 45, p90: 60 }, { haggling: 0, arrivalsPerWeek: 6, weeks: 5 }],
];

describe("a hundred thousand sales played buyer by buyer", () => {
  test.each(CASES)(
    "%s: sold by each week, takings and weeks within four standard errors",
    (_, value, market) => {
      const plan = planSale({ subject: { value, currency: undefined }, market, offer: null }, BOOK);
      const played = playSales(
        plan,
        {
          logMedian: Math.log(value.p50),
          sdBelow: Math.log(value.p50 / value.p10) / TENTH,
          sdAbove: Math.log(value.p90 / value.p50) / TENTH,
          arrivalsPerWeek: plan.market.arrivalsPerWeek,
          usualHaggling: defaults.haggling.rideable,
          centre: selling.willingness.centre,
          logSd: selling.willingness.logSd,
          quickSale: selling.quickSale * (1 - defaults.haggling.rideable),
        },
        COUNT,
        20261126,
      );
      const within = (foretold: number, mean: number, sd: number) =>
        expect(Math.abs(foretold - mean)).toBeLessThan((4 * sd) / Math.sqrt(COUNT));
      plan.path.forEach(({ chanceSold }, week) => {
        within(chanceSold, played.sold[week]!, Math.sqrt(chanceSold * (1 - chanceSold)));
      });
      within(plan.expectedTakings, played.takings.mean, played.takings.sd);
      within(plan.expectedWeeks, played.weeks.mean, played.weeks.sd);
    },
  );
});
