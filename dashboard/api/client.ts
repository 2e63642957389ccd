import type { Question } from "../local/question.ts";
import { type Fault, faultOf } from "./fault.ts";
import { respond } from "./respond.ts";
import type {
  Appraisal,
  AppraisalBody,
  ComparisonAnswer,
  ComparisonBody,
  Reference,
  SellingBody,
  SellingPlan,
} from "./types.ts";

/** An answer, and whether it was worked out in this browser rather than by the server; or why there is none. */
export type Outcome<T> = { readonly ok: T; readonly here?: boolean } | { readonly fault: Fault };

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
  return ask<Reference>({ method: "GET", path: "/v1/reference", body: null });
}

let tellFirst: () => void;

/** Comes with the first answer about a find, a refusal too: what can wait begins after it. */
export const firstAnswer = new Promise<void>((resolve) => {
  tellFirst = resolve;
});

let asked = false;

/** Whether anything about a find was asked since the page was opened. */
export const hasAsked = () => asked;

async function post<T>(path: string, body: unknown, signal: AbortSignal): Promise<Outcome<T>> {
  asked = true;
  const outcome = await ask<T>({ method: "POST", path, body: JSON.stringify(body) }, signal);
  if ("ok" in outcome || outcome.fault.kind === "refused") tellFirst();
  return outcome;
}

async function ask<T>(question: Question, signal?: AbortSignal): Promise<Outcome<T>> {
  try {
    const { response, here } = await respond(question, signal);
    if (!response.ok) return { fault: await faultOf(response) };
    return { ok: (await response.json()) as T, here };
  } catch {
    // No answer came: neither network nor engine, or an abort that nobody waits for.
    return { fault: { kind: "no-signal" } };
  }
}
