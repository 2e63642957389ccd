import type { Appraisal, AppraisalBody, Reference, SellingBody, WholeState } from "../api/types.ts";
import { type Find, withGoal } from "../finds/find.ts";
import { type OfferMade, sellingBody } from "./body.ts";
import { type SaleGround, saleGround } from "./road.ts";
import type { BikeTerms, SellerTerms } from "./terms.ts";
import { type PricedWhole, pickedState, wholeStates } from "./wholeStates.ts";

interface Asked {
  readonly find: Find;
  readonly known: Reference;
  /** What one more hour must earn. */
  readonly goal: number;
  /** The answer about the find; null before it has come. */
  readonly answer: Appraisal | null;
  /** The question that the answer answers. */
  readonly appraised: AppraisalBody;
  readonly terms: { readonly seller: SellerTerms; readonly bike: BikeTerms };
  readonly offer: OfferMade | null;
}

/** What a price plan stands on. */
export interface PlanGround {
  /** In which it can be sold whole. */
  readonly states: readonly PricedWhole[];
  /** The one it is sold in; undefined where it cannot be sold whole. */
  readonly state: WholeState | undefined;
  /** Whether it may be sold so; null while that cannot be said. */
  readonly ground: SaleGround | null;
  /** The question for the plan; null where there is none to ask. */
  readonly question: SellingBody | null;
}

/** From the answer about a find, what its price plan is to be asked for, and whether at all. */
export function planGround({ find, known, goal, answer, appraised, terms, offer }: Asked): PlanGround {
  if (answer === null) return { states: [], state: undefined, ground: null, question: null };
  const states = wholeStates(answer);
  const state = pickedState(answer, states, terms.bike.state);
  if (state === undefined) return { states, state, ground: null, question: null };
  const ground = saleGround(answer, appraised, known, state);
  const question =
    ground.kind === "open" ? sellingBody(withGoal(find.body, goal), state, terms, offer) : null;
  return { states, state, ground, question };
}
