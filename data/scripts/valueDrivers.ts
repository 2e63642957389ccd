import type { Era, Tier } from "../../worker/engine/bicycle.ts";
import { restorationInterest, termHolds } from "../../worker/engine/valuation/bikeClass.ts";
import type {
  NotRiding,
  Papers,
  Presentation,
  SaleDescription,
} from "../../worker/engine/valuation/saleDescription.ts";
import type { ValueDesign, ValueTerm } from "../../worker/engine/valuation/valueTables.ts";
import table from "../value-drivers.json" with { type: "json" };

type ByTier = Readonly<Record<Tier, number>>;
type Factor = ValueTerm & { readonly factor: number };
type Limits = readonly [number, number];
type FourKnots = readonly [number, number, number, number];

/** The invented truth behind the demo sales. Factors multiply the ready value of a plain bike of the 2010s. */
export interface ValueDrivers {
  readonly design: Pick<
    ValueDesign,
    "eraGroups" | "reference" | "conditionKnots" | "originalityKnots" | "circumstanceLimits" | "interest"
  >;
  readonly readyValue: Readonly<Record<string, ByTier>>;
  readonly era: Readonly<Record<string, Readonly<Record<Era, number>>>>;
  readonly material: readonly Factor[];
  readonly size: Readonly<Record<string, number>>;
  readonly fashion: readonly Factor[];
  /** At the four originality knots. */
  readonly originality: FourKnots;
  /** At desirability 1. */
  readonly desirability: number;
  readonly condition: {
    readonly restored: ByTier;
    readonly tired: ByTier;
    readonly needsWork: ByTier;
    readonly notRiding: Readonly<Record<NotRiding, ByTier>>;
  };
  readonly presentation: Readonly<Record<Presentation, number>>;
  readonly papers: Readonly<Record<Papers, number>>;
  readonly month: readonly number[];
  readonly place: Readonly<Record<string, number>>;
  /** 10 and 90 % points of the price over its median. */
  readonly spread: {
    readonly ordinary: Limits;
    readonly collectable: Limits;
    readonly collectableKinds: readonly ValueTerm[];
  };
}

export const VALUE_DRIVERS = table as unknown as ValueDrivers;

/** The regression's design that fits these drivers. */
export function designOf({ design, material, fashion, spread }: ValueDrivers): ValueDesign {
  const plain = ({ factor: _, ...term }: Factor): ValueTerm => term;
  const multiple = logWidth(spread.collectable) / logWidth(spread.ordinary);
  return {
    ...design,
    material: material.map(plain),
    fashion: fashion.map(plain),
    collectable: { any: spread.collectableKinds, spread: multiple },
  };
}

/** Log of the distance between the 10 and 90 % points: 2 x 1.2816 standard deviations. */
export function logWidth([low, high]: Limits): number {
  return Math.log(high / low);
}

/** Log of the true median price of a sale, written as the trade says it: one factor after another. */
export function trueLogMedian(drivers: ValueDrivers, sale: SaleDescription): number {
  const { attributes: bike, originality } = sale;
  const fashion = drivers.fashion.filter((term) => termHolds(term, bike, originality));
  const material = drivers.material.filter((term) => termHolds(term, bike, originality));
  const product =
    drivers.readyValue[bike.category]![bike.componentTier] *
    (drivers.era[bike.category] ?? drivers.era.other!)[bike.era] *
    [...fashion, ...material].reduce((factor, term) => factor * term.factor, 1) *
    drivers.size[bike.sizeClass]!;
  return (
    Math.log(product) +
    sale.desirability * Math.log(drivers.desirability) +
    conditionEffect(drivers, sale) +
    (sale.asFound
      ? Math.log(season(drivers, sale.month))
      : between(drivers.design.originalityKnots, drivers.originality.map(Math.log), originality) +
        circumstances(drivers, sale))
  );
}

function conditionEffect({ condition, design }: ValueDrivers, sale: SaleDescription): number {
  const tier = sale.attributes.componentTier;
  if (sale.state.kind !== "rides") return Math.log(condition.notRiding[sale.state.kind][tier]);
  const premium = interestOf(design, sale) * Math.log(condition.restored[tier]);
  const heights = [Math.log(condition.needsWork[tier]), Math.log(condition.tired[tier]), 0, premium];
  return between(design.conditionKnots, heights, sale.state.condition);
}

/** The four drivers that overlap, their product held between the limits. */
function circumstances(drivers: ValueDrivers, sale: SaleDescription): number {
  const [low, high] = drivers.design.circumstanceLimits;
  const polish = sale.presentation === "full" ? interestOf(drivers.design, sale) : 1;
  const product =
    drivers.presentation[sale.presentation] ** polish *
    drivers.papers[sale.papers] *
    season(drivers, sale.month) *
    drivers.place[sale.attributes.place]!;
  return Math.log(Math.min(high, Math.max(low, product)));
}

function interestOf(design: ValueDrivers["design"], sale: SaleDescription): number {
  return restorationInterest(design.interest, sale.attributes);
}

function season({ month }: ValueDrivers, of: number | null): number {
  if (of !== null) return month[of - 1]!;
  return Math.exp(month.reduce((sum, factor) => sum + Math.log(factor) / month.length, 0));
}

/** Straight line from knot to knot. */
function between(knots: FourKnots, heights: readonly number[], x: number): number {
  const next = Math.max(
    1,
    knots.findIndex((knot) => knot >= x),
  );
  const [left, right] = [knots[next - 1]!, knots[next]!];
  return heights[next - 1]! + ((x - left) / (right - left)) * (heights[next]! - heights[next - 1]!);
}
