import { findingAt } from "../inspection/findingsByCheck.ts";
import type { RaisedCaution } from "./appraisal.ts";
import type { CautionClause } from "./caution.ts";
import type { Evidence } from "./cautions.ts";

/**
 * Where a caution bears, so that it can stand beside the check or the work that it is about: the checks found at a level
 * it names or not looked at, and the work in open plans that it names or that uses what it names.
 * @param clauses those of the caution that hold
 */
export function bearing(
  clauses: readonly CautionClause[],
  { found, unseen, operations, uses }: Pick<Evidence, "found" | "unseen" | "operations" | "uses">,
): RaisedCaution["bears"] {
  const seen = clauses.flatMap(({ findings }) =>
    findings.filter((match) => findingAt(found, match) !== undefined).map(({ check }) => check),
  );
  const open = clauses.flatMap((clause) => clause.unseen.filter((check) => unseen.has(check)));
  const named = clauses.flatMap((clause) => clause.operations.filter((id) => operations.has(id)));
  const using = clauses.flatMap((clause) => clause.uses.flatMap((part) => [...(uses.get(part) ?? [])]));
  return { checks: [...new Set([...seen, ...open])], operations: [...new Set([...named, ...using])] };
}
