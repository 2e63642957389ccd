import { DomainError } from "../domainError.ts";
import type { Millimetres } from "../quantity.ts";

/** Distances from the string to the seat tube on each side, and where the user gives them the frame's own lengths along the bike at the string. */
export interface StringTest {
  readonly left: Millimetres;
  readonly right: Millimetres;
  readonly headToSeatTube?: Millimetres | undefined;
  readonly headToAxle?: Millimetres | undefined;
}

/**
 * How far the middle of the rear dropouts lies off the front triangle's plane, at the axle: e = (right - left) / (2 t),
 * positive towards the drive side.
 *
 * Derivation. In plan view each string runs straight from the side of the head tube (half width h) to its dropout. The
 * dropouts lie at e + s/2 and e - s/2, s apart. At the fraction t of the way to the axle, where the seat tube (half width r)
 * stands, the strings have the offsets h + t (s/2 + e - h) and h + t (s/2 - e - h). Less r these are the distances right
 * and left; their difference is 2 t e: h, r and s drop out.
 * @param test distances in mm, not negative
 * @param defaultRatio t where the frame's lengths are not given, between 0 and 1
 * @returns e in mm
 */
export function rearAxleOffset(test: StringTest, defaultRatio: number): Millimetres {
  return (test.right - test.left) / (2 * ratio(test, defaultRatio));
}

/**
 * The quantity held against the alignment limits, which are on |left - right| of a frame with the default ratio:
 * 2 * defaultRatio * |e|. Without lengths that is |left - right| itself.
 * @returns mm, not negative
 */
export function alignmentDifference(test: StringTest, defaultRatio: number): Millimetres {
  return Math.abs(test.right - test.left) * (defaultRatio / ratio(test, defaultRatio));
}

/** t: head tube to seat tube over head tube to rear axle. */
function ratio({ headToSeatTube, headToAxle }: StringTest, defaultRatio: number): number {
  if (headToSeatTube === undefined && headToAxle === undefined) return defaultRatio;
  if (headToSeatTube === undefined) throw missing("headToSeatTube", "headToAxle");
  if (headToAxle === undefined) throw missing("headToAxle", "headToSeatTube");
  if (!(headToSeatTube > 0 && headToSeatTube < headToAxle)) {
    throw new DomainError(
      "impossible-measurement",
      "headToSeatTube",
      headToSeatTube,
      `more than 0 and less than headToAxle (${headToAxle} mm), since the seat tube stands before the axle: measure both again`,
      "measured/headToSeatTube",
    );
  }
  return headToSeatTube / headToAxle;
}

function missing(absent: string, given: string): DomainError {
  return new DomainError(
    "impossible-measurement",
    absent,
    undefined,
    `a length beside ${given}: give both, or neither for the usual ratio`,
    `measured/${absent}`,
  );
}
