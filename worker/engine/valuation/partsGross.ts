import { DomainError } from "../domainError.ts";
import type { Money, Probability } from "../quantity.ts";
import type { PricedAttributes } from "./saleDescription.ts";
import type { PartsValueTable } from "./valueTables.ts";

/**
 * What all the parts of a whole bike would fetch if every piece sold, before unsold pieces, fee and post:
 * ready value x share by tier x category factor x haircut where frame or fork cannot be sold x (1 - spoiled).
 * Common practice, no source.
 * @param ready the bike's ready value from kind, era, material and size alone (readyBase), with no fashion bonus
 * @param frameUnsaleable frame or fork is condemned
 * @param spoiledShare 0 to 1: share of the parts' worth in pieces that findings spoil
 * @throws DomainError for a share outside 0 to 1, or a category without a factor in a table that has no "default"
 */
export function partsGross(
  table: PartsValueTable,
  ready: Money,
  bike: PricedAttributes,
  frameUnsaleable: boolean,
  spoiledShare: Probability,
): Money {
  if (!(spoiledShare >= 0 && spoiledShare <= 1)) {
    throw new DomainError("out-of-domain", "spoiledShare", spoiledShare, "a number from 0 to 1");
  }
  const factor = table.category[bike.category] ?? table.category.default;
  if (factor === undefined) {
    throw new DomainError("inconsistent-table", "category", bike.category, "a factor in the parts table");
  }
  const haircut = frameUnsaleable ? table.frameUnsaleable[bike.componentTier] : 1;
  return ready * table.grossShare[bike.componentTier] * factor * haircut * (1 - spoiledShare);
}
