import fc from "fast-check";
import { expect } from "vitest";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { walkAwayPrice } from "../../../worker/engine/decision/choice.ts";
import { weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { sparedWork, worseFinding } from "./worseFinding.ts";

/** Of money: plans that differ by less are one as good as the other. */
const LEAST = 1e-6;

/** Holds random finds with one finding a degree worse, all else seen, to a walk-away price that is not above the milder one's. */
export function worseFindingNeverRaises(seed: number, finds: number): void {
  fc.assert(
    fc.property(worseFinding, ({ check, milder, worse }) => {
      const goal = milder.workshop!.hourlyGoal ?? BOOK.catalogue.defaults.hourlyGoal;
      expect(mostToPay(worse)).toBeLessThanOrEqual(
        mostToPay(milder) + sparedWork(check, milder, goal) + LEAST,
      );
    }),
    { seed, numRuns: finds },
  );
}

/** The walk-away price alone: all of an answer that the law is about. */
function mostToPay(request: AppraisalRequest): number {
  const find = weighFind(request, BOOK);
  if (find.stop) throw new Error("a find with a stop has no walk-away price");
  return walkAwayPrice(find.courses, find.situation)!;
}
