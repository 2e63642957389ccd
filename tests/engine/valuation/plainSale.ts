import type { PricedAttributes, SaleDescription } from "../../../worker/engine/valuation/saleDescription.ts";

/** A plain bike sold ready to ride; what a test is about replaces a field. */
export function plainSale(
  bike: Partial<PricedAttributes> = {},
  sale: Partial<Omit<SaleDescription, "attributes">> = {},
): SaleDescription {
  return {
    attributes: {
      category: "hybrid",
      era: "2010s",
      frameMaterial: "steel",
      componentTier: "mid",
      sizeClass: "middle",
      place: "town",
      stepThrough: "no",
      drivetrain: "derailleur",
      ...bike,
    },
    originality: 0.8,
    desirability: 0,
    state: { kind: "rides", condition: 0.75 },
    asFound: false,
    presentation: "plain",
    papers: "bill",
    month: 7,
    ...sale,
  };
}
