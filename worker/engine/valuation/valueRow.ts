import { DomainError } from "../domainError.ts";
import { bikeStart, requireShare } from "./bikeStart.ts";
import { CIRCUMSTANCES } from "./driver.ts";
import { add, addEntries, originalityEntries, stateEntries, type ValueRow } from "./rowEntries.ts";
import type { SaleDescription } from "./saleDescription.ts";
import type { ValueLayout } from "./valueLayout.ts";

/**
 * The regression's row for a sale.
 * @param start of the sale's own bike
 * @throws DomainError for a category without a price, a share outside 0 to 1 or a month outside 1 to 12
 */
export function valueRow(
  layout: ValueLayout,
  sale: SaleDescription,
  { row: { columns, values, drivers }, interest } = bikeStart(layout, sale),
): ValueRow {
  requireDescription(sale);
  const row: ValueRow = { columns: columns.slice(), values: values.slice(), drivers: drivers.slice() };
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

function requireDescription({ state, month }: SaleDescription): void {
  if (state.kind === "rides") requireShare("condition", state.condition);
  if (month === null || (Number.isInteger(month) && month >= 1 && month <= 12)) return;
  throw new DomainError("out-of-domain", "month", month, "a whole number from 1 to 12");
}
