import { DESIRABILITY, ORIGINALITY } from "../words/fields.ts";
import { type CellReader, choice, currency, line, pastDay, price, share, words, yearMade } from "./cells.ts";
import { partOf } from "./parts.ts";
import type { PartPrice, Sale } from "./sale.ts";
import { CONDITIONS, KINDS, STATES } from "./saleWords.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** A column of a file: the field it fills and how its cells are read. */
export interface Column<Row> {
  readonly name: string;
  readonly field: keyof Row & string;
  readonly needed: boolean;
  /** What stands in it, for the user. */
  readonly meaning: string;
  /** The words that may stand in it; empty where it takes anything of its kind. */
  readonly values: readonly string[];
  readonly read: CellReader<unknown>;
}

/** A column that every file may have and nobody reads: remarks, faults in rejected rows, the mark of an example. */
export const NOTE = "note";
/** Marks the row of a template that shows what a row looks like. It is left out when the file is read. */
export const EXAMPLE = "Invented example: remove this row";

/** The columns of a file of sales, in the order they are written. */
export function saleColumns({ choices }: Vocabulary): readonly Column<Sale>[] {
  const word = (
    name: string,
    field: keyof Sale,
    of: readonly { value: string; label: string }[],
    meaning: string,
  ) =>
    column<Sale>(
      name,
      field,
      meaning,
      choice(of),
      of.map(({ value }) => value),
    );
  return [
    needed(column("price", "price", "what it sold for or was offered at, more than 0", price)),
    needed(column("currency", "currency", "three letters (ISO 4217); one currency for everything", currency)),
    needed(word("kind", "kind", KINDS, "paid in the end, or only asked")),
    needed(column("date", "date", "day of the sale or the advert, year-month-day (ISO 8601)", pastDay)),
    column("name", "name", "what you call it, at most 120 letters", line),
    word("category", "category", choices.category, "what kind it is"),
    word("era", "era", choices.era, "when it was made"),
    column("year", "year", "the year it was made, where you know it; era may then stay empty", yearMade),
    word("material", "frameMaterial", choices.frameMaterial, "what the frame is made of"),
    word("tier", "componentTier", choices.componentTier, "how good its parts were when new"),
    word("size", "sizeClass", choices.sizeClass, "size of the frame"),
    word("place", "place", choices.place, "where it was sold"),
    word("drivetrain", "drivetrain", choices.drivetrain, "its gears"),
    word("step-through", "stepThrough", choices.stepThrough, "low step-through frame"),
    word("state", "state", STATES, "what could be done with it when it was sold; empty is unknown"),
    column("condition", "condition", `0 to 1, of one that rides: ${scale(CONDITIONS)}`, share(CONDITIONS)),
    column("originality", "originality", `0 to 1: ${scale(ORIGINALITY)}`, share(ORIGINALITY)),
    column(
      "desirability",
      "desirability",
      `0 to 1, what is sought after: ${scale(DESIRABILITY)}`,
      share(DESIRABILITY),
    ),
    column("same model as", "sameModelAs", "ids of your finds, as the export writes them", words),
  ];
}

/** The columns of a price book, in the order they are written. */
export function priceBookColumns({ parts }: Vocabulary): readonly Column<PartPrice>[] {
  return [
    needed(
      column("part", "part", "id or name of a part, consumable or service of the catalogue", partOf(parts)),
    ),
    needed(column("price", "price", "what one costs you, more than 0", price)),
    needed(column("currency", "currency", "three letters (ISO 4217)", currency)),
  ];
}

function column<Row>(
  name: string,
  field: keyof Row & string,
  meaning: string,
  read: CellReader<unknown>,
  values: readonly string[] = [],
): Column<Row> {
  return { name, field, needed: false, meaning, values, read };
}

function needed<Row>(one: Column<Row>): Column<Row> {
  return { ...one, needed: true };
}

function scale(choices: readonly { value: string; label: string }[]): string {
  return choices.map(({ value, label }) => `${value} ${label.toLowerCase()}`).join("; ");
}
