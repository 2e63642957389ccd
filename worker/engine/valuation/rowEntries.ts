import type { Tier } from "../bicycle.ts";
import type { Probability } from "../quantity.ts";
import type { Driver } from "./driver.ts";
import type { SaleState } from "./saleDescription.ts";
import { REFERENCE, type ValueLayout } from "./valueLayout.ts";

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

/** Adds an entry, unless it is nought or of the reference bike. */
export function add(
  { columns, values, drivers }: ValueRow,
  driver: Driver,
  column: number,
  value: number,
): void {
  if (column === REFERENCE || value === 0) return;
  columns.push(column);
  values.push(value);
  drivers.push(driver);
}

/** Adds column, value, column, value, ... */
export function addEntries(row: ValueRow, driver: Driver, entries: readonly number[]): void {
  for (let at = 0; at < entries.length; at += 2) add(row, driver, entries[at]!, entries[at + 1]!);
}

/**
 * What a state writes into the row: column, value, column, value, ... Below ready, log price falls in a straight line from knot to knot; above it,
 * only the share of the premium that this kind of bike earns counts.
 * @param interest 0 to 1, see restorationInterest
 */
export function stateEntries(
  layout: ValueLayout,
  tier: Tier,
  interest: Probability,
  state: SaleState,
): readonly number[] {
  if (state.kind !== "rides") return [layout.notRiding[tier][state.kind], 1];
  const [work, tired, ready, restored] = layout.design.conditionKnots;
  const { needsWork, tired: tiredColumn, restored: restoredColumn } = layout.riding[tier];
  const { condition } = state;
  return [
    needsWork,
    1 - along(condition, work, tired),
    tiredColumn,
    1 - along(condition, tired, ready),
    restoredColumn,
    interest * along(condition, ready, restored),
  ];
}

/** What originality, 0 to 1, writes into the row. Triangular weights: between two knots the log of price is a straight line. */
export function originalityEntries(layout: ValueLayout, originality: Probability): readonly number[] {
  const [changed, mixed, sensible, original] = layout.design.originalityKnots;
  const towardsMixed = 1 - along(originality, mixed, sensible);
  const towardsChanged = 1 - along(originality, changed, mixed);
  return [
    layout.originality.changed,
    towardsChanged,
    layout.originality.mixed,
    towardsMixed - towardsChanged,
    layout.originality.original,
    along(originality, sensible, original),
  ];
}

/** How far x has come from `from` to `to`, held between 0 and 1. */
function along(x: number, from: number, to: number): number {
  return Math.min(1, Math.max(0, (x - from) / (to - from)));
}
