import { useState } from "preact/hooks";
import type { OfferMade } from "./body.ts";

/** The offer that is being entered. */
export interface OfferEntry {
  readonly amount: number | undefined;
  readonly week: number;
  putAmount(amount: number | undefined): void;
  putWeek(week: number): void;
  /** To be asked about; null while no amount is entered. */
  readonly made: OfferMade | null;
}

/** An offer is news of one moment: it is not kept. */
export function useOffer(): OfferEntry {
  const [amount, putAmount] = useState<number | undefined>(undefined);
  const [week, putWeek] = useState(1);
  return { amount, week, putAmount, putWeek, made: amount === undefined ? null : { amount, week } };
}
