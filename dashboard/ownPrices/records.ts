import Papa from "papaparse";

/** A record of a file with the line it begins on, counted from 1. */
export interface FileRecord {
  readonly line: number;
  readonly cells: readonly string[];
  /** What is wrong with its quotation marks; null where nothing is. */
  readonly broken: string | null;
}

export interface FileRecords {
  readonly separator: "," | ";" | "\t";
  /** Records that hold anything, the header first. */
  readonly records: readonly FileRecord[];
}

const SEPARATORS = [",", ";", "\t"] as const;

/**
 * Splits a text into records and cells by the rules of RFC 4180, with comma, semicolon or tab between cells, whichever
 * the header holds most of. A byte order mark and any kind of line end are taken; empty lines are passed over, and so
 * is a first line "sep=;" that spreadsheets write.
 */
export function recordsIn(text: string): FileRecords {
  const plain = text.replace(/^\ufeff/, "").replace(/\r\n?/g, "\n");
  const told = /^sep=([,;\t])\n/i.exec(plain)?.[1] as FileRecords["separator"] | undefined;
  const separator = told ?? separatorOf(plain);
  const { data, errors } = Papa.parse<string[]>(plain, { delimiter: separator, newline: "\n" });
  const broken = new Map(errors.map(({ row, code }) => [row, code]));
  const records: FileRecord[] = [];
  let line = 1;
  for (const [i, cells] of data.entries()) {
    const trimmed = cells.map((cell) => unguarded(cell.trim()));
    const skipped = told !== undefined && i === 0;
    if (!skipped && trimmed.some((cell) => cell !== "")) {
      records.push({ line, cells: trimmed, broken: broken.has(i) ? quotesWrong(broken.get(i)) : null });
    }
    // A quoted cell may hold line ends: the next record begins so many lines further down.
    line += 1 + cells.reduce((sum, cell) => sum + cell.split("\n").length - 1, 0);
  }
  return { separator, records };
}

function separatorOf(text: string): FileRecords["separator"] {
  const header = (text.trimStart().split("\n", 1)[0] ?? "").replace(/"[^"]*"/g, "");
  const most = (a: string, b: string) => header.split(b).length - header.split(a).length;
  return [...SEPARATORS].sort(most)[0] ?? ",";
}

function quotesWrong(code: string | undefined): string {
  return code === "MissingQuotes"
    ? "A quotation mark opens in this row and never closes. Close it; what follows could not be read."
    : "A quotation mark stands where none can. Write it twice inside a quoted cell.";
}

/** Text that a spreadsheet would take for a formula; an apostrophe before it keeps it text. */
const FORMULA = /^'*[=+\-@\t\r]/;

/** A text as a cell that no spreadsheet runs as a formula (OWASP, "CSV Injection"). */
export function guarded(text: string): string {
  return FORMULA.test(text) ? `'${text}` : text;
}

/** Takes back what `guarded` adds. */
function unguarded(cell: string): string {
  return cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell;
}

/** A number as a cell: a decimal point, never an exponent, which no reader of figures takes. A minus before it is no formula. */
export function numberCell(value: number): string {
  return value.toLocaleString("en", { useGrouping: false, maximumFractionDigits: 4 });
}

/** Writes records with commas, quoted where RFC 4180 asks for it, every line ended by CR LF. */
export function csvOf(records: readonly (readonly string[])[]): string {
  return `${Papa.unparse(records as string[][], { newline: "\r\n" })}\r\n`;
}
