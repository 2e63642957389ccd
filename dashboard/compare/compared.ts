import type { Appraisal } from "../api/types.ts";
import type { Find } from "../finds/find.ts";
import { type FindRow, rowOf } from "../finds/row.ts";
import type { Terms } from "../state/terms.ts";

/** One of the finds side by side, with its answer and what that is held against. */
export interface Compared {
  readonly find: Find;
  readonly appraisal: Appraisal;
  /** A hard caution stops it: no figure is shown. */
  readonly stopped: boolean;
  /** The course shown and its rate; null where it is stopped, or no course but leaving is open. */
  readonly row: FindRow | null;
  /** Asked or paid; undefined where no price is known. */
  readonly price: number | undefined;
  readonly paid: boolean;
}

/** A find as one of those side by side, held against the goal of its answer. */
export function comparedOf(find: Find, appraisal: Appraisal, { goal, price, paid }: Terms): Compared {
  const stopped = appraisal.decision.stop !== null;
  return { find, appraisal, stopped, row: rowOf(find, appraisal, goal), price, paid };
}

/** The name of a find inside a sentence that may name several: never "it". */
export function calledIn({ name, called }: Pick<Find, "name" | "called">): string {
  return called === "it" ? name : called;
}
