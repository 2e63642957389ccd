import type { Money } from "../quantity.ts";
import type { Book } from "./book.ts";
import { lookId, type NextCheck } from "./looking/nextCheck.ts";
import type { SettledRequest } from "./settledRequest.ts";

/** A look worth making before anything is decided. */
export interface LookFirst {
  /** Of the check or operation. */
  readonly id: string;
  /** Expected net benefit with it, less that of deciding now. */
  readonly netGain: Money;
}

/**
 * What beats deciding now by most, if anything is to come first: a paid test or query that gains anything, since its question keeps courses closed; a check
 * only where a level of it changes the course and it gains so much that it would hold up if prices were a little off, and it takes nothing apart, which is
 * the course's own work.
 */
export function lookFirst(
  looks: readonly NextCheck[],
  { workshop }: SettledRequest,
  { catalogue }: Book,
): LookFirst | null {
  const enough = catalogue.defaults.lookFirstHours * workshop.hourlyGoal;
  let best: LookFirst | null = null;
  for (const look of looks) {
    const { netGain } = look;
    if (netGain <= (best?.netGain ?? 0)) continue;
    const counts =
      "operation" in look || (look.couldBecome !== null && look.where !== "dismantled" && netGain >= enough);
    if (counts) best = { id: lookId(look), netGain };
  }
  return best;
}
