import type { Appraisal } from "../api/types.ts";
import { money } from "./money.ts";
import { shareSentence } from "./ownShare.ts";

/**
 * What the bars of likely prices by state are, and where they come from.
 * @param price asked or paid; where it is known and not nothing, it is the dotted line
 */
export function bandsKey(
  { ownShare, comparables }: NonNullable<Appraisal["value"]>,
  price: number | undefined,
  paid: boolean,
  currency: string,
): string {
  const source = shareSentence(ownShare, comparables.length, "these estimates");
  const dotted = !price ? "" : ` Dotted line: ${money(price, currency)} ${paid ? "paid" : "asked"}.`;
  return `Likely prices by state, before haggling and fees. ${source} Pale bar: 8 in 10. Full bar: the middle half.${dotted}`;
}
