import type { Millimetres } from "../quantity.ts";
import { spokenName, type TyreName } from "./tyreName.ts";

/** A size that shares a nominal name with another and does not fit its rim. */
export interface LookAlike {
  readonly diameterMm: Millimetres;
  /** What it is called: "26 x 1 3/4", "26 x 1 3/8 S6", "650C". */
  readonly names: readonly string[];
  /** What the size is, in a few words. */
  readonly reason: string;
}

/**
 * The sizes that go by a nominal name of a bead seat diameter and have another: they do not fit its rim, whatever is
 * printed on them. 622 mm is called 700, 28 in and 29 in, and so are 587, 635 and 642 mm.
 * @param diameterMm bead seat diameter
 * @returns one entry a diameter, the nearest first: it is the one that nearly goes on
 */
export function lookAlikes(diameterMm: Millimetres, names: readonly TyreName[]): readonly LookAlike[] {
  const nominals = new Set(names.filter((row) => row.diameterMm === diameterMm).map((row) => row.nominal));
  const others = names.filter((row) => nominals.has(row.nominal) && row.diameterMm !== diameterMm);
  const apart = (one: Millimetres) => Math.abs(one - diameterMm);
  return [...new Set(others.map((row) => row.diameterMm))]
    .sort((a, b) => apart(a) - apart(b) || b - a)
    .map((other) => {
      const rows = others.filter((row) => row.diameterMm === other);
      return {
        diameterMm: other,
        names: [...new Set(rows.map(writtenName))],
        reason: [...new Set(rows.map(({ reason }) => reason))].join("; "),
      };
    });
}

/** A name as it stands on the tyre, as far as the table tells: "700B", "26 x 1 3/4", "26 x 1 3/8 S6". */
function writtenName(row: TyreName): string {
  if (row.letter !== null) return `${row.nominal}${row.letter}`;
  const mark = row.unmarked ? "" : ` ${row.marks[0]}`;
  const { widthFrom, widthTo } = row;
  if (widthFrom === null || widthFrom !== widthTo) return `${spokenName(row.nominal)}${mark}`;
  const width = row.style === "decimal" ? String(widthFrom) : inEighths(widthFrom);
  return `${row.nominal} x ${width}${mark}`;
}

const EIGHTHS = ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];

/** An inch width as a fraction: 1.375 is "1 3/8". */
function inEighths(width: number): string {
  const whole = Math.floor(width);
  const rest = EIGHTHS[Math.round((width - whole) * EIGHTHS.length)] ?? "";
  return [whole === 0 ? "" : String(whole), rest].filter((part) => part !== "").join(" ");
}
