import { readFileSync } from "node:fs";
import { fittedModel, fitValueModel } from "../../../data/scripts/fitValueModel.ts";
import { salesFromCsv } from "../../../data/scripts/saleCsv.ts";
import { designOf, VALUE_DRIVERS } from "../../../data/scripts/valueDrivers.ts";
import priorTable from "../../../data/value-prior.json" with { type: "json" };
import { predict } from "../../../worker/engine/valuation/prediction.ts";
import { denseRow } from "../../../worker/engine/valuation/valueBelief.ts";
import { valueLayout } from "../../../worker/engine/valuation/valueLayout.ts";
import { compileModel } from "../../../worker/engine/valuation/valueModel.ts";
import { valueRow } from "../../../worker/engine/valuation/valueRow.ts";
import type { ValuePrior } from "../../../worker/engine/valuation/valueTables.ts";
import { crpsStudentT } from "./crps.ts";
import type { Forecaster, Prices } from "./forecasters.ts";

const PRIOR = priorTable as unknown as ValuePrior;
const DESIGN = designOf(VALUE_DRIVERS);
const LAYOUT = valueLayout(DESIGN);
const { start: START, size: SIZE } = LAYOUT.demo;
/** No effect held to anything; so near as to be known. */
const [LOOSE, KNOWN] = [1000, 1e-6];

const SALES = salesFromCsv(readFileSync(new URL("../../../data/demo-sales.csv", import.meta.url), "utf8"));

/** The invented sales by the value model's columns; a kind is category, tier and state. */
export const DEMO_SALES: Prices = {
  rows: SALES.map(({ description }) =>
    Array.from(denseRow(valueRow(LAYOUT, description), LAYOUT.names.length).subarray(START, START + SIZE)),
  ),
  y: SALES.map(({ price }) => Math.log(price)),
  kind: SALES.map(({ description: { attributes, state } }) =>
    [attributes.category, attributes.componentTier, state.kind].join(" "),
  ),
};

/** The value model, fitted as at build time but with every learned sale at its full weight, of the market they come from. */
export const valueModelForecaster: Forecaster = (learned) => {
  const prior: ValuePrior = {
    ...PRIOR,
    demoSalesCount: learned.length,
    marketSd: KNOWN,
    marketOfCategorySd: KNOWN,
    driverSd: Object.fromEntries(
      Object.keys(PRIOR.driverSd).map((driver) => [driver, LOOSE]),
    ) as unknown as ValuePrior["driverSd"],
  };
  const fit = fitValueModel(
    DESIGN,
    learned.map((row) => SALES[row]!),
  );
  const { initial } = compileModel(fittedModel(DESIGN, fit, prior), prior);
  return (row) => {
    const { description, price } = SALES[row]!;
    const { logMedian, logScale, tails } = predict(initial, description);
    return crpsStudentT(Math.log(price), logMedian, logScale, tails.degreesOfFreedom);
  };
};
