import { curveOf } from "./goingRates.ts";
import { type PostedSale, type Posting, postedSale } from "./posting.ts";
import { optimalPath, type PricePath, type Search } from "./pricePath.ts";

/** A posting with its best path. */
export interface PlannedPosting {
  readonly sale: PostedSale;
  readonly path: PricePath;
}

/**
 * The best path of a posting, begun from the one there would be if the going rate were known to be its median: that is found in no time.
 * @param fineness divides the step between going rates: below 1 for a rough answer
 */
export function bestPath(
  posting: Posting,
  fineness = 1,
  search: Omit<Search, "start"> = { last: "whole" },
): PlannedPosting {
  const sale = postedSale(posting, fineness);
  return { sale, path: optimalPath(sale, { ...search, start: knownPrices(posting, search) }) };
}

function knownPrices(posting: Posting, { end }: Search): Float64Array {
  const curves = posting.curves.map(({ logMedian, chance }) => curveOf({ logMedian, logSd: 0 }, chance));
  return optimalPath(postedSale({ ...posting, curves }), { last: "near", ...(end && { end }) }).prices;
}
