import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

/** A quick sale must bring less than a sale at the going rate after haggling, or nobody would ever wait for one. */
export function* quickSaleGaps({ selling, defaults: { haggling } }: ParsedTables): Generator<TableError> {
  const usual = 1 - Math.max(haggling.asFound, haggling.rideable);
  if (selling.quickSale >= usual)
    yield new TableError(
      FILES.selling,
      null,
      "quickSale",
      `less than ${usual}, what haggling leaves of the going rate, got ${selling.quickSale}`,
    );
}
