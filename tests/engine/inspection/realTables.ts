import { settleAttributes } from "../../../worker/engine/inspection/attributeDefaults.ts";
import { compileInspection } from "../../../worker/engine/inspection/compileInspection.ts";
import type { DescribedAttributes, Dimensions } from "../../../worker/engine/inspection/find.ts";
import type { Inspection } from "../../../worker/engine/inspection/finding.ts";
import { inspect } from "../../../worker/engine/inspection/inspect.ts";
import type { Observations } from "../../../worker/engine/inspection/observation.ts";
import { readCatalogue } from "../../../worker/tables.ts";

/** The product's own tables, compiled. */
export const INDEX = compileInspection(readCatalogue().inspection);

const STEEL: DescribedAttributes = {
  category: "touring",
  era: "1980s",
  frameMaterial: "steel",
  componentTier: "mid",
};

/** One bike inspected with the product's own tables: a steel tourer of the 1980s unless described otherwise. */
export function inspected(
  observations: Observations,
  described: Partial<DescribedAttributes> = {},
  dimensions: Dimensions = {},
): Inspection {
  const attributes = settleAttributes({ ...STEEL, ...described }, INDEX.attributeDefaults);
  return inspect(attributes, dimensions, observations, INDEX);
}

/** The check as the tables have it. */
export function checkOf(id: string) {
  return INDEX.byId.get(id)!.check;
}
