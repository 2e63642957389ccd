import type { Operation, OperationId } from "./operation.ts";

/**
 * The order of work for every operation there is, once for all plans: a plan's own order is these places, since part of a topological order is one. Every
 * operation comes after those that must come first (Kahn 1962), and among the free ones first what can end the job cheaply, last what only makes it look
 * better. Ties go by the table's order.
 */
export function workingOrder(operations: readonly Operation[]): ReadonlyMap<OperationId, number> {
  const waitsFor = new Map(operations.map((operation) => [operation, waits(operation, operations)]));
  const places = new Map<OperationId, number>();
  const left = new Set(operations);
  while (left.size > 0) {
    const free = [...left].filter((operation) => waitsFor.get(operation)!.every((id) => places.has(id)));
    // The loader refuses tables with a cycle, so that something is always free.
    const next = free.reduce((first, operation) => (stage(operation) < stage(first) ? operation : first));
    places.set(next.id, places.size);
    left.delete(next);
  }
  return places;
}

function waits(
  { id, after, afterAllExcept }: Operation,
  operations: readonly Operation[],
): readonly OperationId[] {
  const rest = afterAllExcept ? operations.filter((other) => !afterAllExcept.includes(other.id)) : [];
  return [...after, ...rest.map((other) => other.id)].filter((other) => other !== id);
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
