import type { Check } from "../api/types.ts";
import { figure } from "./figure.ts";

/** How lengths are shown and typed. What is asked and kept is always millimetres. */
export type LengthUnit = "mm" | "in";

/** Millimetres in an inch (exact since 1959). */
export const INCH = 25.4;
/** Decimals: a hundredth of a millimetre, a thousandth of an inch; finer than any rule or calliper here reads. */
const DECIMALS: Readonly<Record<LengthUnit, number>> = { mm: 2, in: 3 };
/** A ten-thousandth of a millimetre is kept, so that what was typed in inches comes back as typed. */
const KEPT = 4;

const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));

/** A length without its unit: "43.5", "1.713". */
export function bareLength(mm: number, unit: LengthUnit, decimals = DECIMALS[unit]): string {
  return figure(unit === "in" ? mm / INCH : mm, decimals);
}

/** A length with its unit: "43.5 mm", "1.713 in". */
export function length(mm: number, unit: LengthUnit, decimals = DECIMALS[unit]): string {
  return `${bareLength(mm, unit, decimals)} ${unit}`;
}

/** The unit for a check's lengths: the user's, but for bead seats, which are named in millimetres the world over. */
export function lengthsFor({ measurement }: Pick<Check, "measurement">, unit: LengthUnit): LengthUnit {
  return measurement?.derivation.kind === "bead-seat" ? "mm" : unit;
}

/** A quantity with its unit, in the user's unit where it is a length: "0.52 %", "43.5 mm", "3". */
export function amount(value: number, unit: string, lengths: LengthUnit): string {
  if (unit === "mm") return length(value, lengths);
  const written = figure(value, 2);
  return unit === "count" ? written : `${written} ${unit}`;
}

const FRACTION = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/;

/**
 * Reads a fraction of an inch as a rule shows it: "12 1/16" is 12.0625, "3/8" is 0.375.
 * @returns undefined where the text is no such fraction
 */
function readFraction(text: string): number | undefined {
  const close = text.trim().replace(/["\u2033]$/, "");
  const [, whole = "0", top, bottom] = FRACTION.exec(close) ?? [];
  return top === undefined || Number(bottom) === 0 ? undefined : Number(whole) + Number(top) / Number(bottom);
}

/**
 * Reads a typed length into millimetres.
 * @param text as typed, in the user's unit; inches also as fractions
 * @param readNumber reads a plain number: undefined for nothing, null for no number
 */
export function readLength(
  text: string,
  unit: LengthUnit,
  readNumber: (text: string) => number | undefined | null,
): number | undefined | null {
  if (unit === "mm") return readNumber(text);
  const inches = readFraction(text) ?? readNumber(text.trim().replace(/["\u2033]$/, ""));
  return typeof inches === "number" ? rounded(inches * INCH, KEPT) : inches;
}

/** How far one press of a button moves a length, in mm: half a millimetre or the fiftieth of an inch next to it. */
export function stepOf(mm: number, unit: LengthUnit): number {
  return unit === "mm" ? mm : rounded(Math.max(1, Math.round((mm / INCH) * 500)) / 500, 3) * INCH;
}

/** Decimals of an inch where whole millimetres are told: a hundredth is a quarter of one. */
const COARSE = 2;

/**
 * A sentence of the API's with its lengths in the user's unit: "20 to 60 mm" becomes "0.79 to 2.36 in", "1.2 mm" becomes
 * "0.047 in".
 * @param exact where a figure is a bound to be kept: then whole millimetres too become thousandths of an inch
 */
export function withLengths(text: string, unit: LengthUnit, exact = false): string {
  if (unit === "mm") return text;
  const fineness = (told: string) => (exact || told.includes(".") ? DECIMALS.in : COARSE);
  const inches = (told: string) => length(Number(told), unit, fineness(told));
  const bare = (told: string) => bareLength(Number(told), unit, fineness(told));
  return text
    .replace(/(\d+(?:\.\d+)?) to (\d+(?:\.\d+)?) mm\b/g, (_, from: string, to: string) => {
      return `${bare(from)} to ${inches(to)}`;
    })
    .replace(/(\d+(?:\.\d+)?) mm\b/g, (_, told: string) => inches(told));
}

/** What the two units are called on the switch. */
export const LENGTH_UNITS: readonly { readonly value: LengthUnit; readonly label: string }[] = [
  { value: "mm", label: "Millimetres" },
  { value: "in", label: "Inches" },
];
