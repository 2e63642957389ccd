import type { Choice } from "../api/types.ts";

/** What a price of a sale stands for. */
export const KINDS: readonly Choice[] = [
  { value: "paid", label: "Paid" },
  { value: "asked", label: "Asked" },
];

/** What was sold. */
export const STATES: readonly Choice[] = [
  { value: "rides", label: "Rides" },
  { value: "does-not-ride", label: "Does not ride" },
  { value: "major-parts-missing", label: "Major parts missing" },
  { value: "frame-and-fork", label: "Frame and fork" },
];

/** How it was sold, as the share the API takes. */
export const CONDITIONS: readonly Choice[] = [
  { value: "0", label: "Needs listed work" },
  { value: "0.45", label: "Sound but tired" },
  { value: "0.75", label: "Ready and tidy" },
  { value: "1", label: "Fully restored" },
];
