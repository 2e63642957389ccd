import { exp } from "../statistics/elementary/exp.ts";
import type { Influence } from "../valuation/influence.ts";
import { influences, ownShare, withMoreSales } from "../valuation/influence.ts";
import type { SaleDescription } from "../valuation/saleDescription.ts";
import { MORE_SALES } from "../valuation/valueBelief.ts";
import type { Appraisal, ValuedState } from "./appraisal.ts";
import type { SettledRequest } from "./settledRequest.ts";

type Value = NonNullable<Appraisal["value"]>;

/**
 * What the user's own prices do to the value of a find in one state, and what more of them would do.
 * @param state the state of which it is told: made safe where the bike can be, else as found
 */
export function ownSales(
  { market, request }: SettledRequest,
  surprising: number,
  state: ValuedState,
  bike: SaleDescription,
): Pick<Value, "comparables" | "ownShare" | "askedFactor" | "threeMore"> {
  const { belief, sales, logPriceLevel } = market;
  const level = exp(logPriceLevel);
  const moved = influences(belief, sales, bike);
  const { now, after } = withMoreSales(belief, bike, MORE_SALES);
  const ends = ({ p10, p90 }: typeof now) => ({ p10: level * p10, p90: level * p90 });
  const askedFactor = exp(belief.coefficients[belief.layout.asked]!);
  const told = ({ before, after, weight, says, distance }: Influence, index: number) => ({
    id: request.comparables?.[index]?.id ?? null,
    goingRate:
      (level * sales[index]!.goingRate) / (request.comparables?.[index]?.kind === "asked" ? askedFactor : 1),
    says: level * says,
    before: level * before,
    after: level * after,
    weight,
    surprising: Math.abs(distance) >= surprising,
  });
  return {
    comparables: moved.map(told),
    ownShare: ownShare(moved),
    askedFactor,
    threeMore: { state, now: ends(now), after: ends(after) },
  };
}
