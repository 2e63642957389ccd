import type { Millimetres } from "../quantity.ts";
import { parsedName } from "./parsedTyreName.ts";
import { plainMarking } from "./plainMarking.ts";
import { isMetric, spokenName, type TyreName } from "./tyreName.ts";

export interface BeadSeatCandidate {
  readonly diameterMm: Millimetres;
  readonly reason: string;
}

/**
 * What a marking says of the bead seat diameter: one, several in question (never a guess between them), none (a tubular has
 * no bead), or nothing. `unlisted` is a marking of the usual form that the table does not hold, `unreadable` no marking.
 */
export type TyreReading =
  | ({ readonly kind: "one" } & BeadSeatCandidate)
  | { readonly kind: "several"; readonly candidates: readonly BeadSeatCandidate[]; readonly remedy: string }
  | { readonly kind: "tubular" }
  | { readonly kind: "unlisted" | "unreadable"; readonly reason: string; readonly remedy: string };

const REMEDY = "read the two numbers of ISO 5775 on the tyre, such as 32-622, or measure the rim";

/**
 * Reads a tyre's or a rim's marking to its bead seat diameter.
 * ISO 5775 markings (32-622 on a tyre; 622x19C or 19-622 on a rim) say it outright; traditional names are looked up.
 * @param marking as written: "32-622", "700 x 32C", "27 x 1 1/4", "26 x 1.75", "28 x 1 5/8 x 1 3/8", "650B", "26 in"
 * @param names table of traditional names
 */
export function readTyreMarking(marking: string, names: readonly TyreName[]): TyreReading {
  const text = plainMarking(marking);
  if (/\b(TUBULAR|TUB|SEW-?UP)S?\b/.test(text)) return { kind: "tubular" };
  const stated = isoMarking(text, names);
  if (stated === null) return named(text, names);
  const { diameterMm, rest } = stated;
  const diameters = names.map((row) => row.diameterMm);
  if (diameterMm < Math.min(...diameters) || diameterMm > Math.max(...diameters)) {
    return { kind: "unreadable", reason: `no bicycle has a bead seat of ${diameterMm} mm`, remedy: REMEDY };
  }
  const other = named(rest, names);
  if (contradicts(other, diameterMm)) {
    return {
      kind: "unreadable",
      reason: `its numbers say ${diameterMm} mm and its name another size`,
      remedy: REMEDY,
    };
  }
  return { kind: "one", diameterMm, reason: `${diameterMm} mm by its ISO 5775 numbers` };
}

/** What the numbers of an ISO 5775 marking state. */
interface IsoMarking {
  readonly diameterMm: Millimetres;
  readonly widthMm: Millimetres;
  /** The text around the numbers of a tyre. */
  readonly rest: string;
}

/**
 * The diameter and the width of an ISO 5775 marking, of a tyre (32-622) or a rim (622x19C), and the text around it.
 * @param text in capitals; see `plainMarking`
 * @returns null where there is none
 */
export function isoMarking(text: string, names: readonly TyreName[]): IsoMarking | null {
  const tyre = /(?<![\d/.])(\d{2,3}) ?[-X] ?(\d{3})(?!\d)/.exec(text);
  if (tyre !== null && !isNominal(Number(tyre[1]), names)) {
    const rest = `${text.slice(0, tyre.index)} ${text.slice(tyre.index + tyre[0].length)}`;
    const widthMm = Number(tyre[1]);
    return { diameterMm: Number(tyre[2]), widthMm, rest: rest.replace(/[()[\]]/g, " ").trim() };
  }
  const rim = /^(\d{3}) ?[-X] ?(\d{2}(?:\.\d)?) ?(?:T?C|SS|HB|TSS)?$/.exec(text);
  if (rim === null || isNominal(Number(rim[1]), names)) return null;
  return { diameterMm: Number(rim[1]), widthMm: Number(rim[2]), rest: "" };
}

function isNominal(value: number, names: readonly TyreName[]): boolean {
  return names.some((row) => row.nominal === value && isMetric(row.nominal));
}

function contradicts(reading: TyreReading, diameterMm: Millimetres): boolean {
  if (reading.kind === "one") return reading.diameterMm !== diameterMm;
  return reading.kind === "several" && reading.candidates.every((one) => one.diameterMm !== diameterMm);
}

function named(text: string, names: readonly TyreName[]): TyreReading {
  const parsed = parsedName(text);
  if (parsed === null) return { kind: "unreadable", reason: "it has no size in it", remedy: REMEDY };
  const candidates = byDiameter(names.filter((row) => row.nominal === parsed.nominal && parsed.fits(row)));
  const [first, ...others] = candidates;
  if (first === undefined)
    return { kind: "unlisted", reason: "no listed size has this name", remedy: REMEDY };
  if (others.length === 0) return { kind: "one", ...first };
  const list = candidates.map((one) => one.diameterMm).join(", ");
  const remedy = `${spokenName(parsed.nominal)} covers bead seats of ${list} mm: ${REMEDY}`;
  return { kind: "several", candidates, remedy };
}

function byDiameter(rows: readonly TyreName[]): readonly BeadSeatCandidate[] {
  const reasons = new Map<number, string[]>();
  for (const { diameterMm, reason } of rows) {
    reasons.set(diameterMm, [...(reasons.get(diameterMm) ?? []), reason]);
  }
  return [...reasons]
    .map(([diameterMm, list]) => ({ diameterMm, reason: [...new Set(list)].join("; ") }))
    .sort((a, b) => b.diameterMm - a.diameterMm);
}
