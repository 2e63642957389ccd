import type { AppraisalRequest } from "../decision/appraisalRequest.ts";
import type { Money, Probability } from "../quantity.ts";
import type { RateBand } from "./demand/goingRates.ts";
import type { WholeState } from "./demand/sellingTables.ts";

/** What is to be sold: a bicycle described, or a going rate alone. */
export type Subject =
  | {
      readonly value: RateBand;
      readonly currency: string | undefined;
    }
  | {
      readonly appraisal: AppraisalRequest;
      /** Absent: the state that the decided course leads to. */
      readonly state: WholeState | undefined;
    };

/** A selling plan asked for; what is absent stands in the tables. */
export interface SellingRequest {
  readonly subject: Subject;
  readonly market: {
    readonly arrivalsPerWeek?: number | undefined;
    readonly weeks?: number | undefined;
    readonly storagePerWeek?: Money | undefined;
    /** What it brings in hand where it has not sold. */
    readonly fallback?: Money | undefined;
    readonly haggling?: Probability | undefined;
    readonly fee?:
      | { readonly rate?: Probability | undefined; readonly fixed?: Money | undefined }
      | undefined;
    readonly month?: number | undefined;
  };
  /** An offer that came in a week of the plan, from 1. */
  readonly offer: { readonly amount: Money; readonly week: number } | null;
}
