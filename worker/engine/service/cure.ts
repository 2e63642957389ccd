import { holds } from "../bicycle.ts";
import type { CheckId } from "../inspection/check.ts";
import type { Position } from "../inspection/finding.ts";
import { type Bench, faultAt, type Patient } from "./bench.ts";
import type { Fault } from "./fault.ts";
import type { Ledger } from "./ledger.ts";
import type { Operation, OperationId } from "./operation.ts";
import { remediesAt } from "./serviceIndex.ts";
import { isApplicable, placesFor } from "./task.ts";

/** A list of operations that cures a fault, as a row of the remedies has it. */
type Option = readonly OperationId[];

/** One way to cure a fault: the resources it takes, with everything that its steps make necessary. */
export interface Cure {
  readonly operations: readonly OperationId[];
  readonly resources: readonly number[];
  readonly repaints: boolean;
}

/**
 * Ways to cure a fault on this bike. What cures a worse level of an ordered check cures a milder one as well: a rough headset may be replaced like a
 * notched one, new tyres are not old. So a worse level never has a way out that a milder one lacks.
 * @returns an empty list where nothing on this bike cures it
 */
export function curesOf(fault: Fault, ledger: Ledger): readonly Cure[] {
  return ledger.cures(fault.level, fault.position, () => {
    const curing = [fault.check.id];
    // The options of a worse level are those of a milder one too: each is expanded once.
    return optionsFor(fault, ledger.bench).flatMap((option) =>
      ledger.cures(option, fault.position, () => expand(option, fault.position, ledger, curing)),
    );
  });
}

/** Lists of operations that cure the fault, those of worse levels included. */
export function optionsFor(
  { check, level, rank }: Pick<Fault, "check" | "level" | "rank">,
  bench: Pick<Patient, "index" | "attributes">,
): readonly Option[] {
  let options = ownOptions(check.id, level.id, bench);
  if (!check.ordered) return options;
  for (let worse = rank + 1; worse < check.levels.length; worse++) {
    const { id, terminal } = check.levels[worse]!;
    if (terminal === null) options = options.concat(ownOptions(check.id, id, bench));
  }
  return dropSupersets(options);
}

function ownOptions(
  check: CheckId,
  level: string,
  bench: Pick<Patient, "index" | "attributes">,
): readonly Option[] {
  const rows = remediesAt(bench.index, check, level);
  // Mostly there is one row, for every bike.
  if (rows.length === 1) return holds(rows[0]!.when, bench.attributes) ? rows[0]!.options : NO_OPTIONS;
  return rows.filter(({ when }) => holds(when, bench.attributes)).flatMap(({ options }) => options);
}

const NO_OPTIONS: readonly Option[] = [];

/** A list that contains another cures no better and costs no less. */
function dropSupersets(options: readonly Option[]): readonly Option[] {
  if (options.length < 2) return options;
  return options.filter(
    (option, place) =>
      !options.some(
        (other, otherPlace) =>
          otherPlace !== place &&
          other.every((id) => option.includes(id)) &&
          (other.length < option.length || otherPlace < place),
      ),
  );
}

function expandAll(
  options: readonly Option[],
  position: Position,
  ledger: Ledger,
  curing: readonly CheckId[],
): readonly Cure[] {
  return options.flatMap((option) => expand(option, position, ledger, curing));
}

/**
 * The resources of a list of operations. A step that a stuck part blocks takes the part's own cure with it, one result for each way to
 * free it and to go on where that fails; tape that comes off is replaced.
 */
export function expand(
  option: Option,
  position: Position,
  ledger: Ledger,
  curing: readonly CheckId[],
): readonly Cure[] {
  const { bench } = ledger;
  // Short lists: looking through them beats sets, and this runs some hundred times in an appraisal.
  const operations = [...option];
  const resources: number[] = [];
  const choices: (readonly [task: number, instead: readonly number[]])[] = [];
  let blockers: Map<CheckId, Fault> | null = null;
  let repaints = false;
  for (let next = 0; next < operations.length; next++) {
    const operation = bench.index.operations.get(operations[next]!)!;
    if (!isApplicable(operation, bench)) return [];
    repaints ||= operation.effect.repaints;
    for (const entailed of operation.entails) {
      if (isApplicable(bench.index.operations.get(entailed)!, bench)) addOnce(operations, entailed);
    }
    for (const place of placesFor(operation, position)) {
      const work = ledger.forOperation(operation, place);
      for (const resource of work.resources) addOnce(resources, resource);
      if (work.taskInstead.length > 0) choices.push([work.resources[0]!, work.taskInstead]);
      for (const step of work.steps) {
        for (const entailed of step.entails) addOnce(operations, entailed);
        const blocker = step.blockedBy ? faultAt(bench, step.blockedBy) : undefined;
        if (!blocker || curing.includes(blocker.check.id)) continue;
        blockers ??= new Map();
        blockers.set(blocker.check.id, blocker);
      }
    }
  }
  let cures: readonly Cure[] = [{ operations, resources, repaints }];
  for (const [task, instead] of choices)
    cures = cures.flatMap((cure) => [cure, ...instead.map((other) => withTask(cure, task, other))]);
  if (blockers === null) return cures;
  for (const blocker of blockers.values()) {
    const freeing = expandAll(optionsFor(blocker, bench), blocker.position, ledger, [
      ...curing,
      ...blockers.keys(),
    ]);
    cures = cures.flatMap((cure) => freeing.map((free) => join(cure, free)));
  }
  return cures;
}

function withTask(cure: Cure, task: number, instead: number): Cure {
  return { ...cure, resources: cure.resources.map((index) => (index === task ? instead : index)) };
}

function addOnce<Item>(list: Item[], item: Item): void {
  if (!list.includes(item)) list.push(item);
}

function join(a: Cure, b: Cure): Cure {
  return {
    operations: [...new Set([...a.operations, ...b.operations])],
    resources: [...new Set([...a.resources, ...b.resources])],
    repaints: a.repaints || b.repaints,
  };
}

/** The fault that keeps an operation from being done, if one stands. */
export function blockerOf(operation: Operation, bench: Bench): Fault | undefined {
  for (const { blockedBy } of bench.index.closure.get(operation.steps)!) {
    const blocker = blockedBy ? faultAt(bench, blockedBy) : undefined;
    if (blocker) return blocker;
  }
  return undefined;
}
