import type { CourseOutcome } from "../api/types.ts";
import { Term } from "../parts/Term.tsx";
import { capital } from "../words/count.ts";
import { FIND_TEXTS } from "../words/findTexts.ts";
import { goalMoney, money, priceWords, roundMoney } from "../words/money.ts";
import { spentWords } from "../words/soFar.ts";
import { days, hours } from "../words/time.ts";
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
                <Term of="walk-away">Pay at most</Term> {money(most, currency)}
              </>
            ) : (
              FIND_TEXTS.notForNothing
            )}
          </b>
          <span class="small">
            {pays
              ? `${price === undefined ? "" : `They ask ${priceWords(price, currency)}. `}At ${money(most, currency)} you earn just your ${goalMoney(goal, currency)} an hour.`
              : `At any price an hour earns less than your ${goalMoney(goal, currency)}.`}
          </span>
        </div>
      )}
      {decision.breakEvenSalePrice !== null && (
        <div>
          <b>Breaks even at {money(decision.breakEvenSalePrice, currency)}</b>
          <span class="small">{FIND_TEXTS.breakEven}</span>
        </div>
      )}
      {shown !== null && decision.course !== "leave" && (
        <div>
          <b>{hours(shown.hours?.mean ?? 0)} of your time</b>
          <span class="small">{capital(tiedUp(shown, currency))}.</span>
        </div>
      )}
      {spent !== null && (
        <div>
          <b>{spent}</b>
          <span class="small">{FIND_TEXTS.notCounted}</span>
        </div>
      )}
    </div>
  );
}

function tiedUp({ cashNeeded, elapsedDays }: CourseOutcome, currency: string): string {
  const parts = [
    cashNeeded === null ? "" : `${money(cashNeeded, currency)} to lay out`,
    elapsedDays === null ? "" : `about ${days(elapsedDays)} until it is sold`,
  ].filter((part) => part !== "");
  return parts.join(", ");
}
