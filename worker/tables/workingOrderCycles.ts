import type { Operation } from "../engine/service/operation.ts";
import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

/** Steps that imply themselves and operations that would come before themselves. */
export function* orderCycles({ steps, operations }: ParsedTables): Generator<TableError> {
  const implied = cycleIn(new Map(steps.map(({ id, implies }) => [id, implies])));
  if (implied)
    yield new TableError(FILES.steps, implied[0]!, "implies", `no cycle, got ${implied.join(" > ")}`);
  const before = cycleIn(
    new Map(operations.map((operation) => [operation.id, predecessors(operation, operations)])),
  );
  if (before)
    yield new TableError(FILES.operations, before[0]!, "after", `no cycle, got ${before.join(" > ")}`);
}

/** Everything that comes before an operation where it is in the same plan. */
function predecessors(operation: Operation, operations: readonly Operation[]): readonly string[] {
  const { id, after, afterAllExcept } = operation;
  if (afterAllExcept === null) return after;
  const others = operations
    .map((other) => other.id)
    .filter((other) => other !== id && !afterAllExcept.includes(other));
  return [...after, ...others];
}

/** A closed walk through the edges, first node repeated at its end, or null where there is none. Depth-first search. */
function cycleIn(edges: ReadonlyMap<string, readonly string[]>): readonly string[] | null {
  const done = new Set<string>();
  const path: string[] = [];
  const visit = (node: string): readonly string[] | null => {
    const start = path.indexOf(node);
    if (start >= 0) return [...path.slice(start), node];
    if (done.has(node)) return null;
    path.push(node);
    for (const next of edges.get(node) ?? []) {
      const found = visit(next);
      if (found) return found;
    }
    path.pop();
    done.add(node);
    return null;
  };
  for (const node of edges.keys()) {
    const found = visit(node);
    if (found) return found;
  }
  return null;
}
