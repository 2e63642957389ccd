import type { Choice } from "../api/types.ts";
import { isoDay } from "./days.ts";
import { nearest, plainKey } from "./nearest.ts";

/** What a cell says, or what is wrong with it and how to mend it. */
export type Read<T> = { readonly value: T } | { readonly wrong: string };

/** How the cells of a file are to be read. */
export interface Terms {
  /** ISO 4217: the one currency that is kept. */
  readonly currency: string;
  /** ISO 8601. */
  readonly today: string;
  /** Whether a comma separates cells, and so cannot be a decimal comma. */
  readonly commaSeparates: boolean;
}

export type CellReader<T> = (cell: string, terms: Terms) => Read<T>;

/** What the API takes at most. */
const MOST_MONEY = 1e9;
/** What the API takes as a bicycle's year of making. */
const FIRST_YEAR = 1880;
/** A sale before this is a slip of the pen: nobody prices a bike by it. */
const FIRST_SALE = 1950;
const LONGEST_TEXT = 120;

/** A cell as a message repeats it: quoted and cut short. */
export function quoted(cell: string): string {
  return `"${cell.length > 40 ? `${cell.slice(0, 39)}\u2026` : cell}"`;
}

/** A figure with a decimal point; with a decimal comma too where commas do not separate cells. */
export const figure: CellReader<number> = (cell, { commaSeparates }) => {
  const close = cell.replace("\u2212", "-").replace(/[\s\u00a0\u202f]/g, "");
  if (commaSeparates && close.includes(",")) {
    return {
      wrong: `${quoted(cell)}: commas separate the cells of this file, so write a decimal point, as in 12.50.`,
    };
  }
  if (!commaSeparates && /^-?[1-9]\d{0,2}[.,]\d{3}$/.test(close)) {
    const bare = close.replace(/[.,]/, "");
    return {
      wrong: `${quoted(cell)} may be ${Number(bare)} or ${Number(close.replace(",", "."))}. Write it without the point or comma.`,
    };
  }
  const plain = /^-?\d{1,3}(\.\d{3})+,\d+$/.test(close)
    ? close.replaceAll(".", "").replace(",", ".")
    : /^-?\d{1,3}(,\d{3})+\.\d+$/.test(close)
      ? close.replaceAll(",", "")
      : close.replace(",", ".");
  if (/^-?\d+(\.\d+)?$/.test(plain)) return { value: Number(plain) };
  return { wrong: `${quoted(cell)} is no figure. Write digits alone, as in 120 or 12.50.` };
};

/** A price: more than nought. */
export const price: CellReader<number> = (cell, terms) => {
  const read = figure(cell, terms);
  if ("wrong" in read) return read;
  if (read.value <= 0)
    return { wrong: `${quoted(cell)} is no price. Write more than 0, or leave the row out.` };
  if (read.value > MOST_MONEY) return { wrong: `${quoted(cell)} is more than 1,000,000,000. Correct it.` };
  return read;
};

/** The currency of a row, which must be the workshop's: amounts are never converted. */
export const currency: CellReader<string> = (cell, terms) => {
  const code = cell.toUpperCase();
  if (code === terms.currency) return { value: code };
  if (!/^[A-Z]{3}$/.test(code)) {
    return { wrong: `${quoted(cell)} is no currency code. Write three letters, as in ${terms.currency}.` };
  }
  return { wrong: `${code} is not ${terms.currency}. Convert the price and write ${terms.currency}.` };
};

/** A day of the calendar that is not still to come. */
export const pastDay: CellReader<string> = (cell, { today }) => {
  if (!isoDay(cell)) return { wrong: `${quoted(cell)} is no date. Write year-month-day, as in ${today}.` };
  if (cell > today) return { wrong: `${cell} is still to come (today is ${today}). Correct the date.` };
  if (Number(cell.slice(0, 4)) < FIRST_SALE)
    return { wrong: `${cell} is before ${FIRST_SALE}. Correct the date.` };
  return { value: cell };
};

/** The year a bicycle was made in. */
export const yearMade: CellReader<number> = (cell, { today }) => {
  const year = Number(cell);
  const last = Number(today.slice(0, 4));
  if (/^\d{4}$/.test(cell) && year >= FIRST_YEAR && year <= last) return { value: year };
  return {
    wrong: `${quoted(cell)} is no year from ${FIRST_YEAR} to ${last}. Write four digits, or leave it empty.`,
  };
};

/** A short text on one line. */
export const line: CellReader<string> = (cell) => {
  const text = cell.replace(/\s+/g, " ").trim();
  if (text.length <= LONGEST_TEXT) return { value: text };
  return { wrong: `${quoted(cell)} is ${text.length} letters long. Write at most ${LONGEST_TEXT}.` };
};

/** Words separated by spaces. */
export const words: CellReader<readonly string[]> = (cell) => ({ value: [...new Set(cell.split(/\s+/))] });

/** One of several words, by its value or its label, in any case. */
export function choice(choices: readonly Choice[]): CellReader<string> {
  return (cell) => {
    const key = plainKey(cell);
    const found = choices.find(({ value, label }) => plainKey(value) === key || plainKey(label) === key);
    return found === undefined ? { wrong: unknownWord(cell, choices) } : { value: found.value };
  };
}

/** A share from 0 to 1, as a figure or by one of its labels. */
export function share(labelled: readonly Choice[]): CellReader<number> {
  return (cell, terms) => {
    const named = labelled.find(({ label }) => plainKey(label) === plainKey(cell));
    if (named !== undefined) return { value: Number(named.value) };
    const read = figure(cell, terms);
    if ("value" in read && read.value >= 0 && read.value <= 1) return read;
    const known = labelled.map(({ value, label }) => `${value} (${label.toLowerCase()})`).join(", ");
    return { wrong: `${quoted(cell)} is no figure from 0 to 1. Write ${known}, or one between.` };
  };
}

/** Names the word that was probably meant, or else all there are. */
export function unknownWord(cell: string, choices: readonly Choice[]): string {
  const near = nearest(
    cell,
    choices.flatMap(({ value, label }) => [value, label]),
  );
  if (near !== null) return `${quoted(cell)} is not known. The nearest is ${quoted(near)}.`;
  return `${quoted(cell)} is not known. Write one of: ${choices.map(({ value }) => value).join(", ")}.`;
}
