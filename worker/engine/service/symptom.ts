import { holds } from "../bicycle.ts";
import { type Bench, faultsAt, type Patient } from "./bench.ts";
import { type Fault, strongerNeed } from "./fault.ts";
import { remediesAt } from "./serviceIndex.ts";

/**
 * Symptoms with a known cause are not paid for twice: weak brakes whose cable is frayed need the cable. What explains a worse level explains a milder
 * one as well. The causes take over the symptom's need, since curing them is what cures it: those of milder levels too, since brakes that failed must
 * not be left weak.
 * @returns the faults to cure, and the symptoms explained by them
 */
export function separateSymptoms(bench: Bench): { causes: readonly Fault[]; symptoms: readonly Fault[] } {
  const symptoms = new Set<Fault>();
  const raised = new Map<Fault, Fault>();
  for (const fault of bench.faults) {
    const { causes, explaining } = causesOf(fault, bench);
    if (explaining.length === 0) continue;
    symptoms.add(fault);
    for (const cause of causes) raised.set(cause, raise(raised.get(cause) ?? cause, fault));
  }
  return {
    causes: bench.faults.filter((fault) => !symptoms.has(fault)).map((fault) => raised.get(fault) ?? fault),
    symptoms: [...symptoms],
  };
}

/** The faults that stand and are causes of a symptom at any level, and those of them that explain it at its own level or a worse one. */
export function causesOf(
  fault: Pick<Fault, "check" | "rank" | "position">,
  patient: Patient,
): { readonly causes: readonly Fault[]; readonly explaining: readonly Fault[] } {
  if (!patient.index.symptomatic.has(fault.check.id)) return NO_CAUSES;
  const { ordered, levels } = fault.check;
  const ranks = ordered ? levels.keys() : [fault.rank];
  const causes = [...ranks].map((rank) => causesAt(fault, rank, patient));
  return { causes: causes.flat(), explaining: (ordered ? causes.slice(fault.rank) : causes).flat() };
}

const NO_CAUSES = { causes: [], explaining: [] };

/** Faults that stand and explain a level of the symptom's check: somewhere on the bike, or on each wheel that shows it. */
function causesAt(
  { check, position }: Pick<Fault, "check" | "position">,
  rank: number,
  bench: Patient,
): readonly Fault[] {
  const rows = remediesAt(bench.index, check.id, check.levels[rank]!.id);
  return rows
    .filter(({ when }) => holds(when, bench.attributes))
    .flatMap(({ causes }) => causes.flatMap((match) => faultsAt(bench, match)))
    .filter((cause) => cause.check !== check)
    .filter((cause) => position === "bike" || cause.position === "both" || cause.position === position);
}

function raise(cause: Fault, symptom: Fault): Fault {
  const need = strongerNeed(cause.need, symptom.need);
  return { ...cause, need, mayDisclose: cause.mayDisclose && need !== "required" };
}
