import type { SaleState } from "../listing/saleStates.ts";
import { EIGHT_IN_TEN } from "./common.ts";

/** The states that a bike can be sold in. */
export const STATE_NAMES: Readonly<Record<SaleState, string>> = {
  asFound: "As found",
  madeSafe: "Made safe",
  restored: "Restored",
  parts: "As parts",
};

/** The columns of a table of ranges by state. */
export const BAND_HEAD = ["State", "Middle", "Half between", EIGHT_IN_TEN] as const;
