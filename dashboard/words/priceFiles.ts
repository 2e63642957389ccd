import { many } from "./ownPrices.ts";

/** Texts of the files of one's own sales and prices: what stands in them, reading them, and keeping them. */
export const FILE_TEXTS = {
  title: "Read them from a file",
  facts:
    "Sales or a price book, as a table with commas, semicolons or tabs between its cells (CSV). Good rows are kept, the others told one by one.",
  choose: "Choose a file",
  drop: "or drop it here",
  salesTemplate: "Template for sales",
  pricesTemplate: "Template for a price book",
  notLoaded: "What reads files did not load. Choose the file again once there is a signal.",
  tooLarge: "This file is larger than 5 MB, so it was not read. Split it.",
} as const;
export const COLUMN_TEXTS = {
  title: "Columns",
  sales: "Sales",
  prices: "Price book",
  parts: "Parts by id and name",
  name: "Column",
  meaning: "What stands in it",
  needed: "needed",
} as const;
export const KEPT_TEXTS = {
  title: "Kept in this browser alone",
  facts: "Cleared with the browser's data. A file keeps them, and is read back above.",
  sales: "Download your sales",
  prices: "Download your prices",
  removeAll: "Remove all",
} as const;

/**
 * How the columns of a file may stand.
 * @param note name of the column that is not read
 */
export function columnFacts(note: string): string {
  return `Columns may stand in any order, and those that are not needed may be missing. An empty cell is unknown. A decimal comma is read where commas do not separate the cells. "${note}" is for your own remarks and is not read. At most 5,000 sales are kept.`;
}

/** "And 12 more faults; the download names them all." */
export function moreFaults(n: number): string {
  return `And ${many(n, "more fault")}; the download names them all.`;
}

/** "Download the 3 rejected rows". */
export function downloadRejected(n: number): string {
  return `Download the ${n === 1 ? "rejected row" : `${n} rejected rows`}`;
}

/** "Line 12, price.", before what is wrong there. */
export function faultPlace(line: number, column: string | null): string {
  return column === null ? `Line ${line}.` : `Line ${line}, ${column}.`;
}
