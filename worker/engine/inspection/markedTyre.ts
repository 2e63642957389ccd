import type { Millimetres } from "../quantity.ts";
import { type LookAlike, lookAlikes } from "./lookAlikes.ts";
import { parsedName } from "./parsedTyreName.ts";
import { plainMarking } from "./plainMarking.ts";
import { type BeadSeatCandidate, isoMarking, readTyreMarking } from "./tyreMarking.ts";
import { isMetric, type TyreName } from "./tyreName.ts";

/** A width as the marking writes it. */
export interface TyreWidth {
  readonly value: number;
  readonly unit: "mm" | "in";
}

/** A marking taken apart, to be shown: what it says of width and bead seat, and what looks alike and does not fit. */
export interface MarkedTyre {
  /** As written. */
  readonly marking: string;
  /** one: settles the bead seat; several: leaves more than one; tubular: has no bead; unlisted: no known size has this name. */
  readonly reading: "one" | "several" | "tubular" | "unlisted";
  readonly width: TyreWidth | null;
  /** Null where the marking does not settle it. */
  readonly beadSeatDiameterMm: Millimetres | null;
  /** Why, and where it is not settled what to do. */
  readonly text: string;
  /** Bead seats in question: one where it is settled, largest first. */
  readonly candidates: readonly BeadSeatCandidate[];
  /** Sizes that share a name with the one settled and do not fit it, the nearest first. */
  readonly lookAlikes: readonly LookAlike[];
}

/**
 * Takes a marking apart for whoever stands before the shelf with it: `28-622` is 28 mm wide on a bead seat of 622 mm.
 * @param marking as written; see `readTyreMarking`
 * @param names table of traditional names
 * @returns null for what is no marking at all
 */
export function markedTyre(marking: string, names: readonly TyreName[]): MarkedTyre | null {
  const reading = readTyreMarking(marking, names);
  const common = { marking, width: markedWidth(marking, names), lookAlikes: [] };
  switch (reading.kind) {
    case "unreadable":
      return null;
    case "tubular": {
      const text = "a tubular is glued on and has no bead seat";
      return { ...common, reading: "tubular", beadSeatDiameterMm: null, text, candidates: [] };
    }
    case "unlisted": {
      const text = `${reading.reason}; ${reading.remedy}`;
      return { ...common, reading: "unlisted", beadSeatDiameterMm: null, text, candidates: [] };
    }
    case "several": {
      const { candidates, remedy: text } = reading;
      return { ...common, reading: "several", beadSeatDiameterMm: null, text, candidates };
    }
    case "one": {
      const { diameterMm, reason } = reading;
      return {
        ...common,
        reading: "one",
        beadSeatDiameterMm: diameterMm,
        text: reason,
        candidates: [{ diameterMm, reason }],
        lookAlikes: lookAlikes(diameterMm, names),
      };
    }
  }
}

/** The width that a marking names; null where it names none. */
function markedWidth(marking: string, names: readonly TyreName[]): TyreWidth | null {
  const text = plainMarking(marking);
  const stated = isoMarking(text, names);
  if (stated !== null) return { value: stated.widthMm, unit: "mm" };
  const parsed = parsedName(text);
  if (parsed?.width === undefined) return null;
  return { value: parsed.width, unit: isMetric(parsed.nominal) ? "mm" : "in" };
}
