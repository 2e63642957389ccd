import type { SaleState } from "../listing/saleStates.ts";
import { STATE_NAMES } from "./states.ts";

/** The two ranges that are set one under the other. */
export const NOW = "Now";
export const WITH_THREE = "With three more";

/** What the ranges are of. */
export function threeMoreFacts(state: SaleState): string {
  return `${STATE_NAMES[state]}, if they sold at the price expected. 8 in 10 lie in the bar.`;
}
