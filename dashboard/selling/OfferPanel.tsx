import type { Fault } from "../api/fault.ts";
import { messagesAt } from "../api/fault.ts";
import type { SellingPlan } from "../api/types.ts";
import { NumberField } from "../parts/NumberField.tsx";
import { Choose } from "../parts/Picks.tsx";
import { FIGURE_NAMES } from "../words/fields.ts";
import { currencySign } from "../words/money.ts";
import { OFFER_CAME_IN, OFFER_TITLE, offerWords, weekWord } from "../words/sellingOffer.ts";
import type { OfferMade } from "./body.ts";
import type { OfferEntry } from "./useOffer.ts";

interface OfferPanelProps {
  readonly plan: SellingPlan;
  readonly entry: OfferEntry;
  /** The offer that the plan answers; null where it was asked without one. */
  readonly answered: OfferMade | null;
  readonly fault: Fault | null;
}

/** An offer that came: take it, ask for more, or wait. */
export function OfferPanel({ plan, entry, answered, fault }: OfferPanelProps) {
  const { currency, path, offer } = plan;
  const { amount, week, putAmount, putWeek } = entry;
  const words = offer === null || answered === null ? null : offerWords(offer, answered, plan);
  return (
    <section class="panel offer" aria-labelledby="offer-title">
      <h2 id="offer-title">{OFFER_TITLE}</h2>
      <div class="fields">
        <NumberField
          label={FIGURE_NAMES["/offer/amount"]}
          value={amount}
          onValue={putAmount}
          before={currencySign(currency)}
          messages={messagesAt(fault, "/offer/amount")}
        />
        <Choose
          label={OFFER_CAME_IN}
          choices={path.slice(1).map((one) => ({ value: String(one.week), label: weekWord(one.week) }))}
          none={weekWord(1)}
          value={week === 1 ? undefined : String(week)}
          onValue={(picked) => putWeek(Number(picked ?? 1))}
          messages={messagesAt(fault, "/offer/week")}
        />
      </div>
      <div class="offersaid" role="status">
        {words !== null && (
          <>
            <p class="advice">
              {words.advice} <span class="small">{words.about}</span>
            </p>
            <p>{words.reason}</p>
            <p class="small">{words.rate}</p>
          </>
        )}
      </div>
    </section>
  );
}
