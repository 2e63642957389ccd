import { type Cure, curesOf } from "./cure.ts";
import { type Fault, growsNeeded } from "./fault.ts";
import type { Ledger } from "./ledger.ts";

/** A fault of a plan and the ways to cure it. */
export interface CureSlot {
  readonly fault: Fault;
  readonly cures: readonly Cure[];
  /** Cured in any case; another is cured where that is worth more than leaving it. */
  readonly mandatory: boolean;
}

/**
 * The faults that a course takes on: a restoration all of them, making safe those required or needed, and those that a degree worse would be.
 * @param causes the faults without the symptoms that they explain
 */
export function cureSlots(
  course: "restore" | "make-safe",
  causes: readonly Fault[],
  ledger: Ledger,
): readonly CureSlot[] {
  const { rearSprockets } = ledger.bench;
  return causes
    .filter((fault) => course === "restore" || fault.need !== "optional" || growsNeeded(fault, rearSprockets))
    .map((fault) => {
      const cures = curesOf(fault, ledger);
      const mustGo = fault.need === "needed" && !fault.mayDisclose && cures.length > 0;
      return { fault, cures, mandatory: fault.need === "required" || mustGo };
    });
}
