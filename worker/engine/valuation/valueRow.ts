import type { Tier } from "../bicycle.ts";
import { DomainError } from "../domainError.ts";
import { requirePriced, restorationInterest, termHolds } from "./bikeClass.ts";
import type { PricedAttributes, SaleDescription, SaleState } from "./saleDescription.ts";
import { PRICED_CATEGORIES, REFERENCE, type ValueLayout } from "./valueLayout.ts";

/** What moves a price, in the order it is told. */
export const DRIVERS = [
  "level",
  "kind",
  "era",
  "material",
  "size",
  "fashion",
  "originality",
  "desirability",
  "condition",
  "presentation",
  "papers",
  "season",
  "place",
] as const;
export type Driver = (typeof DRIVERS)[number];

/** The drivers that overlap, so that their product is held between limits. */
export const CIRCUMSTANCES: readonly Driver[] = ["presentation", "papers", "season", "place"];

/** A row of the regression without its noughts. */
export interface ValueRow {
  readonly columns: number[];
  readonly values: number[];
  readonly drivers: Driver[];
}

/**
 * The regression's row for a sale.
 * @throws DomainError for a category without a price, a share outside 0 to 1 or a month outside 1 to 12
 */
export function valueRow(layout: ValueLayout, sale: SaleDescription): ValueRow {
  requireDescription(sale);
  const row = bikeRow(layout, sale.attributes);
  const { design } = layout;
  design.fashion.forEach((term, index) => {
    if (termHolds(term, sale.attributes, sale.originality)) add(row, "fashion", layout.fashion[index]!, 1);
  });
  add(row, "desirability", layout.desirability, sale.desirability);
  const interest = restorationInterest(design.interest, sale.attributes);
  addState(row, layout, sale.attributes.componentTier, interest, sale.state);
  if (!sale.asFound) addPresented(row, layout, sale, interest);
  addSeason(row, layout, sale.month);
  return row;
}

/** The row without the drivers whose product is held between limits: what is left of it where a limit binds. */
export function withoutCircumstances({ columns, values, drivers }: ValueRow): ValueRow {
  const kept = drivers.map((driver) => !CIRCUMSTANCES.includes(driver));
  return {
    columns: columns.filter((_, index) => kept[index]),
    values: values.filter((_, index) => kept[index]),
    drivers: drivers.filter((_, index) => kept[index]),
  };
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

/**
 * Adds the state's columns. Below ready, log price falls in a straight line from knot to knot; above it, only the
 * share of the premium that this kind of bike earns counts.
 * @param interest 0 to 1, see restorationInterest
 */
export function addState(
  row: ValueRow,
  layout: ValueLayout,
  tier: Tier,
  interest: number,
  state: SaleState,
): void {
  if (state.kind !== "rides") {
    add(row, "condition", layout.notRiding[tier][state.kind], 1);
    return;
  }
  const [work, tired, ready, restored] = layout.design.conditionKnots;
  const columns = layout.riding[tier];
  add(row, "condition", columns.needsWork, 1 - along(state.condition, work, tired));
  add(row, "condition", columns.tired, 1 - along(state.condition, tired, ready));
  add(row, "condition", columns.restored, interest * along(state.condition, ready, restored));
}

function addPresented(row: ValueRow, layout: ValueLayout, sale: SaleDescription, interest: number): void {
  const { originality, presentation, papers, attributes } = sale;
  const [changed, mixed, sensible, original] = layout.design.originalityKnots;
  const towardsMixed = 1 - along(originality, mixed, sensible);
  const towardsChanged = 1 - along(originality, changed, mixed);
  // Triangular weights: between two knots the log of price is a straight line.
  add(row, "originality", layout.originality.changed, towardsChanged);
  add(row, "originality", layout.originality.mixed, towardsMixed - towardsChanged);
  add(row, "originality", layout.originality.original, along(originality, sensible, original));
  add(row, "presentation", layout.presentation[presentation], presentation === "full" ? interest : 1);
  add(row, "papers", layout.papers[papers], 1);
  add(row, "place", layout.place[attributes.place]!, 1);
}

/** One month, or the mean of the year's log effects. */
function addSeason(row: ValueRow, layout: ValueLayout, month: number | null): void {
  if (month !== null) {
    add(row, "season", layout.month[month - 1]!, 1);
    return;
  }
  for (const column of layout.month) add(row, "season", column, 1 / layout.month.length);
}

function add({ columns, values, drivers }: ValueRow, driver: Driver, column: number, value: number): void {
  if (column === REFERENCE || value === 0) return;
  columns.push(column);
  values.push(value);
  drivers.push(driver);
}

/** How far x has come from `from` to `to`, held between 0 and 1. */
function along(x: number, from: number, to: number): number {
  return Math.min(1, Math.max(0, (x - from) / (to - from)));
}

function requireDescription({ originality, desirability, state, month }: SaleDescription): void {
  requireShare("originality", originality);
  requireShare("desirability", desirability);
  if (state.kind === "rides") requireShare("condition", state.condition);
  if (month === null || (Number.isInteger(month) && month >= 1 && month <= 12)) return;
  throw new DomainError("out-of-domain", "month", month, "a whole number from 1 to 12");
}

function requireShare(argument: string, value: number): void {
  if (value >= 0 && value <= 1) return;
  throw new DomainError("out-of-domain", argument, value, "a number from 0 to 1");
}
