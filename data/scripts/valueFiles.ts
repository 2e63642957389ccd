import type { ValueDesign, ValuePrior } from "../../worker/engine/valuation/valueTables.ts";
import priorTable from "../value-prior.json" with { type: "json" };
import { drawSales } from "./drawSales.ts";
import { fittedModel, fitValueModel, type ValueFit } from "./fitValueModel.ts";
import { jsonText } from "./jsonText.ts";
import { salesFromCsv, salesToCsv } from "./saleCsv.ts";
import { designOf, VALUE_DRIVERS } from "./valueDrivers.ts";

const VALUE_PRIOR: ValuePrior = priorTable as unknown as ValuePrior;

/** The generated files by name, relative to data/. The model is fitted to the sales as written, rounding included. */
export function valueFiles(): ReadonlyMap<string, string> {
  const csv = salesToCsv(drawSales(VALUE_DRIVERS));
  const sales = salesFromCsv(csv);
  const design = designOf(VALUE_DRIVERS);
  return new Map([
    ["demo-sales.csv", csv],
    ["value-model.json", valueModelText(design, fitValueModel(design, sales))],
  ]);
}

/** A fitted model as the text of its file. */
export function valueModelText(design: ValueDesign, fit: ValueFit): string {
  return `${jsonText(fittedModel(design, fit, VALUE_PRIOR))}\n`;
}
