import type { ValueBand } from "../api/types.ts";
import { EIGHT_IN_TEN } from "./common.ts";
import { money } from "./money.ts";
import { moneyRange } from "./range.ts";

/** "about €205", beside the name of a state. */
export function aboutPrice(price: number, currency: string): string {
  return `about ${money(price, currency)}`;
}

/** "about €205", "8 in 10 between €150 to €260". */
export function bandLines({ p10, p50, p90 }: ValueBand, currency: string): readonly string[] {
  return [aboutPrice(p50, currency), `${EIGHT_IN_TEN} ${moneyRange(p10, p90, currency)}`];
}
