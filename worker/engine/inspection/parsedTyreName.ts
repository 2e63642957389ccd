import type { MarkingStyle, TyreName } from "./tyreName.ts";

/** A traditional marking taken apart: its nominal size, and which names of that size it may be. */
export interface ParsedName {
  readonly nominal: number;
  /** The tyre's width in the name's unit: mm where three figures name the size, else inches. Undefined where the marking names none. */
  readonly width: number | undefined;
  readonly fits: (name: TyreName) => boolean;
}

const NUMBER = String.raw`\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?`;
const METRIC = /^(\d{3}) ?([A-D])?(?: ?[X-] ?(\d{1,3}(?:\.\d+)?) ?([A-D])?)?(?![\d./])(.*)$/;
const INCH = new RegExp(`^(${NUMBER}) ?(?:X ?(${NUMBER}) ?(?:X ?(${NUMBER}))?)?(?![\\d./])(.*)$`);

/**
 * Takes a traditional marking apart: "700 X 32C", "26 X 1 3/8 E.A.3", "28 X 1 5/8 X 1 3/8".
 * @param text in capitals, with X between the numbers and without inch signs
 * @returns null where it does not start with a size
 */
export function parsedName(text: string): ParsedName | null {
  return parsedMetric(text) ?? parsedInches(text);
}

function parsedMetric(text: string): ParsedName | null {
  const match = METRIC.exec(text);
  if (match === null) return null;
  const [, nominal, early, widthText, late, rest] = match;
  const width = numberOf(widthText);
  const letter = late ?? early ?? null;
  const mark = markOf(rest);
  const isBare = letter === null && width === undefined && mark === "";
  const style: MarkingStyle = letter === null ? "metric" : "letter";
  return {
    nominal: Number(nominal),
    width,
    fits: (name) =>
      isBare || (name.style === style && name.letter === letter && covers(name, width) && marked(name, mark)),
  };
}

function parsedInches(text: string): ParsedName | null {
  const match = INCH.exec(text);
  if (match === null) return null;
  const [, nominal, first, second, rest] = match;
  const width = numberOf(first);
  const mark = markOf(rest);
  const isBare = first === undefined && mark === "";
  const styles = first === undefined ? [] : stylesOf(first, second);
  return {
    nominal: numberOf(nominal)!,
    width: second === undefined ? width : narrower(width, numberOf(second)),
    fits: (name) => isBare || (styles.includes(name.style) && covers(name, width) && marked(name, mark)),
  };
}

/** A whole width (26 x 2) may belong to either family; decimals and fractions of equal value never interchange. */
function stylesOf(first: string, second: string | undefined): readonly MarkingStyle[] {
  if (second !== undefined && (first.includes("/") || second.includes("/"))) return ["fractions"];
  if (first.includes("/")) return ["fraction"];
  return first.includes(".") ? ["decimal"] : ["decimal", "fraction"];
}

function covers({ widthFrom, widthTo }: TyreName, width: number | undefined): boolean {
  if (width === undefined) return true;
  return (widthFrom === null || widthFrom <= width) && (widthTo === null || width <= widthTo);
}

function marked(name: TyreName, mark: string): boolean {
  return mark === "" ? name.unmarked : name.marks.includes(mark);
}

function markOf(rest: string | undefined): string {
  return (rest ?? "").replace(/[^A-Z0-9]/g, "");
}

/** Of the two fractions behind a size one is the height, the other the width; the width is the lesser (28 x 1 5/8 x 1 3/8), whichever stands first. */
function narrower(first: number | undefined, second: number | undefined): number | undefined {
  return first === undefined || second === undefined ? (first ?? second) : Math.min(first, second);
}

/** "1 3/8" is 1.375; undefined stays undefined. */
function numberOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  return text.split(" ").reduce((sum, part) => {
    const [top, bottom] = part.split("/");
    return sum + Number(top) / Number(bottom ?? 1);
  }, 0);
}
