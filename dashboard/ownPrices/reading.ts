/** What is wrong in a file, where, and what to do. */
export interface Fault {
  /** Counted from 1, the header included. */
  readonly line: number;
  /** Name of the column; null where the fault is the row's or the file's. */
  readonly column: string | null;
  /** The cell as it was read. */
  readonly read: string;
  /** What is wrong and the remedy, in a sentence. */
  readonly message: string;
}

/** A row that says the same as an earlier one of its file. */
export interface Duplicate {
  readonly line: number;
  /** The line of the first. */
  readonly of: number;
}

/** What came of reading a file. Good rows are kept whatever the others say. */
export interface Reading<Row> {
  readonly rows: readonly Row[];
  readonly faults: readonly Fault[];
  /** Not among the rows a second time. */
  readonly duplicates: readonly Duplicate[];
  /** Rows of a template that were left in the file; not among the rows. */
  readonly examples: number;
  /** The header and the rows at fault, as they stood, to be handed back. */
  readonly rejected: readonly { readonly line: number; readonly cells: readonly string[] }[];
  readonly header: readonly string[];
}
