import type { ThreePoint } from "../engine/quantity.ts";
import type { Operation } from "../engine/service/operation.ts";
import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

/** Work whose end is open needs what its release time is fitted to: a chance of failure, three times that differ, room before it is given up. */
export function* openEndedWork({ operations, defaults }: ParsedTables): Generator<TableError> {
  const open = operations.filter(({ openEnded }) => openEnded);
  for (const operation of open) {
    for (const [field, requirement] of gaps(operation, defaults.stopRule.mostMinutes))
      yield new TableError(FILES.operations, operation.id, field, requirement);
  }
  // What follows a failure is followed no further, so its own end may not be open.
  const ids = new Set(open.map(({ id }) => id));
  for (const { id, failure } of operations) {
    for (const [n, list] of failure?.thenOneOf.entries() ?? []) {
      const next = list.find((one) => ids.has(one));
      if (next !== undefined)
        yield new TableError(
          FILES.operations,
          id,
          `failure.thenOneOf[${n}]`,
          `work whose end is not open, got ${next}`,
        );
    }
  }
}

function* gaps(operation: Operation, mostMinutes: number): Generator<readonly [string, string]> {
  const { failure, per, minutes, variants } = operation;
  if (per !== "bike") yield ["per", "bike where the end is open: one part is freed"];
  if (failure === null || failure.ends !== null) {
    yield ["failure", "a failure that ends nothing by itself where the end is open"];
    return;
  }
  for (const [n, { probability }] of failure.chances.entries()) {
    if (!(probability > 0 && probability < 1))
      yield [`failure.chances[${n}].probability`, "a chance above 0 and below 1 where the end is open"];
  }
  const times = [["minutes", minutes], ...variants.map((one, n) => [`variants[${n}].minutes`, one.minutes])];
  for (const [field, time] of times as [string, ThreePoint][]) {
    const { optimistic, likely, pessimistic } = time;
    if (!(optimistic < likely && likely < pessimistic))
      yield [field, "optimistic < likely < pessimistic where the end is open"];
    if (optimistic >= mostMinutes) yield [field, "optimistic below stopRule.mostMinutes of the defaults"];
  }
}
