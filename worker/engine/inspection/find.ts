import type { Attributes } from "../bicycle.ts";
import type { Millimetres } from "../quantity.ts";

/** A find as described: category, era, frame material and tier are always given, the rest may be unknown. */
export type DescribedAttributes = Partial<Attributes> &
  Pick<Attributes, "category" | "era" | "frameMaterial" | "componentTier">;

/** The part of a description that is a number or a marking rather than one of some words. */
export interface Dimensions {
  readonly rearSprockets?: number | undefined;
  readonly beadSeatDiameterMm?: Millimetres | undefined;
  /** As written on the tyre: "32-622", "27 x 1 1/4". */
  readonly tyreMarking?: string | undefined;
}
