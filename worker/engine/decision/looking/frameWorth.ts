import type { Money } from "../../quantity.ts";
import { logNormalMean } from "../../statistics/logNormal.ts";
import type { Sale } from "../branch.ts";
import { partsSale, whenFrameLost, whenFrameSells } from "../partsSale.ts";
import type { Situation } from "../situation.ts";

/** What the frame adds to the takings of a bike broken for parts where it may be sold; 0 where it is not listed. */
export function frameWorth({
  parts: { list },
  pricing,
  frameUnsaleableChance,
  fixedPlans,
}: Situation): Money {
  if (frameUnsaleableChance === 1) return 0;
  const clear = 1 - fixedPlans["break-for-parts"].endsTitle;
  const sells = takings(partsSale(whenFrameSells(list, frameUnsaleableChance), pricing));
  return clear * (sells - takings(partsSale(whenFrameLost(list), pricing)));
}

function takings(sale: Sale | null): Money {
  return sale ? sale.share * logNormalMean(sale.price) : 0;
}
