import type { Appraisal, WholeState } from "../api/types.ts";
import { defaultState, offeredStates } from "../listing/saleStates.ts";
import { type PricedState, pricedStates } from "../sale/states.ts";
import { WHOLE_STATES } from "./terms.ts";

/** A state in which it can be sold whole, with what it then fetches. */
export type PricedWhole = PricedState & { readonly state: WholeState };

/** The states with a price whose course is open, those in pieces apart; none where the find is stopped. */
export function wholeStates(answer: Appraisal): readonly PricedWhole[] {
  if (answer.value === null) return [];
  const offered = offeredStates(answer);
  return pricedStates(answer.value).filter(
    (priced): priced is PricedWhole =>
      WHOLE_STATES.some((state) => state === priced.state) && offered.includes(priced.state),
  );
}

/**
 * The state the page is about: the wished one where it is open, else the decided course's, else the first.
 * @returns undefined where it cannot be sold whole
 */
export function pickedState(
  answer: Appraisal,
  states: readonly PricedWhole[],
  wished: WholeState | undefined,
): WholeState | undefined {
  const decided = defaultState(answer);
  const at = (state: string | null | undefined) => states.find((one) => one.state === state)?.state;
  return at(wished) ?? at(decided) ?? states[0]?.state;
}
