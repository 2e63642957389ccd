import { type Fault, faultOf } from "./fault.ts";
import type {
  Appraisal,
  AppraisalBody,
  ComparisonAnswer,
  ComparisonBody,
  Reference,
  SellingBody,
  SellingPlan,
} from "./types.ts";

/** An answer, or why there is none. */
export type Outcome<T> = { readonly ok: T } | { readonly fault: Fault };

/** The whole answer for one find. */
export function appraise(body: AppraisalBody, signal: AbortSignal): Promise<Outcome<Appraisal>> {
  return post<Appraisal>("/v1/appraisals", body, signal);
}

/** Several finds, and which of them to take together. */
export function compareFinds(body: ComparisonBody, signal: AbortSignal): Promise<Outcome<ComparisonAnswer>> {
  return post<ComparisonAnswer>("/v1/comparisons", body, signal);
}

/** What to ask for one find, when to come down, what to take. */
export function sellingPlan(body: SellingBody, signal: AbortSignal): Promise<Outcome<SellingPlan>> {
  return post<SellingPlan>("/v1/selling-plans", body, signal);
}

/** Everything the form needs. */
export function fetchReference(): Promise<Outcome<Reference>> {
  return ask<Reference>("/v1/reference", {});
}

function post<T>(path: string, body: unknown, signal: AbortSignal): Promise<Outcome<T>> {
  return ask<T>(path, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
    signal,
  });
}

async function ask<T>(path: string, init: RequestInit): Promise<Outcome<T>> {
  try {
    const response = await fetch(path, init);
    if (!response.ok) return { fault: await faultOf(response) };
    return { ok: (await response.json()) as T };
  } catch {
    // fetch rejects only where no answer came: no network, a service that is down, or an abort that nobody waits for.
    return { fault: { kind: "no-signal" } };
  }
}
