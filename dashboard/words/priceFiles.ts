import { many } from "./ownPrices.ts";

/** Texts of the files of one's own sales and prices: what stands in them, reading them, and keeping them. */
export const FILE_TITLE = "Read them from a file";
export const FILE_FACTS =
  "Sales or a price book, as a table with commas, semicolons or tabs between its cells (CSV). Good rows are kept, the others told one by one.";
export const FILE_CHOOSE = "Choose a file";
export const FILE_DROP = "or drop it here";
export const FILE_SALES_TEMPLATE = "Template for sales";
export const FILE_PRICES_TEMPLATE = "Template for a price book";
export const FILE_NOT_LOADED = "What reads files did not load. Choose the file again once there is a signal.";
export const FILE_TOO_LARGE = "This file is larger than 5 MB, so it was not read. Split it.";
export const COLUMN_TITLE = "Columns";
export const COLUMN_SALES = "Sales";
export const COLUMN_PRICES = "Price book";
export const COLUMN_PARTS = "Parts by id and name";
export const COLUMN_NAME = "Column";
export const COLUMN_MEANING = "What stands in it";
export const COLUMN_NEEDED = "needed";
export const KEPT_TITLE = "Kept in this browser alone";
export const KEPT_FACTS = "Cleared with the browser's data. A file keeps them, and is read back above.";
export const KEPT_SALES = "Download your sales";
export const KEPT_PRICES = "Download your prices";
export const KEPT_REMOVE_ALL = "Remove all";

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
