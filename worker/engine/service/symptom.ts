import type { Bench } from "./bench.ts";
import { faultsAt } from "./bench.ts";
import { type Fault, strongerNeed } from "./fault.ts";
import { remedyKey } from "./serviceIndex.ts";

/**
 * Symptoms with a known cause are not paid for twice: weak brakes whose cable is frayed need the cable. The causes take over the
 * symptom's need, since curing them is what cures it.
 * @returns the faults to cure, and the symptoms explained by them
 */
export function separateSymptoms(bench: Bench): { causes: readonly Fault[]; symptoms: readonly Fault[] } {
  const symptoms = new Set<Fault>();
  const raised = new Map<Fault, Fault>();
  for (const fault of bench.faults) {
    const rows = bench.index.remedies.get(remedyKey(fault.check.id, fault.level.id)) ?? [];
    const standing = rows.flatMap(({ causes }) => causes.flatMap((match) => faultsAt(bench, match)));
    for (const cause of standing) {
      if (cause === fault) continue;
      symptoms.add(fault);
      const known = raised.get(cause) ?? cause;
      const need = strongerNeed(known.need, fault.need);
      raised.set(cause, { ...known, need, mayDisclose: known.mayDisclose && need !== "required" });
    }
  }
  return {
    causes: bench.faults.filter((fault) => !symptoms.has(fault)).map((fault) => raised.get(fault) ?? fault),
    symptoms: [...symptoms],
  };
}
