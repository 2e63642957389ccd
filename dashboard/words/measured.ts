import type { DropoutScene } from "../drawings/dropouts.ts";
import type { StringScene } from "../drawings/stringTest.ts";
import { figure, written } from "./figure.ts";
import { amount, bareLength, type LengthUnit, length } from "./length.ts";

/** Below this a length is told as nought, mm: it is less than any string or rule shows. */
const NOUGHT_MM = 0.05;

/** "The rear end sits 4.3 mm to the right at the axle". */
export function stringTitle({ offset }: Pick<StringScene, "offset">, unit: LengthUnit): string {
  const size = Math.abs(offset);
  if (size < NOUGHT_MM) return "The rear end is in line at the axle";
  return `The rear end sits ${length(shownOffset(offset, unit), unit)} to the ${offset > 0 ? "right" : "left"} at the axle`;
}

/** The size of an offset as it is shown, mm: to the tenth, which is finer than the string shows. */
export function shownOffset(offset: number, unit: LengthUnit): number {
  return tenth(Math.abs(offset), unit);
}

/** "L 41.2": a reading on the left of the bike, and on the right, beside its string. */
export const leftReading = (mm: number, unit: LengthUnit): string => `L ${bareLength(mm, unit)}`;
export const rightReading = (mm: number, unit: LengthUnit): string => `R ${bareLength(mm, unit)}`;

/** What the drawing of the string test does with its bend: "Bend drawn 18 times too large. Dashed: straight. Right is the drive side." */
export function stringNote({ offset, times }: Pick<StringScene, "offset" | "times">): string {
  const side = "Right is the drive side.";
  if (Math.abs(offset) < NOUGHT_MM) return side;
  return `${timesTooLarge("Bend", times)} Dashed: straight. ${side}`;
}

/** "306.4 mm over 24 pitches: 0.52 % longer than new". */
export function chainTitle(mm: number, pitches: number, percent: number, unit: LengthUnit): string {
  const told = `${written(Math.abs(percent), { minimumFractionDigits: 2, maximumFractionDigits: 2 })} %`;
  const than =
    Math.abs(percent) < 0.005 ? "as long as new" : `${told} ${percent < 0 ? "shorter" : "longer"} than new`;
  return `${length(mm, unit)} over ${pitches} pitches: ${than}`;
}

/** "24 pitches", over what is measured. */
export const pitchesWords = (pitches: number): string => `${pitches} pitches`;

/** "304.8 new": the length of as many pitches of a new chain. */
export const whenNewWords = (mm: number, unit: LengthUnit): string => `${bareLength(mm, unit)} new`;

/** "A new chain is needed from 0.75 % (307.1 mm) with 9 sprockets at the back." */
export function chainLimit(
  percent: number,
  mm: number,
  sprockets: number | undefined,
  unit: LengthUnit,
): string {
  const back =
    sprockets === undefined
      ? "where nobody counted the sprockets at the back"
      : `with ${sprockets} ${sprockets === 1 ? "sprocket" : "sprockets"} at the back`;
  return `A new chain is needed from ${figure(percent, 2)} % (${length(tenth(mm, unit), unit)}) ${back}.`;
}

/** "The hub is 4 mm wider than the dropouts". */
export function dropoutTitle({ difference }: Pick<DropoutScene, "difference">, unit: LengthUnit): string {
  const size = Math.abs(difference);
  if (size < NOUGHT_MM) return "Hub and dropouts are the same width";
  return `The hub is ${length(size, unit)} ${difference > 0 ? "wider" : "narrower"} than the dropouts`;
}

/** "Difference drawn 6 times too large." */
export function dropoutNote({ difference, times }: Pick<DropoutScene, "difference" | "times">): string {
  return Math.abs(difference) < NOUGHT_MM ? "" : timesTooLarge("Difference", times);
}

function timesTooLarge(what: string, times: number): string {
  return times === 1 ? `${what} drawn to scale.` : `${what} drawn ${times} times too large.`;
}

/** A computed length to the tenth of a millimetre; inches keep their thousandths. */
function tenth(mm: number, unit: LengthUnit): number {
  return unit === "mm" ? Number(mm.toFixed(1)) : mm;
}

/** One band of a gauge: "below 2 mm", "2 to 4 mm", "from 8 mm". */
export function bandWords(
  from: number | null,
  below: number | null,
  unit: string,
  lengths: LengthUnit,
): string {
  const bare = (value: number) => (unit === "mm" ? bareLength(value, lengths) : figure(value, 2));
  const named = unit === "mm" ? lengths : unit === "count" ? "" : unit;
  // The unit stays with its figure.
  const last = (value: number) => (named === "" ? bare(value) : `${bare(value)}\u00a0${named}`);
  if (below !== null && (from === null || from === 0)) return `below ${last(below)}`;
  if (from === null) return "any";
  return below === null ? `from ${last(from)}` : `${bare(from)} to ${last(below)}`;
}

/** Why to measure again: "Between slight and out the line is at 4 mm; your reading comes to 4.2 mm, and one reading error is 1 mm." */
export function onTheLine(
  line: { readonly better: string; readonly worse: string; readonly at: number | null },
  value: number,
  readingError: number,
  unit: string,
  lengths: LengthUnit,
): string {
  const where = line.at === null ? "the line is near" : `the line is at ${amount(line.at, unit, lengths)}`;
  const reading = `your reading comes to ${amount(value, unit, lengths)}`;
  const error = `one reading error is ${amount(readingError, unit, lengths)}`;
  return `Between ${line.better} and ${line.worse} ${where}; ${reading}, and ${error}.`;
}
