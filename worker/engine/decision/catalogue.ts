import type { InspectionTables } from "../inspection/inspectionTables.ts";
import type { Minutes, Money, MoneyPerHour, Probability } from "../quantity.ts";
import type { SellingTables } from "../selling/demand/sellingTables.ts";
import type { CourseId } from "../service/operation.ts";
import type { PartId, PriceRange } from "../service/part.ts";
import type { ServiceTables } from "../service/serviceTables.ts";
import type { StopRule } from "../service/stopLimit.ts";
import type { ValueTables } from "../valuation/valueTables.ts";
import type { Caution } from "./caution.ts";

/** What stands in for a field that the request leaves out, and the conventions of the trade that the user may replace. */
export interface Defaults {
  readonly currency: string;
  readonly hourlyGoal: MoneyPerHour;
  /** Highest goal at which it is asked which course would be chosen, at price level 1. */
  readonly goalsUpTo: MoneyPerHour;
  readonly skill: 1 | 2 | 3 | 4;
  readonly speedFactor: number;
  /** Standard deviation of the logarithm of the common speed factor. */
  readonly speedSpread: number;
  readonly fee: { readonly rate: Probability; readonly fixed: Money };
  readonly packing: Money;
  readonly priceLevel: number;
  /** Share that a buyer talks off the going rate. */
  readonly haggling: { readonly asFound: Probability; readonly rideable: Probability };
  readonly delivery: { readonly perOrder: PriceRange; readonly orders: Readonly<Record<CourseId, number>> };
  /** Calendar: waiting days for parts, hours of work in an evening, days from listing to hand-over. */
  readonly calendar: {
    readonly partsWaitDays: number;
    readonly hoursPerEvening: number;
    readonly sellingDays: number;
  };
  /** 0 to 1. */
  readonly desirability: number;
  /** 0 to 1. */
  readonly originality: number;
  readonly purchase: {
    readonly price: Money;
    readonly paid: boolean;
    readonly travelMinutes: Minutes;
    readonly travelCost: Money;
  };
  /** Restore must beat make safe by the larger of one hour's goal and this share of the restored value. */
  readonly restoreNoise: Probability;
  /** A check goes before the course where it gains at least so many hours at the goal. */
  readonly lookFirstHours: number;
  /** Kinds that this catalogue does not appraise, with the caution that says so. */
  readonly outOfScope: readonly {
    readonly category: string;
    readonly caution: string;
    readonly reason: string;
  }[];
  /** Originality of a bike painted over, 0 to 1. */
  readonly repaintedOriginality: Probability;
  /** An asking price below this share of the value as found raises the question of ownership before it raises the margin. */
  readonly suspiciousBelow: Probability;
  /** An unseen fault likelier than this stands in the shown plan. */
  readonly assumedAbove: Probability;
  /** Parts assumed missing where the request names none, by completeness. */
  readonly missingParts: Readonly<Record<string, readonly PartId[]>>;
  /** Minutes to hunt down each missing part. */
  readonly huntMinutesPerMissingPart: Minutes;
  /** When to ask again whether freeing a part still pays, and when to give up in any case. */
  readonly stopRule: StopRule;
}

/** Every table the engine reads, parsed and cross-checked once at the edge and passed in as an argument. */
export interface Catalogue {
  /** Hash of the tables' content. */
  readonly version: string;
  readonly inspection: InspectionTables;
  readonly service: ServiceTables;
  readonly value: ValueTables;
  readonly selling: SellingTables;
  readonly cautions: readonly Caution[];
  readonly defaults: Defaults;
}
