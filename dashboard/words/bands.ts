import type { SaleState } from "../listing/saleStates.ts";
import { counted } from "./count.ts";
import { money } from "./money.ts";
import { STATE_NAMES } from "./states.ts";

/** What the table of likely prices holds. */
export const BANDS_CAPTION = "Likely price by state, and your own sales";
/** What the dots over the bars are. */
export const DOT_KEY_PAID = "what this bike would fetch if it sold as yours did (paid)";
export const DOT_KEY_ASKED = "the same from an asking price";
export const DOT_KEY_SURPRISING = "far from all else";
export const DOT_KEY_BEYOND = "arrow head: beyond the axis";

/**
 * What the bars are.
 * @param price asked or paid; where it is known and not nothing, it is the dotted line
 */
export function bandsFacts(price: number | undefined, paid: boolean, currency: string): string {
  const dotted = price ? ` Dotted line: ${money(price, currency)} ${paid ? "paid" : "asked"} for it.` : "";
  return `Before haggling, fees and post. Pale bar: 8 in 10. Full bar: the middle half. Upright line: the middle.${dotted}`;
}

/** " Dots: each of them, read as this bike made safe.", after what the user's own sales count for. */
export function dotsFacts(state: SaleState): string {
  return ` Dots: each of them, read as this bike ${STATE_NAMES[state].toLowerCase()}.`;
}

/** "Your sale 2: Grey hybrid, paid", in the table. */
export function yourSale(number: number, name: string, kind: string): string {
  return `Your sale ${number}: ${name}, ${kind}`;
}

/**
 * What the user's own sales say of the bike: "three sales of your own: from €120 to €190", "one sale far from all else".
 * @param says what each would have it fetch
 * @param far how many of them lie far from all else
 */
export function ownSalesTold(says: readonly number[], far: number, currency: string): readonly string[] {
  if (says.length === 0) return [];
  const span =
    says.length === 1
      ? money(says[0] ?? 0, currency)
      : `from ${money(Math.min(...says), currency)} to ${money(Math.max(...says), currency)}`;
  return [
    `${counted(says.length, "sale")} of your own: ${span}`,
    ...(far === 0 ? [] : [`${counted(far, "sale")} far from all else`]),
  ];
}
