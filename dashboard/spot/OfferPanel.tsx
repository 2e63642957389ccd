import type { Appraisal, Reference } from "../api/types.ts";
import { NumberField } from "../parts/NumberField.tsx";
import { currencySign } from "../words/money.ts";
import {
  atPrice,
  beforeYouPay,
  END_TRY_PRICE,
  leftAtPrice,
  offerAdvice,
  offerTitle,
} from "../words/spotEnd.ts";
import { partWords } from "../words/spotLooks.ts";
import { NO_LESS_THAN_NOTHING } from "../words/spotStart.ts";

interface OfferPanelProps {
  readonly known: Reference;
  readonly appraisal: Appraisal;
  readonly goal: number;
  readonly price: number | undefined;
  /** A price the user tries. */
  readonly offer: number | undefined;
  readonly onOffer: (offer: number | undefined) => void;
}

/** What to offer: the most, at which an hour earns just the goal, and what an hour earns at any other price. */
export function OfferPanel({ known, appraisal, goal, price, offer, onOffer }: OfferPanelProps) {
  const { currency, decision } = appraisal;
  const most = decision.walkAwayPrice;
  if (most === null) return null;
  const papers = known.checks.filter(
    ({ id, group }) => group === "paperwork" && appraisal.readiness.owed.includes(id),
  );
  const first = beforeYouPay(papers.map(partWords));
  const isTried = offer !== undefined && offer >= 0;
  return (
    <div class="ending">
      <h3>{offerTitle(most, currency)}</h3>
      {offerAdvice(appraisal, { goal, price }).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {first !== "" && <p>{first}</p>}
      <NumberField
        label={END_TRY_PRICE}
        value={offer}
        onValue={onOffer}
        before={currencySign(currency)}
        step={5}
        messages={offer !== undefined && offer < 0 ? [NO_LESS_THAN_NOTHING] : []}
      />
      <div role="status">
        {isTried && (
          <>
            <p>{atPrice(appraisal, { price, offer })}</p>
            <p class="small">{leftAtPrice(appraisal, { price, offer })}</p>
          </>
        )}
      </div>
    </div>
  );
}
