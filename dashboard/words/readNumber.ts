import { figureSigns } from "./locale.ts";

/** What people set into a figure to read it more easily: any space, and the apostrophe of Swiss thousands. */
const SPACING = /[\s'\u2019]/g;
/** Thousands set off, and nothing else it could be: a comma or point, each time before three digits (two in India but for the last). */
const SET_OFF = {
  ",": /^-?[1-9]\d{0,2}(,\d{2,3})*,\d{3}(\.\d+)?$/,
  ".": /^-?[1-9]\d{0,2}(\.\d{3})+(,\d+)?$/,
} as const;

/**
 * Reads a number as people write it: a comma or a point, a real minus sign, spaces. Where it could be either, as in 1,250,
 * it is what the locale that the screen is written for makes of it. Undefined for nothing, null for no number.
 */
export function readNumber(text: string): number | undefined | null {
  const close = text.trim().replace("\u2212", "-").replace(SPACING, "");
  if (close === "") return undefined;
  const { decimal } = figureSigns();
  const set = decimal === "," ? "." : ",";
  const plain = SET_OFF[set].test(close)
    ? close.replaceAll(set, "").replace(decimal, ".")
    : close.replace(",", ".");
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

/** A number as it stands in a field, to be typed over: its decimals as the locale sets them off, nothing else set in. */
export function typedNumber(value: number): string {
  return String(value).replace(".", figureSigns().decimal);
}
