import { useMemo } from "preact/hooks";
import type { Appraisal, AppraisalBody, Reference } from "../api/types.ts";
import type { Find } from "../finds/find.ts";
import { ListingDraft } from "../listing/ListingDraft.tsx";
import type { SaleState } from "../listing/saleStates.ts";
import type { Vocabulary } from "../ownPrices/vocabulary.ts";
import { ownPrices } from "../state/ownPrices.ts";
import { ADVERT_MUST_SAY } from "../words/soldState.ts";
import { BandPanel } from "./BandPanel.tsx";
import { ComparablesPanel } from "./ComparablesPanel.tsx";
import { comparableRows } from "./comparableRows.ts";
import type { Value } from "./states.ts";
import { stepFacts } from "./stepFacts.ts";
import { ThreeMorePanel } from "./ThreeMorePanel.tsx";
import { WaterfallPanel } from "./WaterfallPanel.tsx";

interface SalePanelsProps {
  readonly answer: Appraisal;
  readonly value: Value;
  readonly state: SaleState;
  readonly find: Find;
  readonly body: AppraisalBody;
  readonly known: Reference;
  readonly vocabulary: Vocabulary;
  readonly price: number | undefined;
  readonly paid: boolean;
  readonly dimmed: boolean;
}

/** Everything about selling one find: what it fetches, why, what own sales did to that, and the advert. */
export function SalePanels(props: SalePanelsProps) {
  const { answer, value, state, find, body, known, vocabulary: words, price, paid, dimmed } = props;
  const { currency } = answer;
  const kept = ownPrices.sales.value;
  const rows = useMemo(() => comparableRows(value, kept), [value, kept]);
  const facts = useMemo(() => stepFacts(body.find, words), [body, words]);
  const band = value[state];
  return (
    <div class="two sale">
      <div class="a1">
        <BandPanel
          value={value}
          picked={state}
          rows={rows}
          currency={currency}
          vocabulary={words}
          price={price}
          paid={paid}
          dimmed={dimmed}
        />
      </div>
      <div class="b">
        <ComparablesPanel find={find} value={value} rows={rows} currency={currency} vocabulary={words} />
        <ThreeMorePanel value={value} currency={currency} />
      </div>
      <div class="a2">
        <WaterfallPanel facts={facts} value={value} state={state} currency={currency} dimmed={dimmed} />
        <section class="panel" aria-labelledby="advert-title">
          <h2 id="advert-title">{ADVERT_MUST_SAY}</h2>
          <ListingDraft
            answer={answer}
            body={body}
            reference={known}
            state={state}
            stateFixed
            invented={find.invented}
            {...(band === null ? {} : { suggested: [band.p25, band.p50, band.p75] })}
          />
        </section>
      </div>
    </div>
  );
}
