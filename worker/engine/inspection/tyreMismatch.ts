import type { Millimetres } from "../quantity.ts";
import type { Mismatch } from "./finding.ts";
import { spokenName, type TyreName } from "./tyreName.ts";

/** A bead seat diameter and what stated it: "the tyre's marking 27 x 1 1/4". */
export interface StatedDiameter {
  readonly what: string;
  readonly diameterMm: Millimetres;
}

/**
 * Tells apart two tyres, or a rim and a tyre, that do not share a bead seat diameter, and names the name they share.
 * A tyre sits only on a rim of its own diameter; a shared name (26 in) is no help.
 * @returns null where the diameters are equal
 */
export function mismatch(a: StatedDiameter, b: StatedDiameter, names: readonly TyreName[]): Mismatch | null {
  if (a.diameterMm === b.diameterMm) return null;
  const shared = sharedNominals(a.diameterMm, b.diameterMm, names);
  const both = shared.length === 0 ? "" : ` Both are called ${shared.map(spokenName).join(" and ")}.`;
  const text = `${capital(a.what)} says ${a.diameterMm} mm, ${b.what} says ${b.diameterMm} mm: they do not fit each other.${both}`;
  return { text, diameters: [a.diameterMm, b.diameterMm] };
}

/** Nominal sizes that both diameters go by. */
export function sharedNominals(
  a: Millimetres,
  b: Millimetres,
  names: readonly TyreName[],
): readonly number[] {
  const ofB = new Set(names.filter((row) => row.diameterMm === b).map((row) => row.nominal));
  return [...new Set(names.filter((row) => row.diameterMm === a).map((row) => row.nominal))].filter((one) =>
    ofB.has(one),
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
