import type { SellingPlan } from "../api/types.ts";
import type { PlaneSpec } from "../charts/PlaneLayer.tsx";
import { type WeeksTold, weekAt } from "../charts/weeks.ts";
import { weeksScene } from "../charts/weeksScene.ts";
import { fineChance } from "../words/chance.ts";
import { money } from "../words/money.ts";
import { askedMoney, CHART_WORDS, chartSentence } from "../words/selling.ts";

/** The plan as a chart. @param shown whether the lowest offers may be seen */
export function planSpec({ path, currency }: SellingPlan, shown: boolean): PlaneSpec {
  const told: WeeksTold = {
    weeks: path.map(({ week, price, chanceSold, lowestOffer }) => ({
      week,
      price,
      sold: chanceSold,
      lowest: shown ? lowestOffer : null,
    })),
    sayPrice: (price) => askedMoney(price, currency),
    ask: CHART_WORDS.ask,
    take: CHART_WORDS.take,
    soldWords: fineChance(path.at(-1)?.chanceSold ?? 0),
  };
  return {
    label: chartSentence(path, currency, shown),
    across: CHART_WORDS.across,
    up: CHART_WORDS.up,
    sayX: (x) => String(weekAt(x)),
    sayY: (price) => money(price, currency),
    scene: (size, measure) => weeksScene(told, size, measure),
  };
}
