import type { DescribedAttributes, Dimensions } from "../inspection/find.ts";
import type { Observations } from "../inspection/observation.ts";
import type { Minutes, Money, MoneyPerHour, Probability } from "../quantity.ts";
import type { OperationId } from "../service/operation.ts";
import type { PartId } from "../service/part.ts";
import type { Comparable } from "../valuation/comparable.ts";

/** One find, parsed and validated at the edge. Absent means unknown, never good. */
export interface AppraisalRequest {
  readonly currency?: string | undefined;
  readonly find: {
    readonly id?: string | undefined;
    readonly attributes: DescribedAttributes;
    readonly dimensions: Dimensions;
    /** 0 to 1: lugs, chrome, eyelets and the like. */
    readonly desirability?: Probability | undefined;
    /** 0 to 1: 1 all original, 0.8 sensible replacements, 0.5 mixed, 0 changed in kind. */
    readonly originality?: Probability | undefined;
    readonly missingParts?: readonly PartId[] | undefined;
    readonly purchase?:
      | {
          readonly price?: Money | undefined;
          readonly paid?: boolean | undefined;
          readonly travelMinutes?: Minutes | undefined;
          readonly travelCost?: Money | undefined;
        }
      | undefined;
    /** The job so far: what was spent is shown and never counted again, what was done is not done twice. */
    readonly soFar?:
      | {
          readonly money?: Money | undefined;
          readonly minutes?: Minutes | undefined;
          /** Work that is finished and held, on every wheel that it concerns. What failed is told as an observation. */
          readonly done?: readonly OperationId[] | undefined;
          readonly bought?:
            | readonly {
                readonly part: PartId;
                /** Bought in all, fitted ones too; 1 where absent. */
                readonly quantity?: number | undefined;
                /** What one is worth unused: its next use or its price back; 0 where absent. */
                readonly reuseValue?: Money | undefined;
              }[]
            | undefined;
        }
      | undefined;
  };
  readonly observations: Observations;
  /** Prices the user knows of. */
  readonly comparables?: readonly Comparable[] | undefined;
  readonly workshop?:
    | {
        readonly hourlyGoal?: MoneyPerHour | undefined;
        readonly speedFactor?: number | undefined;
        readonly skill?: 1 | 2 | 3 | 4 | undefined;
        /** Special tools at hand; absent means all of them. */
        readonly tools?: readonly string[] | undefined;
        readonly fee?:
          | { readonly rate?: Probability | undefined; readonly fixed?: Money | undefined }
          | undefined;
        readonly packing?: Money | undefined;
        /** Replaces the minutes for photographs, listing and hand-over. */
        readonly sellingMinutes?: Minutes | undefined;
        /** 1 to 12; absent: the seasons are averaged. */
        readonly month?: number | undefined;
        readonly partPrices?: Readonly<Record<PartId, Money>> | undefined;
        readonly priceLevel?: number | undefined;
      }
    | undefined;
}
