import type { ValueDesign } from "../../worker/engine/valuation/valueTables.ts";
import { drawSales } from "./drawSales.ts";
import { fittedModel, fitValueModel, type ValueFit } from "./fitValueModel.ts";
import { jsonText } from "./jsonText.ts";
import { salesFromCsv, salesToCsv } from "./saleCsv.ts";
import { designOf, VALUE_DRIVERS } from "./valueDrivers.ts";

/** The generated files by name, relative to data/. The model is fitted to the sales as written, rounding included. */
export function valueFiles(): ReadonlyMap<string, string> {
  const csv = salesToCsv(drawSales(VALUE_DRIVERS));
  const sales = salesFromCsv(csv);
  const design = designOf(VALUE_DRIVERS);
  return new Map([
    ["demo-sales.csv", csv],
    ["value-model.json", valueModelText(design, fitValueModel(design, sales), sales.length)],
  ]);
}

/** A fitted model as the text of its file. */
export function valueModelText(design: ValueDesign, fit: ValueFit, sales: number): string {
  return `${jsonText(fittedModel(design, fit, sales))}\n`;
}
