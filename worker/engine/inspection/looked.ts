import type { Attributes } from "../bicycle.ts";
import { appliesTo } from "./applicability.ts";
import type { Inspection } from "./finding.ts";
import type { InspectionIndex } from "./inspectionIndex.ts";

/** How much of a bike was looked at: checks answered out of those that apply. */
export interface Looked {
  readonly made: number;
  readonly applicable: number;
  /** By the catalogue's groups, in the order of the table; groups without an applicable check are left out. */
  readonly groups: readonly { readonly group: string; readonly made: number; readonly applicable: number }[];
}

/**
 * Counts the checks made. A check that another finding cleared, or that was made at one wheel alone, is not made.
 * @param inspection of the same bike
 */
export function lookedAt(attributes: Attributes, inspection: Inspection, index: InspectionIndex): Looked {
  const unseen = new Set(inspection.unseen.map((one) => one.check));
  const groups = new Map<string, { group: string; made: number; applicable: number }>();
  for (const { check } of index.checks) {
    if (!appliesTo(check, attributes)) continue;
    let row = groups.get(check.group);
    if (row === undefined) {
      row = { group: check.group, made: 0, applicable: 0 };
      groups.set(check.group, row);
    }
    row.applicable += 1;
    if (!unseen.has(check.id)) row.made += 1;
  }
  const rows = [...groups.values()];
  return {
    made: rows.reduce((sum, row) => sum + row.made, 0),
    applicable: rows.reduce((sum, row) => sum + row.applicable, 0),
    groups: rows,
  };
}
