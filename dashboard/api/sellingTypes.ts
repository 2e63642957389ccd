import type { AppraisalBody } from "./types.ts";

export interface SellingBody {
  readonly currency?: string;
  readonly find?: AppraisalBody["find"];
  readonly observations?: AppraisalBody["observations"];
  readonly comparables?: AppraisalBody["comparables"];
  readonly state?: "asFound" | "madeSafe" | "restored";
  readonly market?: {
    readonly arrivalsPerWeek?: number;
    readonly weeks?: number;
    readonly storagePerWeek?: number;
    readonly haggling?: number;
    readonly month?: number;
    readonly fallback?: number;
  };
  readonly offer?: { readonly amount: number; readonly week: number } | null;
}
