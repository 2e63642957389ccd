import type { AttributeName } from "../engine/bicycle.ts";
import type { Operation } from "../engine/service/operation.ts";
import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

/** Cold bending on anything but steel: aluminium, carbon and titanium crack, at once or months later. */
export function* forbiddenWork({ operations }: ParsedTables): Generator<TableError> {
  for (const operation of operations) {
    if (operation.bends === null) continue;
    const material = operation.bends === "frame" ? "frameMaterial" : "forkMaterial";
    if (!isLimitedToSteel(operation, material)) {
      const requirement = `a condition that lets no ${material} but steel pass: what bends the ${operation.bends} cracks anything else`;
      yield new TableError(FILES.operations, operation.id, "onlyIf", requirement);
    }
  }
}

function isLimitedToSteel({ onlyIf }: Operation, material: AttributeName): boolean {
  return onlyIf.some(
    ({ attribute, isOneOf }) => attribute === material && isOneOf.every((value) => value === "steel"),
  );
}
