import type { Fault } from "../api/fault.ts";
import { messagesAt } from "../api/fault.ts";
import type { SellingPlan } from "../api/types.ts";
import { NumberField } from "../parts/NumberField.tsx";
import { Choose } from "../parts/Picks.tsx";
import { sellingTerms } from "../state/selling.ts";
import { FIGURE_NAMES, MONTHS } from "../words/fields.ts";
import { currencySign } from "../words/money.ts";
import { inPercent } from "../words/refusal.ts";
import {
  asAppraised,
  MARKET_A_WEEK,
  MARKET_FACTS,
  MARKET_MONTH,
  MARKET_NO_MONTH,
  MARKET_WEEKS,
  marketHints,
} from "../words/sellingMarket.ts";
import { PLAN_TERMS } from "../words/sellingTexts.ts";
import type { BikeTerms, SellerTerms } from "./terms.ts";

interface MarketPanelProps {
  readonly id: string;
  readonly seller: SellerTerms;
  readonly bike: BikeTerms;
  /** The month the find is appraised for, 1 to 12; stands where the seller sets none. */
  readonly month: number | undefined;
  readonly plan: SellingPlan | null;
  readonly currency: string;
  readonly fault: Fault | null;
}

/** The terms of the plan, each with what stands where it is left empty. */
export function MarketPanel({ id, seller, bike, month, plan, currency, fault }: MarketPanelProps) {
  const { putSeller, putBike } = sellingTerms;
  const hints = marketHints(plan, { ...seller, ...bike });
  const sign = currencySign(currency);
  return (
    <section class="panel market" aria-labelledby="market-title">
      <h2 id="market-title">{PLAN_TERMS}</h2>
      <p class="small">{MARKET_FACTS}</p>
      <div class="fields">
        <NumberField
          label={FIGURE_NAMES["/market/weeks"]}
          value={seller.weeks}
          onValue={(value) => putSeller("weeks", value)}
          unit={MARKET_WEEKS}
          hint={hints.weeks}
          messages={messagesAt(fault, "/market/weeks")}
        />
        <NumberField
          label={FIGURE_NAMES["/market/storagePerWeek"]}
          value={seller.storagePerWeek}
          onValue={(value) => putSeller("storagePerWeek", value)}
          before={sign}
          unit={MARKET_A_WEEK}
          hint={hints.storagePerWeek}
          messages={messagesAt(fault, "/market/storagePerWeek")}
        />
        <NumberField
          label={FIGURE_NAMES["/market/arrivalsPerWeek"]}
          value={bike.arrivalsPerWeek}
          onValue={(value) => putBike(id, "arrivalsPerWeek", value)}
          unit={MARKET_A_WEEK}
          hint={hints.arrivalsPerWeek}
          messages={messagesAt(fault, "/market/arrivalsPerWeek")}
        />
        <Percent
          label={FIGURE_NAMES["/market/haggling"]}
          share={seller.haggling}
          onShare={(value) => putSeller("haggling", value)}
          hint={hints.haggling}
          messages={messagesAt(fault, "/market/haggling")}
        />
        <NumberField
          label={FIGURE_NAMES["/market/fallback"]}
          value={bike.fallback}
          onValue={(value) => putBike(id, "fallback", value)}
          before={sign}
          hint={hints.fallback}
          messages={messagesAt(fault, "/market/fallback")}
        />
        <Choose
          label={MARKET_MONTH}
          choices={MONTHS.map((label, i) => ({ value: String(i + 1), label }))}
          value={seller.month === undefined ? undefined : String(seller.month)}
          onValue={(value) => putSeller("month", value === undefined ? undefined : Number(value))}
          messages={messagesAt(fault, "/workshop/month")}
          none={month === undefined ? MARKET_NO_MONTH : asAppraised(MONTHS[month - 1])}
        />
      </div>
    </section>
  );
}

/** A share, entered in per cent. */
function Percent(props: {
  label: string;
  share: number | undefined;
  onShare: (share: number | undefined) => void;
  hint: string;
  messages: readonly string[];
}) {
  const { label, share, onShare, hint, messages } = props;
  return (
    <NumberField
      label={label}
      // A share as float carries a tail that nobody typed.
      value={share === undefined ? undefined : Number((share * 100).toFixed(6))}
      onValue={(percent) => onShare(percent === undefined ? undefined : percent / 100)}
      unit="%"
      hint={hint}
      messages={messages.map(inPercent)}
    />
  );
}
