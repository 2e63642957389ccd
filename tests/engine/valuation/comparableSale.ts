import type { Comparable } from "../../../worker/engine/valuation/comparable.ts";
import type { Reading } from "../../../worker/engine/valuation/learnFromSales.ts";
import { plainSale } from "./plainSale.ts";

/** A paid price of the plain reference bike, ready to ride, with changes. */
export function comparable(changes: Partial<Comparable> = {}): Comparable {
  const { attributes } = plainSale();
  return { price: 200, kind: "paid", ageDays: 0, likeThis: false, attributes, condition: 0.75, ...changes };
}

/** Read at the table's level for a find that is the plain reference bike; prices paid are going rates, to keep sums simple. */
export const READING: Reading = {
  paidShare: { rides: 1, notRiding: 1 },
  logPriceLevel: 0,
  like: plainSale().attributes,
};
