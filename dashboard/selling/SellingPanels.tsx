import { useMemo } from "preact/hooks";
import type { Fault } from "../api/fault.ts";
import type { Appraisal, AppraisalBody, Reference, SellingPlan, WholeState } from "../api/types.ts";
import type { Find } from "../finds/find.ts";
import { isInvented } from "../finds/ownership.ts";
import { ListingDraft } from "../listing/ListingDraft.tsx";
import { countedWords, sellingFacts } from "../words/sellingFacts.ts";
import { ADVERT_MUST_SAY } from "../words/soldState.ts";
import type { OfferMade } from "./body.ts";
import { FactsPanel } from "./FactsPanel.tsx";
import { MarketPanel } from "./MarketPanel.tsx";
import { OfferPanel } from "./OfferPanel.tsx";
import { PricePanel } from "./PricePanel.tsx";
import type { BikeTerms, SellerTerms } from "./terms.ts";
import type { OfferEntry } from "./useOffer.ts";

interface SellingPanelsProps {
  readonly find: Find;
  readonly known: Reference;
  /** The appraisal, and the question it answers: the advert is drafted from them. */
  readonly answer: Appraisal;
  readonly body: AppraisalBody;
  readonly state: WholeState;
  readonly plan: SellingPlan;
  readonly seller: SellerTerms;
  readonly bike: BikeTerms;
  readonly entry: OfferEntry;
  /** The offer that the plan answers; null where it was asked without one. */
  readonly answered: OfferMade | null;
  readonly fault: Fault | null;
  readonly shown: boolean;
  readonly onShown: (shown: boolean) => void;
  readonly onPrint: () => void;
  readonly dimmed: boolean;
}

/** The price plan of one find, the offer that came, the terms, and the advert. */
export function SellingPanels(props: SellingPanelsProps) {
  const { find, known, answer, body, state, plan, seller, bike, entry, answered, fault } = props;
  const { shown, onShown, onPrint, dimmed } = props;
  const facts = useMemo(() => sellingFacts(plan), [plan]);
  return (
    <div class="two selling">
      <div class="a">
        <PricePanel plan={plan} shown={shown} onShown={onShown} onPrint={onPrint} dimmed={dimmed} />
        <OfferPanel plan={plan} entry={entry} answered={answered} fault={fault} />
        <FactsPanel facts={facts} counted={countedWords(plan.market)} />
        <MarketPanel
          id={find.id}
          seller={seller}
          bike={bike}
          month={body.workshop?.month}
          plan={plan}
          currency={answer.currency}
          fault={fault}
        />
      </div>
      <div class="advert">
        <section class="panel" aria-labelledby="advert-title">
          <h2 id="advert-title">{ADVERT_MUST_SAY}</h2>
          <ListingDraft
            answer={answer}
            body={body}
            reference={known}
            state={state}
            stateFixed
            askingPrice={plan.listPrice}
            invented={isInvented(find)}
          />
        </section>
      </div>
    </div>
  );
}
