import { useMemo } from "preact/hooks";
import type { SellingPlan } from "../api/types.ts";
import { PlaneLayer } from "../charts/PlaneLayer.tsx";
import { TableDetails } from "../parts/TableDetails.tsx";
import { fineChance } from "../words/chance.ts";
import { askedMoney, CHART_WORDS, lowestMoney, soldTitle, stepsWords, weekLines } from "../words/selling.ts";
import {
  PLAN_HEAD_ASK,
  PLAN_HEAD_SOLD,
  PLAN_HEAD_TAKE,
  PLAN_HEAD_WEEK,
  PLAN_PRICE_OVER_WEEKS,
  PLAN_PRINT,
  weekTitle,
} from "../words/sellingTexts.ts";
import { planSpec } from "./planSpec.ts";

interface PricePanelProps {
  readonly plan: SellingPlan;
  /** Whether the lowest offers may be seen. */
  readonly shown: boolean;
  readonly onShown: (shown: boolean) => void;
  readonly onPrint: () => void;
  readonly dimmed: boolean;
}

/** Price over weeks: what to ask, how likely it has sold, and what to take once that is shown. */
export function PricePanel({ plan, shown, onShown, onPrint, dimmed }: PricePanelProps) {
  const { path, currency } = plan;
  const spec = useMemo(() => planSpec(plan, shown), [plan, shown]);
  return (
    <section class="panel pricepanel" aria-labelledby="weeks-title">
      <h2 id="weeks-title">{soldTitle(path)}</h2>
      <p class="small">{stepsWords(path, currency)}</p>
      <p class="small">
        {CHART_WORDS.read} {shown ? CHART_WORDS.readLowest : ""}
      </p>
      <PlaneLayer
        spec={spec}
        tellings={path.map((week) => ({
          title: weekTitle(week.week),
          lines: weekLines(week, currency, shown),
        }))}
        dimmed={dimmed}
      />
      <div class="acts">
        <button type="button" class="btn quiet" aria-pressed={shown} onClick={() => onShown(!shown)}>
          {CHART_WORDS.lowest}
        </button>
        <button type="button" class="btn quiet" onClick={onPrint}>
          {PLAN_PRINT}
        </button>
      </div>
      <p class="small">{shown ? CHART_WORDS.shown : CHART_WORDS.hidden}</p>
      <TableDetails
        caption={PLAN_PRICE_OVER_WEEKS}
        head={[PLAN_HEAD_WEEK, PLAN_HEAD_ASK, ...(shown ? [PLAN_HEAD_TAKE] : []), PLAN_HEAD_SOLD]}
        rows={path.map(({ week, price, lowestOffer, chanceSold }) => [
          String(week),
          askedMoney(price, currency),
          ...(shown ? [lowestMoney(lowestOffer, price, currency)] : []),
          fineChance(chanceSold),
        ])}
      />
    </section>
  );
}
