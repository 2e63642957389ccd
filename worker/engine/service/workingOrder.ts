import type { Operation } from "./operation.ts";
import type { ServiceIndex } from "./serviceIndex.ts";

interface Ordered {
  readonly operation: Operation;
}

/**
 * The order of work: every operation after those that must come first (topological order; Kahn 1962), and among the free ones first
 * what can end the job cheaply, last what only makes it look better. Ties go by the table's order.
 */
export function workingOrder<T extends Ordered>(tasks: readonly T[], index: ServiceIndex): readonly T[] {
  const byId = new Map(tasks.map((task) => [task.operation.id, task]));
  const waitsFor = new Map<T, Set<T>>();
  for (const task of tasks) {
    const before = task.operation.after.flatMap((id) => byId.get(id) ?? []);
    const late = task.operation.afterAllExcept;
    const rest = late ? tasks.filter(({ operation }) => !late.includes(operation.id)) : [];
    waitsFor.set(task, new Set([...before, ...rest].filter((other) => other !== task)));
  }
  const done = new Set<T>();
  const order: T[] = [];
  while (order.length < tasks.length) {
    const free = tasks.filter(
      (task) => !done.has(task) && [...waitsFor.get(task)!].every((other) => done.has(other)),
    );
    const next = free.reduce((first, task) => (precedes(task, first, index) ? task : first));
    done.add(next);
    order.push(next);
  }
  return order;
}

function precedes(a: Ordered, b: Ordered, index: ServiceIndex): boolean {
  const byStage = stage(a.operation) - stage(b.operation);
  return byStage !== 0 ? byStage < 0 : index.place.get(a.operation.id)! < index.place.get(b.operation.id)!;
}

/** 0 work that opens the job, 1 what may end it, 2 the rest, 3 looks, 4 the sale. */
function stage(operation: Operation): number {
  if (operation.selling) return 4;
  if (operation.effect.polishes) return 3;
  if (operation.failure?.redecide) return operation.failure.ends === "title" ? 0 : 1;
  return operation.alwaysIn.includes("sell-as-found") ? 0 : 2;
}

/** Work that comes before any part is bought: papers, photographs, a wash, and what may end the job. */
export function isOpening(operation: Operation): boolean {
  return stage(operation) < 2;
}
