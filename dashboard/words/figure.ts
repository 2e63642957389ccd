import { locale } from "./locale.ts";

const MINUS = "\u2212";
/** Marks that turn the direction of writing: they would tear an English sentence. */
const DIRECTIONS = /[\u061c\u200e\u200f]/g;
const formats = new Map<string, Intl.NumberFormat>();

/** The locale's way to write a number with these options, made once. */
export function formatOf(options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${locale()} ${JSON.stringify(options)}`;
  let found = formats.get(key);
  if (found === undefined) {
    found = new Intl.NumberFormat(locale(), options);
    formats.set(key, found);
  }
  return found;
}

/** A number as the locale writes it, with a real minus sign. */
export function written(value: number, options: Intl.NumberFormatOptions): string {
  // Adding 0 turns a negative nought into nought, which carries no sign.
  return formatOf(options)
    .format(value + 0)
    .replace(DIRECTIONS, "")
    .replace("-", MINUS);
}

/** A figure with at most so many decimals, those that are nought left out: "12.5", in German "12,5". */
export function figure(value: number, decimals = 0): string {
  return written(value, { maximumFractionDigits: decimals, useGrouping: false });
}

/** A count with its thousands set off: "5,000". */
export function grouped(value: number): string {
  return written(value, { maximumFractionDigits: 0 });
}
