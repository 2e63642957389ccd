import type { Bench, Patient } from "./bench.ts";
import { optionsFor } from "./cure.ts";
import type { Fault } from "./fault.ts";
import type { Operation, OperationId } from "./operation.ts";
import { causesOf } from "./symptom.ts";
import { isApplicable, type PartQuantity, partsUsed, placesFor } from "./task.ts";

type Done = ReadonlySet<OperationId>;

/** What a fault is told apart by, found or only possible. */
export type FaultAt = Pick<Fault, "check" | "level" | "rank" | "position">;

/** What finished work has cured. */
export interface CuredWork {
  /** Faults that stood, with the operations that cured each. */
  readonly faults: ReadonlyMap<Fault, readonly OperationId[]>;
  /** Whether a fault is one that something cures on this bike. */
  readonly isCurable: (fault: FaultAt) => boolean;
  /** Whether a fault would be cured by now, had it stood. */
  readonly wouldBeCured: (fault: FaultAt) => boolean;
}

/**
 * What finished work has cured: faults with a remedy of which one option that this bike allows is done whole, and symptoms all of whose causes here are
 * cured. A level that ends the job is never cured, nor is one by the test that decides it: what the test showed is told at its check.
 * @param patient the bike as it was found
 */
export function curedByDone(patient: Patient, done: Done): CuredWork {
  const faults = new Map<Fault, readonly OperationId[]>();
  const causesCured = (fault: FaultAt): readonly OperationId[] | undefined => {
    const { explaining } = causesOf(fault, patient);
    if (explaining.length === 0 || !explaining.every((cause) => faults.has(cause))) return undefined;
    return [...new Set(explaining.flatMap((cause) => faults.get(cause)!))];
  };
  for (const fault of patient.faults) {
    const option = doneOption(fault, patient, done);
    if (option) faults.set(fault, option);
  }
  for (const fault of patient.faults) {
    const by = faults.has(fault) ? undefined : causesCured(fault);
    if (by) faults.set(fault, by);
  }
  return {
    faults,
    isCurable: (fault) =>
      optionsHere(fault, patient).length > 0 || causesOf(fault, patient).explaining.length > 0,
    wouldBeCured: (fault) =>
      doneOption(fault, patient, done) !== undefined || causesCured(fault) !== undefined,
  };
}

/** An option of the fault's remedy that is done whole. Of a test it is known that it is done, not what it showed. */
function doneOption(fault: FaultAt, patient: Patient, done: Done): readonly OperationId[] | undefined {
  const settles = (id: OperationId) =>
    done.has(id) &&
    !patient.index.operations
      .get(id)!
      .tests.some(({ of, at }) => of === fault.check.id && at.includes(fault.level.id));
  return optionsHere(fault, patient).find((option) => option.every(settles));
}

/** Options of a fault's remedy that this bike allows; none where the level ends the job. */
function optionsHere(fault: FaultAt, patient: Patient): readonly (readonly OperationId[])[] {
  const { terminal } = fault.level;
  if (terminal !== null && terminal !== "decide-first") return [];
  return optionsFor(fault, patient).filter((option) =>
    option.every((id) => isApplicable(patient.index.operations.get(id)!, patient)),
  );
}

/**
 * Work that finished work has made necessary and that is still to be done: gears to index after a new chain, tape to put back. It counts as work of the
 * course, since the fault that called for it is gone.
 */
export function owedByDone(bench: Bench): readonly Operation[] {
  const { operations, closure } = bench.index;
  const owed = new Set<OperationId>();
  for (const id of bench.done) {
    const operation = operations.get(id)!;
    for (const entailed of operation.entails) owed.add(entailed);
    for (const step of closure.get(operation.steps)!) for (const entailed of step.entails) owed.add(entailed);
  }
  return [...owed]
    .map((id) => operations.get(id)!)
    .filter((operation) => !bench.done.has(operation.id) && isApplicable(operation, bench));
}

/** Parts that finished work has used up, at every wheel whose fault called for it; at both where none did. */
export function usedUp(patient: Patient, done: Done): readonly PartQuantity[] {
  return [...done].flatMap((id) => {
    const operation = patient.index.operations.get(id)!;
    const served = patient.faults.filter((fault) =>
      optionsFor(fault, patient).some((option) => option.includes(id)),
    );
    const places = new Set(
      served.length > 0
        ? served.flatMap(({ position }) => placesFor(operation, position))
        : placesFor(operation, "both"),
    );
    return [...places].flatMap((place) => partsUsed(operation, place, patient));
  });
}
