import { fileSentence } from "../words/ownPrices.ts";
import { fileKind, readPriceBook, readSales, rejectedRows } from "./files.ts";
import type { Fault, Reading } from "./reading.ts";
import type { OwnPrices } from "./store.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** What came of taking a file in, as the page tells it. */
export interface Taken {
  readonly said: string;
  readonly faults: readonly Fault[];
  /** Rows that were there twice, as sentences. */
  readonly twice: readonly string[];
  readonly rejected: number;
  /** The rows at fault as a file; null where there is none. */
  readonly rejectedCsv: string | null;
}

/**
 * Reads a file of sales or a price book and keeps its good rows.
 * @param today ISO 8601
 * @param currency ISO 4217
 */
export function take(
  text: string,
  own: OwnPrices,
  vocabulary: Vocabulary,
  today: string,
  currency: string,
): Taken {
  const kind = fileKind(text);
  if (kind === "sales") {
    const reading = readSales(text, vocabulary, today, currency);
    return told(kind, reading, own.addSales(reading.rows));
  }
  const reading = readPriceBook(text, vocabulary, today, currency);
  own.putPartPrices(reading.rows);
  return told(kind, reading, { added: reading.rows.length, already: 0, over: 0 });
}

function told<Row>(
  kind: "sales" | "price-book",
  reading: Reading<Row>,
  kept: { added: number; already: number; over: number },
): Taken {
  const { faults, duplicates, examples, rejected } = reading;
  const counts = { ...kept, rejected: rejected.length, twice: duplicates.length, examples };
  const refused = rejected.length === 0 && faults.length > 0;
  return {
    said: refused ? "The file was not read." : fileSentence(kind, counts),
    faults,
    twice: duplicates.map(({ line, of }) => `Line ${line} says the same as line ${of}.`),
    rejected: rejected.length,
    rejectedCsv: rejected.length === 0 ? null : rejectedRows(reading),
  };
}
