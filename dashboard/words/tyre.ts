import type { MarkedTyre } from "../api/types.ts";
import { figure } from "./figure.ts";
import { INCH } from "./length.ts";

/** A tyre's width as marked, inches with their millimetres: "28 mm", "1.75 in (44 mm)". */
export function tyreWidth({ value, unit }: NonNullable<MarkedTyre["width"]>): string {
  const told = `${figure(value, 3)} ${unit}`;
  return unit === "mm" ? told : `${told} (${Math.round(value * INCH)} mm)`;
}

/** "622 mm", "559, 571 or 590 mm", "none: glued on", "not known". */
export function beadSeatWords({ reading, candidates }: Pick<MarkedTyre, "reading" | "candidates">): string {
  if (reading === "tubular") return "none: glued on";
  const figures = candidates.map(({ diameterMm }) => String(diameterMm));
  if (figures.length === 0) return "not known";
  const [last, ...others] = figures.toReversed();
  return others.length === 0 ? `${last} mm` : `${others.reverse().join(", ")} or ${last} mm`;
}

/** "Looks alike, does not fit 622 mm". */
export function lookAlikeTitle({ beadSeatDiameterMm }: Pick<MarkedTyre, "beadSeatDiameterMm">): string {
  return `Looks alike, does not fit ${beadSeatDiameterMm} mm`;
}

/** What a tyre's marking says, each with its name. */
export const WIDTH = "Width";
export const WIDTH_NOT_SAID = "not said";
export const BEAD_SEAT = "Bead seat";
