import type { Appraisal, AppraisalBody, Reference, WholeState } from "../api/types.ts";
import { ENGLISH, sayIn } from "../listing/catalogue.ts";
import { faultWords } from "../listing/faultWords.ts";
import { listingDraft } from "../listing/listingDraft.ts";
import { remainingFaults } from "../listing/remainingFaults.ts";
import { roadworthiness } from "../listing/roadworthiness.ts";
import { courseOf, isRideable } from "../listing/saleStates.ts";
import type { Road } from "../words/selling.ts";

/** Whether a find may be sold in a state, and how it must be called then. */
export type SaleGround =
  | { readonly kind: "refused"; readonly why: string }
  | {
      readonly kind: "open";
      readonly road: Road;
      /** Names of the faults that stop riding and stay. */
      readonly stops: readonly string[];
      /** Names of the checks still owed before anyone rides. */
      readonly owed: readonly string[];
    };

/**
 * Judges by the rules of the advert, with all work of the state's plan done. A rideable state whose checks are still owed
 * keeps its price, which counts on them; its advert says "not roadworthy" until they are made.
 */
export function saleGround(
  answer: Appraisal,
  body: AppraisalBody,
  reference: Reference,
  state: WholeState,
): SaleGround {
  const draft = listingDraft({ answer, body, reference, state });
  if (draft.kind === "refused") return { kind: "refused", why: draft.why };
  const { checks } = reference;
  const work = { plan: courseOf(state, answer.courses)?.plan ?? null, undone: new Set<string>() };
  const remaining = remainingFaults(answer, work, checks);
  const found = roadworthiness(answer, state, remaining, work, checks);
  const words = faultWords(reference, sayIn(ENGLISH));
  const onlyOwed = isRideable(state) && found.stopsRiding.length === 0;
  const road =
    found.endsFrame.length > 0 ? "frame-withdrawn" : found.clear || onlyOwed ? "clear" : "not-roadworthy";
  return {
    kind: "open",
    road,
    stops: found.stopsRiding.map(words.name),
    owed: found.owedToRide.map(words.check),
  };
}
