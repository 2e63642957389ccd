import type { CourseOutcome } from "../api/types.ts";
import { Term } from "../parts/Term.tsx";
import { AT_ANY_PRICE, breaksEvenAt, ofYourTime, PAY_AT_MOST, theyAsk, tiedUp } from "../words/findOffers.ts";
import { FIND_BREAK_EVEN, FIND_NOT_COUNTED, FIND_NOT_FOR_NOTHING } from "../words/findPanels.ts";
import { money, roundMoney } from "../words/money.ts";
import { atMost, neverPays } from "../words/mostToPay.ts";
import { spentWords } from "../words/soFar.ts";
import type { Shown } from "./VerdictPanel.tsx";

/** What to pay and what it takes. */
export function Offers({ appraisal, goal, price, paid, shown }: Shown & { shown: CourseOutcome | null }) {
  const { currency, decision, soFar } = appraisal;
  const most = decision.walkAwayPrice;
  // What would read as nothing is nothing.
  const pays = most !== null && roundMoney(most) > 0;
  const spent = spentWords(soFar, currency);
  return (
    <div class="offers">
      {most !== null && !paid && (
        <div>
          <b>
            {pays ? (
              <>
                <Term of="walk-away">{PAY_AT_MOST}</Term> {money(most, currency)}
              </>
            ) : (
              FIND_NOT_FOR_NOTHING
            )}
          </b>
          <span class="small">
            {pays
              ? `${theyAsk(price, currency)}${atMost(most, goal, appraisal)}`
              : neverPays(AT_ANY_PRICE, goal, appraisal)}
          </span>
        </div>
      )}
      {decision.breakEvenSalePrice !== null && (
        <div>
          <b>{breaksEvenAt(decision.breakEvenSalePrice, currency)}</b>
          <span class="small">{FIND_BREAK_EVEN}</span>
        </div>
      )}
      {shown !== null && decision.course !== "leave" && (
        <div>
          <b>{ofYourTime(shown.hours?.mean ?? 0)}</b>
          <span class="small">{tiedUp(shown, currency)}</span>
        </div>
      )}
      {spent !== null && (
        <div>
          <b>{spent}</b>
          <span class="small">{FIND_NOT_COUNTED}</span>
        </div>
      )}
    </div>
  );
}
