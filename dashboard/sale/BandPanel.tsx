import { useMemo } from "preact/hooks";
import type { SaleState } from "../listing/saleStates.ts";
import type { Vocabulary } from "../ownPrices/vocabulary.ts";
import { TableDetails } from "../parts/TableDetails.tsx";
import { BANDS_CAPTION, bandsFacts, dotsFacts, ownSalesTold, yourSale } from "../words/bands.ts";
import { money } from "../words/money.ts";
import { saleName } from "../words/ownPrices.ts";
import { shareSentence } from "../words/ownShare.ts";
import { otherStatesTitle } from "../words/sale.ts";
import { BAND_HEAD } from "../words/states.ts";
import { BandChart, isBeyond, type OwnDots } from "./BandChart.tsx";
import type { ComparableRow } from "./comparableRows.ts";
import { DotKey } from "./DotKey.tsx";
import { bandRows, pricedStates, type Value } from "./states.ts";

interface BandPanelProps {
  readonly value: Value;
  /** The state the page is about. */
  readonly picked: SaleState;
  readonly rows: readonly ComparableRow[];
  readonly currency: string;
  readonly vocabulary: Vocabulary;
  readonly price: number | undefined;
  readonly paid: boolean;
  readonly dimmed: boolean;
}

/** Sales of the user's own that the table names; all of them stand in the chart. */
const IN_TABLE = 100;

/** What the bike fetches by state, with the user's own prices as dots. */
export function BandPanel(props: BandPanelProps) {
  const { value, picked, rows, currency, vocabulary, price, paid, dimmed } = props;
  const { state } = value.threeMore;
  const states = useMemo(() => pricedStates(value), [value]);
  const own = useMemo(() => ownDots(rows, state, currency), [rows, state, currency]);
  const title = otherStatesTitle(value, picked, currency);
  return (
    <section class="panel" aria-labelledby="band-title">
      <h2 id="band-title">{title}</h2>
      <p class="small">{bandsFacts(price, paid, currency)}</p>
      <p class="note">
        {shareSentence(value.ownShare, value.comparables.length)}
        {rows.length === 0 ? "" : dotsFacts(state)}
      </p>
      <BandChart
        label={`${title}. ${own.told.join(". ")}`}
        states={states}
        currency={currency}
        price={price}
        own={own}
        dimmed={dimmed}
      />
      {rows.length > 0 && (
        <DotKey
          surprising={rows.some((row) => row.surprising)}
          beyond={rows.some(({ says }) => isBeyond(says, states, price))}
        />
      )}
      <TableDetails
        caption={BANDS_CAPTION}
        head={BAND_HEAD}
        rows={[
          ...bandRows(states, currency),
          ...rows
            .slice(0, IN_TABLE)
            .map(({ sale, says }, i) => [
              yourSale(i + 1, saleName(sale, vocabulary), sale.kind),
              money(says, currency),
              "",
              "",
            ]),
        ]}
      />
    </section>
  );
}

function ownDots(rows: readonly ComparableRow[], state: OwnDots["state"], currency: string): OwnDots {
  const far = rows.filter(({ surprising }) => surprising).length;
  return {
    state,
    dots: rows.map((row) => ({ value: row.says, open: row.sale.kind === "asked", ringed: row.surprising })),
    told: ownSalesTold(
      rows.map(({ says }) => says),
      far,
      currency,
    ),
  };
}
