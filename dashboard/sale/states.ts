import type { Appraisal, ValueBand } from "../api/types.ts";
import type { SaleState } from "../listing/saleStates.ts";
import { money } from "../words/money.ts";
import { moneyRange } from "../words/range.ts";
import { STATE_NAMES } from "../words/states.ts";

export type Value = NonNullable<Appraisal["value"]>;

/** A state the bike can be sold in, with what it then fetches. */
export interface PricedState {
  readonly state: SaleState;
  readonly name: string;
  readonly band: ValueBand;
}

/** The states the bike can be sold in. */
export function pricedStates(value: Value): readonly PricedState[] {
  return (Object.keys(STATE_NAMES) as SaleState[]).flatMap((state) => {
    const band = value[state];
    return band === null ? [] : [{ state, name: STATE_NAMES[state], band }];
  });
}

/** The figures of the ranges as rows of a table, under `BAND_HEAD`. */
export function bandRows(states: readonly PricedState[], currency: string): readonly (readonly string[])[] {
  return states.map(({ name, band }) => [
    name,
    money(band.p50, currency),
    moneyRange(band.p25, band.p75, currency),
    moneyRange(band.p10, band.p90, currency),
  ]);
}
