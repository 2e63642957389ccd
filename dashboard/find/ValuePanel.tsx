import { useMemo } from "preact/hooks";
import { TableDetails } from "../parts/TableDetails.tsx";
import { BandChart } from "../sale/BandChart.tsx";
import { bandRows, pricedStates, type Value } from "../sale/states.ts";
import { FIND_LIKELY_PRICE, FIND_UNLIKE_DATA, FIND_WHERE_FROM } from "../words/findPanels.ts";
import { BAND_HEAD } from "../words/states.ts";
import { valueTitle } from "../words/titles.ts";
import { bandsKey } from "../words/valuePanel.ts";

interface ValuePanelProps {
  readonly value: Value;
  /** Where the page about selling it stands; null where there is none. */
  readonly sellAt: string | null;
  readonly currency: string;
  readonly price: number | undefined;
  readonly paid: boolean;
  readonly dimmed: boolean;
}

/** Likely prices by state of the bike. */
export function ValuePanel({ value, sellAt, currency, price, paid, dimmed }: ValuePanelProps) {
  const states = useMemo(() => pricedStates(value), [value]);
  return (
    <section class="panel" aria-labelledby="value-title">
      <h2 id="value-title">{valueTitle(value, currency)}</h2>
      <p class="small">{bandsKey(value, price, paid, currency)}</p>
      {value.extrapolates && <p class="note">{FIND_UNLIKE_DATA}</p>}
      <BandChart
        label={`${valueTitle(value, currency)}.`}
        states={states}
        currency={currency}
        price={price}
        dimmed={dimmed}
      />
      <TableDetails caption={FIND_LIKELY_PRICE} head={BAND_HEAD} rows={bandRows(states, currency)} />
      {sellAt !== null && (
        <p class="small">
          <a href={sellAt}>{FIND_WHERE_FROM}</a>
        </p>
      )}
    </section>
  );
}
