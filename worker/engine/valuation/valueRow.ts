import { DomainError } from "../domainError.ts";
import { requirePriced, restorationInterest, termHolds } from "./bikeClass.ts";
import { CIRCUMSTANCES, type Driver } from "./driver.ts";
import { originalityEntries, stateEntries } from "./rowEntries.ts";
import type { PricedAttributes, SaleDescription } from "./saleDescription.ts";
import { PRICED_CATEGORIES, REFERENCE, type ValueLayout } from "./valueLayout.ts";

/** A row of the regression without its noughts. */
export interface ValueEntries {
  readonly columns: readonly number[];
  readonly values: readonly number[];
}

/** Such a row with the driver of each entry. */
export interface ValueRow extends ValueEntries {
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
  addEntries(row, "condition", stateEntries(layout, sale.attributes.componentTier, interest, sale.state));
  if (!sale.asFound) addPresented(row, layout, sale, interest);
  addSeason(row, layout, sale.month);
  return row;
}

/** Adds the level of one's own market, which the demo sales do not know. */
export function addMarket(row: ValueRow, layout: ValueLayout, category: string): ValueRow {
  add(row, "market", layout.market, 1);
  add(row, "market", layout.marketOfCategory[category]!, 1);
  return row;
}

/** Adds this very model's difference from others of its description. */
export function addSameModel(row: ValueRow, layout: ValueLayout, spread: number): ValueRow {
  add(row, "same-model", layout.sameModel, spread);
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

function addPresented(row: ValueRow, layout: ValueLayout, sale: SaleDescription, interest: number): void {
  const { originality, presentation, papers, attributes } = sale;
  addEntries(row, "originality", originalityEntries(layout, originality));
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

function addEntries(row: ValueRow, driver: Driver, entries: readonly number[]): void {
  for (let at = 0; at < entries.length; at += 2) add(row, driver, entries[at]!, entries[at + 1]!);
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
