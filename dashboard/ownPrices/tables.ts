import { priceBookColumns, saleColumns } from "./columns.ts";
import type { Table } from "./readTable.ts";
import { MOST_SALES, type PartPrice, type Sale } from "./sale.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** How a file of sales is read. */
export function salesTable(vocabulary: Vocabulary): Table<Sale> {
  const eras = vocabulary.choices.era.map(({ value }) => value);
  return {
    columns: saleColumns(vocabulary),
    most: MOST_SALES,
    check({ era, year }) {
      if (era === undefined || year === undefined || eraOf(year, eras) === era) return null;
      return { column: "year", message: `${year} is not in the era ${era}. Correct one, or leave it empty.` };
    },
  };
}

/** The era a year falls in: the last whose first year is not after it, else the first of all. */
function eraOf(year: number, eras: readonly string[]): string | undefined {
  return eras.findLast((era) => year >= Number.parseInt(era, 10)) ?? eras[0];
}

/** How a price book is read: one price for each part. */
export function priceBookTable(vocabulary: Vocabulary): Table<PartPrice> {
  const seen = new Map<string, number>();
  return {
    columns: priceBookColumns(vocabulary),
    most: vocabulary.parts.length,
    check({ part, price }) {
      const before = seen.get(part);
      if (before !== undefined && before !== price) {
        return {
          column: "part",
          message: `${part} already has the price ${before} above. Keep one of the two.`,
        };
      }
      seen.set(part, price);
      return null;
    },
  };
}
