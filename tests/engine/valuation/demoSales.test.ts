import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { drawSales } from "../../../data/scripts/drawSales.ts";
import { fitValueModel, type ValueFit } from "../../../data/scripts/fitValueModel.ts";
import { salesFromCsv, salesToCsv } from "../../../data/scripts/saleCsv.ts";
import { designOf, logWidth, VALUE_DRIVERS } from "../../../data/scripts/valueDrivers.ts";
import { valueModelText } from "../../../data/scripts/valueFiles.ts";
import { ERAS, TIERS } from "../../../worker/engine/bicycle.ts";
import { leverage } from "../../../worker/engine/statistics/leastSquares.ts";
import type { SaleDescription } from "../../../worker/engine/valuation/saleDescription.ts";
import { denseRow } from "../../../worker/engine/valuation/valueBelief.ts";
import { PRICED_CATEGORIES } from "../../../worker/engine/valuation/valueLayout.ts";
import { valueRow } from "../../../worker/engine/valuation/valueRow.ts";
import { plainSale } from "./plainSale.ts";
import { trueCoefficient } from "./trueCoefficients.ts";
import { WORKED } from "./workedSales.ts";

function dataFile(name: string): string {
  return readFileSync(new URL(`../../../data/${name}`, import.meta.url), "utf8");
}

const CSV = dataFile("demo-sales.csv");
const SALES = salesFromCsv(CSV);

describe("the invented sales", () => {
  test("are those that the script draws, byte for byte", () => {
    expect(salesToCsv(drawSales(VALUE_DRIVERS)) === CSV).toBe(true);
  });

  test("cover every category and tier with a hundred or more, at a price above nought", () => {
    expect(SALES.length).toBeGreaterThanOrEqual(6000);
    for (const category of PRICED_CATEGORIES) {
      for (const tier of ["entry", "mid", "upper", "top"]) {
        const cell = SALES.filter(
          ({ description: { attributes } }) =>
            attributes.category === category && attributes.componentTier === tier,
        );
        expect(cell.length, `${category} ${tier}`).toBeGreaterThanOrEqual(100);
      }
    }
    expect(SALES.every(({ price }) => price > 0)).toBe(true);
  });

  test("another seed draws other sales", () => {
    expect(salesToCsv(drawSales(VALUE_DRIVERS, 1)) === CSV).toBe(false);
  });
});

describe("the fit to the invented sales", () => {
  const design = designOf(VALUE_DRIVERS);
  let fit: ValueFit;
  beforeAll(() => {
    fit = fitValueModel(design, SALES);
  }, 120_000);

  test("is the model in data/, byte for byte", () => {
    expect(valueModelText(design, fit) === dataFile("value-model.json")).toBe(true);
  });

  test("recovers every driver within four standard errors, and the errors are as large as they claim", () => {
    const { layout, fit: found } = fit;
    const misses = layout.names
      .slice(layout.demo.start, layout.demo.start + layout.demo.size)
      .map((name, column) => {
        const miss = found.coefficients[column]! - trueCoefficient(VALUE_DRIVERS, name);
        return { name, inErrors: miss / found.standardErrors[column]! };
      });
    expect(misses.filter(({ inErrors }) => !(Math.abs(inErrors) < 4))).toEqual([]);
    // The mean of 160 squares near 1: its own standard deviation is about sqrt(2 / 160) = 0.11, more as columns share sales.
    const meanSquare = misses.reduce((sum, { inErrors }) => sum + inErrors ** 2, 0) / misses.length;
    expect(meanSquare).toBeGreaterThan(0.5);
    expect(meanSquare).toBeLessThan(1.7);
  });

  test("recovers the residual spread within four standard errors", () => {
    // Between the 10 and 90 % points of a normal lie 2 x 1.2815515655446 standard deviations.
    const truth = logWidth(VALUE_DRIVERS.spread.ordinary) / (2 * 1.2815515655446);
    const error = truth / Math.sqrt(2 * fit.fit.degreesOfFreedom);
    expect(Math.abs(fit.fit.residualSd - truth)).toBeLessThan(4 * error);
  });

  test("leaves below 3.5 % of an ordinary bike's median unknown, below 5 % of any plain one's", () => {
    const { start, size } = fit.layout.demo;
    const unknown = (sale: SaleDescription) => {
      const row = denseRow(valueRow(fit.layout, sale), fit.layout.names.length);
      return fit.fit.residualSd * Math.sqrt(leverage(fit.fit.triangle, row.subarray(start, start + size)));
    };
    for (const [name, sale] of WORKED) expect(unknown(sale), name).toBeLessThan(0.035);
    for (const category of PRICED_CATEGORIES as SaleDescription["attributes"]["category"][]) {
      for (const componentTier of TIERS) {
        for (const era of ERAS) {
          const name = `${category} ${componentTier} ${era}`;
          expect(unknown(plainSale({ category, componentTier, era })), name).toBeLessThan(0.05);
        }
      }
    }
  });

  test("meets sales on both sides of the limits on circumstances, and settles", () => {
    expect(fit.limited).toBeGreaterThan(100);
    expect(fit.limited).toBeLessThan(SALES.length / 4);
    expect(fit.rounds).toBeLessThan(10);
  });
});
