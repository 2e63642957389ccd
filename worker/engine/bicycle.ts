/** The bicycle in words: its description attributes and conditions on them. Values are the catalogue's; camelCase names are the API's. */

export const ERAS = ["pre-1970", "1970s", "1980s", "1990s", "2000s", "2010s", "2020s"] as const;
export type Era = (typeof ERAS)[number];
export const TIERS = ["entry", "mid", "upper", "top"] as const;
export type Tier = (typeof TIERS)[number];
export const KEPT = ["indoors", "sheltered", "outdoors"] as const;
/** How the bicycle was kept: the strongest single clue to what cannot be seen. */
export type Kept = (typeof KEPT)[number];

export const ATTRIBUTE_VALUES = {
  category: [
    "road-racing",
    "touring",
    "city-roadster",
    "hybrid",
    "mountain-rigid",
    "mountain-suspension",
    "gravel-cross",
    "folding",
    "small-wheel-shopper",
    "track-single-speed",
    "childrens",
    "bmx",
    "cargo",
    "tandem",
    "e-bike-out-of-scope",
  ],
  era: ERAS,
  frameMaterial: ["steel", "aluminium", "carbon", "titanium"],
  componentTier: TIERS,
  sizeClass: ["very-small", "small", "middle", "large", "very-large"],
  completeness: ["complete", "minor-missing", "major-missing", "frame-and-fork", "frame-only"],
  kept: KEPT,
  place: ["city", "town", "rural"],
  forkMaterial: ["steel", "aluminium", "carbon"],
  hasCarbon: ["yes", "no"],
  fork: ["rigid", "suspension"],
  steering: ["quill", "threadless"],
  drivetrain: ["derailleur", "hub-gear", "single-speed"],
  bottomBracket: ["cup-and-cone", "cartridge", "press-fit", "one-piece"],
  bbThread: ["usual", "odd"],
  cranks: ["square-taper", "splined", "cottered", "one-piece"],
  hub: ["cup-and-cone", "cartridge"],
  barMaterial: ["steel", "aluminium", "carbon"],
  barType: ["drop", "flat"],
  rimMaterial: ["steel", "aluminium", "carbon"],
  brakeType: [
    "rim-caliper",
    "rim-cantilever",
    "rim-linear-pull",
    "rim-rod",
    "disc-mechanical",
    "disc-hydraulic",
    "coaster",
    "drum",
  ],
  postMaterial: ["steel", "aluminium", "carbon"],
  stepThrough: ["yes", "no"],
  fixedGear: ["yes", "no"],
} as const;

export type AttributeName = keyof typeof ATTRIBUTE_VALUES;

/** Every attribute settled: described, or filled from the table of defaults. */
export type Attributes = { readonly [K in AttributeName]: (typeof ATTRIBUTE_VALUES)[K][number] };

/** True where the attribute has one of the values. A list of conditions holds where all of them hold; the empty list always holds. */
export interface Condition {
  readonly attribute: AttributeName;
  readonly isOneOf: readonly string[];
}

/** Whether every condition holds. Allocation-free: it runs some hundred times in an appraisal. */
export function holds(conditions: readonly Condition[], attributes: Attributes): boolean {
  for (const { attribute, isOneOf } of conditions) {
    if (!isOneOf.includes(attributes[attribute])) return false;
  }
  return true;
}

/** A default for one attribute: the first row whose conditions hold on what is already settled. */
export interface AttributeDefault {
  readonly attribute: AttributeName;
  readonly when: readonly Condition[];
  readonly value: string;
}
