import type { Attributes } from "../bicycle.ts";
import type { Money, Probability } from "../quantity.ts";

export const PRESENTATIONS = ["full", "plain", "poor"] as const;
/** full: washed, polished, many daylight photographs; plain: washed, a few; poor: dirty or dark. */
export type Presentation = (typeof PRESENTATIONS)[number];
export const PAPERS = ["receipt", "bill", "none"] as const;
/** receipt: original receipt and bill of sale; bill: bill of sale and number looked up; none: nothing offered. */
export type Papers = (typeof PAPERS)[number];
export const NOT_RIDING = ["does-not-ride", "major-parts-missing", "frame-and-fork"] as const;
/** does-not-ride: complete, faults told to the buyer. */
export type NotRiding = (typeof NOT_RIDING)[number];

/** The state a bike is sold in: riding, with visible condition from 0 (needs listed work) to 1 (fully restored), or not riding. */
export type SaleState = { readonly kind: "rides"; readonly condition: number } | { readonly kind: NotRiding };

/** The attributes that bear on price. */
export const PRICED_ATTRIBUTES = [
  "category",
  "era",
  "frameMaterial",
  "componentTier",
  "sizeClass",
  "place",
  "stepThrough",
  "drivetrain",
] as const satisfies (keyof Attributes)[];
export type PricedAttributes = Pick<Attributes, (typeof PRICED_ATTRIBUTES)[number]>;

/** Everything about a sale but its price. */
export interface SaleDescription {
  readonly attributes: PricedAttributes;
  /** 1 all original, 0.8 sensible replacements, 0.5 mixed periods, 0 changed in kind. */
  readonly originality: Probability;
  /** 0 to 1: lugs, chrome, eyelets and the like. */
  readonly desirability: Probability;
  readonly state: SaleState;
  /** Sold as found, to another mechanic: then originality, presentation, papers and place change nothing. */
  readonly asFound: boolean;
  readonly presentation: Presentation;
  readonly papers: Papers;
  /** 1 to 12; null: the seasons averaged. */
  readonly month: number | null;
}

/** A bike that was sold, and for how much. */
export interface ComparableSale {
  readonly description: SaleDescription;
  readonly price: Money;
}
