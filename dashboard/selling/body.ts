import type { AppraisalBody, SellingBody, WholeState } from "../api/types.ts";
import type { BikeTerms, SellerTerms } from "./terms.ts";

/** An offer that somebody made. */
export interface OfferMade {
  /** In the currency of the question. */
  readonly amount: number;
  /** Week of the plan in which it came, from 1. */
  readonly week: number;
}

/**
 * The question for a price plan: the find as it is appraised, in the state it is sold in. The month of sale is the seller's
 * own, else the one that the find is appraised for. What nobody set is left out, and the service's own figure stands.
 */
export function sellingBody(
  appraised: AppraisalBody,
  state: WholeState,
  { seller, bike }: { readonly seller: SellerTerms; readonly bike: BikeTerms },
  offer: OfferMade | null,
): SellingBody {
  const { month, weeks, storagePerWeek, haggling } = seller;
  const { arrivalsPerWeek, fallback } = bike;
  const market = given({ arrivalsPerWeek, weeks, storagePerWeek, haggling, fallback });
  return {
    ...appraised,
    ...(month === undefined ? {} : { workshop: { ...appraised.workshop, month } }),
    state,
    ...(Object.keys(market).length === 0 ? {} : { market }),
    ...(offer === null ? {} : { offer }),
  };
}

/** The fields that have a value. */
function given<T extends object>(fields: T): Partial<T> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Partial<T>;
}
