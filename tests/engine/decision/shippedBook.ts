import { compileBook } from "../../../worker/engine/decision/book.ts";
import { readCatalogue } from "../../../worker/tables.ts";

/** The product's own tables, compiled once for a file of tests. */
export const BOOK = compileBook(readCatalogue());
