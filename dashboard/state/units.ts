import type { LengthUnit } from "../words/length.ts";
import { preference } from "./preference.ts";
import { browserStore, shelf } from "./shelf.ts";

const kept = preference<LengthUnit>(shelf(browserStore(), "spokeworth.lengths"), ["mm", "in"]);

/** How lengths are shown and typed: millimetres until the user says inches. What is asked stays in millimetres. */
export const lengthUnit = kept.value;
export const setLengthUnit = kept.set;
