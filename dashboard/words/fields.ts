import type { AttributeName } from "../api/types.ts";

/** What the form calls each part of the description. */
export const FIELD_NAMES: Readonly<Record<AttributeName, string>> = {
  category: "What kind is it?",
  era: "From when?",
  frameMaterial: "What is the frame made of?",
  componentTier: "How good were its parts when new?",
  sizeClass: "Frame size",
  completeness: "Is anything missing?",
  kept: "How was it kept?",
  place: "Where would you sell it?",
  forkMaterial: "Fork",
  hasCarbon: "Any carbon in frame, fork or post?",
  fork: "Front suspension",
  steering: "Stem",
  drivetrain: "Gears",
  bottomBracket: "Bottom bracket",
  bbThread: "Bottom bracket thread",
  cranks: "Cranks",
  hub: "Hub bearings",
  barMaterial: "Handlebar",
  barType: "Bar shape",
  rimMaterial: "Rims",
  brakeType: "Brakes",
  postMaterial: "Seatpost",
  stepThrough: "Low step-through frame",
  fixedGear: "Fixed gear",
};

/** What a figure that is typed is called, by where it stands in a question (RFC 6901; "*" for a place in a list). */
export const FIGURE_NAMES = {
  "/find/purchase/price": "Asking price, or what you paid",
  "/find/purchase/travelMinutes": "Fetching it, there and back",
  "/find/purchase/travelCost": "What fetching it costs",
  "/find/rearSprockets": "Sprockets at the back",
  "/find/soFar/money": "Money spent",
  "/find/soFar/minutes": "Hours spent",
  "/find/soFar/bought/*/quantity": "How much",
  "/find/soFar/bought/*/reuseValue": "Worth again, one",
  "/market/weeks": "Weeks until it must be gone",
  "/market/storagePerWeek": "What keeping it costs a week",
  "/market/arrivalsPerWeek": "Buyers who come a week",
  "/market/haggling": "What buyers talk off",
  "/market/fallback": "What it brings if it has not sold by then",
  "/offer/amount": "An offer of",
} as const;

export const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** How original a bike is, as the share the API takes. */
export const ORIGINALITY = [
  { value: "1", label: "All original" },
  { value: "0.8", label: "Sensible replacements" },
  { value: "0.5", label: "Mixed" },
  { value: "0", label: "Changed in kind" },
] as const;

/** How much about it is sought after, as the share the API takes. */
export const DESIRABILITY = [
  { value: "0", label: "Nothing in particular" },
  { value: "0.5", label: "Some fine detail: lugs, chrome, eyelets" },
  { value: "1", label: "Much of it" },
] as const;
