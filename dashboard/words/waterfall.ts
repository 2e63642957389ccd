import type { SaleState } from "../listing/saleStates.ts";
import { money } from "./money.ts";
import { STATE_NAMES } from "./states.ts";

/** Texts of the panel that leads from a plain bicycle to the price of this one. */
export const WATERFALL_FACTS =
  "From a plain bicycle to this one, a step for each thing that moves the price. Hatched: takes off. Rounded, so the steps may not add up to the last unit.";
export const WATERFALL_YOURS = "your sales";
export const WATERFALL_SOME_YOURS =
  "Steps marked as yours rest on your own sales. The others come from invented demo sales, which yours correct a little.";
export const WATERFALL_ALL_INVENTED = "Every step comes from invented demo sales.";
export const WATERFALL_CAPTION = "From a plain bicycle to this one";
export const WATERFALL_HEAD = ["Step", "Change", "Times", "Price so far"] as const;

/** "1990s: −€20". */
export function stepTold(name: string, said: string): string {
  return `${name}: ${said}`;
}

/** "price so far €140". */
export function priceSoFar(price: number, currency: string): string {
  return `price so far ${money(price, currency)}`;
}

/** The whole prices that the steps lead from and to, and what the second is. */
export const PLAIN_BICYCLE = "A plain bicycle";
export const MIDDLE_OF_RANGE = "the middle of its range";

/** "This one, made safe". */
export function thisOne(state: SaleState): string {
  return `This one, ${STATE_NAMES[state].toLowerCase()}`;
}
