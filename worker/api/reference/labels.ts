import type { ATTRIBUTE_VALUES, AttributeName } from "../../engine/bicycle.ts";

/** What to show for an attribute and for each of its values: words that stand in a list, not sentences. */
export type Labels = {
  readonly [Name in AttributeName]: {
    readonly label: string;
    readonly values: Readonly<Record<(typeof ATTRIBUTE_VALUES)[Name][number], string>>;
  };
};

const MATERIALS = { steel: "Steel", aluminium: "Aluminium", carbon: "Carbon" };
const YES_NO = { yes: "Yes", no: "No" };

/** Words of the trade for the description. */
export const LABELS: Labels = {
  category: {
    label: "Kind",
    values: {
      "road-racing": "Road racing",
      touring: "Touring",
      "city-roadster": "City roadster",
      hybrid: "Hybrid",
      "mountain-rigid": "Mountain, rigid",
      "mountain-suspension": "Mountain, with suspension",
      "gravel-cross": "Gravel or cyclo-cross",
      folding: "Folding",
      "small-wheel-shopper": "Small-wheel shopper",
      "track-single-speed": "Track or single-speed",
      childrens: "Children's",
      bmx: "BMX",
      cargo: "Cargo",
      tandem: "Tandem",
      "e-bike-out-of-scope": "Electric (not covered)",
    },
  },
  era: {
    label: "Era",
    values: {
      "pre-1970": "Before 1970",
      "1970s": "1970s",
      "1980s": "1980s",
      "1990s": "1990s",
      "2000s": "2000s",
      "2010s": "2010s",
      "2020s": "2020s",
    },
  },
  frameMaterial: { label: "Frame material", values: { ...MATERIALS, titanium: "Titanium" } },
  componentTier: {
    label: "Tier of components",
    values: { entry: "Entry", mid: "Mid", upper: "Upper", top: "Top" },
  },
  sizeClass: {
    label: "Size",
    values: {
      "very-small": "Very small",
      small: "Small",
      middle: "Middle",
      large: "Large",
      "very-large": "Very large",
    },
  },
  completeness: {
    label: "Completeness",
    values: {
      complete: "Complete",
      "minor-missing": "Small parts missing",
      "major-missing": "Major parts missing",
      "frame-and-fork": "Frame and fork",
      "frame-only": "Frame only",
    },
  },
  kept: {
    label: "Kept",
    values: { indoors: "Indoors", sheltered: "Under cover", outdoors: "Outdoors" },
  },
  place: { label: "Place of sale", values: { city: "City", town: "Town", rural: "Country" } },
  forkMaterial: { label: "Fork material", values: MATERIALS },
  hasCarbon: { label: "Carbon that carries load", values: YES_NO },
  fork: { label: "Fork", values: { rigid: "Rigid", suspension: "Suspension" } },
  steering: {
    label: "Headset and stem",
    values: { quill: "Threaded, quill stem", threadless: "Threadless" },
  },
  drivetrain: {
    label: "Gears",
    values: { derailleur: "Derailleur", "hub-gear": "Hub gear", "single-speed": "Single speed" },
  },
  bottomBracket: {
    label: "Bottom bracket",
    values: {
      "cup-and-cone": "Cup and cone",
      cartridge: "Cartridge",
      "press-fit": "Press-fit",
      "one-piece": "One-piece",
    },
  },
  bbThread: { label: "Bottom-bracket thread", values: { usual: "Usual", odd: "Odd" } },
  cranks: {
    label: "Cranks",
    values: {
      "square-taper": "Square taper",
      splined: "Splined",
      cottered: "Cottered",
      "one-piece": "One-piece",
    },
  },
  hub: { label: "Hub bearings", values: { "cup-and-cone": "Cup and cone", cartridge: "Cartridge" } },
  barMaterial: { label: "Handlebar material", values: MATERIALS },
  barType: { label: "Handlebar", values: { drop: "Drop", flat: "Flat or upright" } },
  rimMaterial: { label: "Rim material", values: MATERIALS },
  brakeType: {
    label: "Brakes",
    values: {
      "rim-caliper": "Rim, calliper",
      "rim-cantilever": "Rim, cantilever",
      "rim-linear-pull": "Rim, linear pull",
      "rim-rod": "Rim, rod",
      "disc-mechanical": "Disc, cable",
      "disc-hydraulic": "Disc, hydraulic",
      coaster: "Coaster",
      drum: "Drum",
    },
  },
  postMaterial: { label: "Seat-post material", values: MATERIALS },
  stepThrough: { label: "Step-through frame", values: YES_NO },
  fixedGear: { label: "Fixed gear", values: YES_NO },
};

/** What to show for the seven groups of checks, in the catalogue's order. */
export const GROUP_LABELS: Readonly<Record<string, string>> = {
  "frame-fork": "Frame and fork",
  steering: "Steering",
  "wheels-tyres": "Wheels and tyres",
  transmission: "Transmission",
  brakes: "Brakes",
  "contact-points": "Contact points",
  paperwork: "Paperwork",
};
