import { DomainError } from "../domainError.ts";
import type { Money } from "../quantity.ts";
import type { PricedAttributes } from "./saleDescription.ts";
import type { PartsValueTable } from "./valueTables.ts";

/**
 * What the parts of a whole and sound bike fetch, before unsold pieces, fee and post: ready value x share by tier x category factor.
 * Common practice, no source.
 * @param ready the bike's ready value from kind, era, material and size alone (readyBase), with no fashion bonus
 * @throws DomainError for a category without a factor in a table that has no "default"
 */
export function partsGross(
  table: Pick<PartsValueTable, "grossShare" | "category">,
  ready: Money,
  bike: PricedAttributes,
): Money {
  const factor = table.category[bike.category] ?? table.category.default;
  if (factor === undefined) {
    throw new DomainError("inconsistent-table", "category", bike.category, "a factor in the parts table");
  }
  return ready * table.grossShare[bike.componentTier] * factor;
}
