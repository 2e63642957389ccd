import type { ComparisonAnswer } from "../api/types.ts";
import { money } from "../words/money.ts";
import { between, moneyRange } from "../words/range.ts";
import { SET_ALL_OUT, SET_CASH, SET_HOURS_PAID, SET_LEFT } from "../words/setTexts.ts";
import { hours } from "../words/time.ts";
import { afterLeaving, HOURS, IN_TEN, leftAfter, OUTCOMES_IN_TEN } from "../words/togetherTerms.ts";

interface TotalProps {
  readonly total: NonNullable<ComparisonAnswer["total"]>;
  /** What leaving the others costs, in money and at the goal. */
  readonly leaving: number;
  readonly goal: number;
  readonly currency: string;
}

/** What the whole set comes to. */
export function Total({ total, leaving, goal, currency }: TotalProps) {
  return (
    <dl class="settotal">
      <div>
        <dt>{SET_LEFT}</dt>
        <dd>
          <b>{money(total.margin, currency)}</b>
          <span>
            {OUTCOMES_IN_TEN}{" "}
            <span class="nowrap">{moneyRange(total.marginP10, total.marginP90, currency)}</span>
          </span>
        </dd>
      </div>
      <div>
        <dt>{leftAfter(goal, currency)}</dt>
        <dd>
          <b>{money(total.netBenefit, currency)}</b>
          <span>{leaving > 0.5 ? afterLeaving(leaving, currency) : SET_HOURS_PAID}</span>
        </dd>
      </div>
      <div>
        <dt>{HOURS}</dt>
        <dd>
          <b>{hours(total.hours)}</b>
          <span>
            {IN_TEN} <span class="nowrap">{between(hours(total.hoursP10), hours(total.hoursP90))}</span>
          </span>
        </dd>
      </div>
      <div>
        <dt>{SET_CASH}</dt>
        <dd>
          <b>{money(total.cash, currency)}</b>
          <span>{SET_ALL_OUT}</span>
        </dd>
      </div>
    </dl>
  );
}
