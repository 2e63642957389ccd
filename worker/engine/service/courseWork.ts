import { blockerOf, type Cure, curesOf, expand } from "./cure.ts";
import type { CureSlot } from "./cureSlot.ts";
import { owedByDone } from "./doneWork.ts";
import type { Ledger } from "./ledger.ts";

/** Work that belongs to a course whatever is wrong. */
export interface CourseWork {
  readonly resources: readonly number[];
  /** The faults, with the work that waits for their cure. */
  readonly slots: readonly CureSlot[];
}

/**
 * The work of a course beside its cures: papers, wash, final check, sale, the polish of a restoration, missing parts. Where a stuck part is in the way,
 * the work goes with its cure: a post that is not freed is not greased.
 */
export function courseWork(
  course: "restore" | "make-safe",
  ledger: Ledger,
  slots: readonly CureSlot[],
): CourseWork {
  const { bench } = ledger;
  const operations = [...bench.index.always[course]];
  if (course === "restore") operations.push(...bench.index.polishing);
  if (bench.missingParts.length > 0) operations.push(bench.index.completion);
  operations.push(...owedByDone(bench));
  const resources: number[] = [];
  let amended = slots;
  for (const operation of operations) {
    const blocker = blockerOf(operation, bench);
    const [work] = expand([operation.id], "bike", ledger, blocker ? [blocker.check.id] : []);
    if (!work) continue;
    if (blocker) {
      const freeing = curesOf(blocker, ledger);
      amended = amended.map((slot) => ({
        ...slot,
        cures: slot.cures.map((cure) => (contains(cure, freeing) ? withWork(cure, work) : cure)),
      }));
    } else resources.push(...work.resources);
  }
  return { resources, slots: amended };
}

/** Whether a cure does all that one of the others does: a new post wants the old one out as well. */
function contains({ resources }: Cure, others: readonly Cure[]): boolean {
  return others.some((other) => other.resources.every((index) => resources.includes(index)));
}

function withWork(cure: Cure, work: Cure): Cure {
  return {
    operations: [...new Set([...cure.operations, ...work.operations])],
    resources: [...new Set([...cure.resources, ...work.resources])],
    repaints: cure.repaints || work.repaints,
  };
}
