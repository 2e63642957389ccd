import { DomainError } from "../domainError.ts";
import type { Probability } from "../quantity.ts";
import { requirePriced, restorationInterest, termHolds } from "./bikeClass.ts";
import { add, type ValueRow } from "./rowEntries.ts";
import type { PricedAttributes, SaleDescription } from "./saleDescription.ts";
import { PRICED_CATEGORIES, type ValueLayout } from "./valueLayout.ts";

/** What the sales of one bike share in whatever state it is: what it is, how original and how desirable. */
export type Bike = Pick<SaleDescription, "attributes" | "originality" | "desirability">;

/** A bike as its sales begin in the regression. */
export interface BikeStart {
  readonly row: ValueRow;
  /** See restorationInterest. */
  readonly interest: Probability;
  /** See spreadMultiple. */
  readonly spread: number;
}

/**
 * The part of the rows that all sales of a bike share: worked out once where several of them are priced.
 * @throws DomainError for a category without a price or a share outside 0 to 1
 */
export function bikeStart(layout: ValueLayout, { attributes, originality, desirability }: Bike): BikeStart {
  requireShare("originality", originality);
  requireShare("desirability", desirability);
  const { fashion, interest } = layout.design;
  const row = bikeRow(layout, attributes);
  fashion.forEach((term, index) => {
    if (termHolds(term, attributes, originality)) add(row, "fashion", layout.fashion[index]!, 1);
  });
  add(row, "desirability", layout.desirability, desirability);
  return {
    row,
    interest: restorationInterest(interest, attributes),
    spread: spreadMultiple(layout, { attributes, originality }),
  };
}

/** Multiple of the ordinary residual spread for a bike: above 1 for collectable kinds, whose prices scatter more. */
export function spreadMultiple(
  { design }: ValueLayout,
  { attributes, originality }: Pick<Bike, "attributes" | "originality">,
): number {
  const { any, spread } = design.collectable;
  return any.some((term) => termHolds(term, attributes, originality)) ? spread : 1;
}

/** Level, kind, era, material and size alone: the bike sold ready to ride, with nothing said in its favour. */
export function bikeRow(layout: ValueLayout, bike: PricedAttributes): ValueRow {
  requirePriced(bike.category, PRICED_CATEGORIES);
  const row: ValueRow = { columns: [], values: [], drivers: [] };
  add(row, "level", layout.intercept, 1);
  add(row, "kind", layout.kind[bike.category]![bike.componentTier], 1);
  add(row, "era", layout.era[bike.category]![bike.era], 1);
  layout.design.material.forEach((term, index) => {
    if (termHolds(term, bike, 1)) add(row, "material", layout.material[index]!, 1);
  });
  add(row, "size", layout.size[bike.sizeClass]!, 1);
  return row;
}

/** Refuses what is no share, 0 to 1. */
export function requireShare(argument: string, value: number): void {
  if (value >= 0 && value <= 1) return;
  throw new DomainError("out-of-domain", argument, value, "a number from 0 to 1");
}
