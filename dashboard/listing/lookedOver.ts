import type { Appraisal, AppraisalBody, Reference, ReportedFinding } from "../api/types.ts";
import { applicable, settled } from "../checks/applies.ts";
import type { Say } from "./catalogue.ts";

/** What was looked at and what was not. */
export interface LookedOver {
  readonly lines: readonly string[];
  /** Names of the checks not made. */
  readonly notMade: readonly string[];
}

/** Counts the checks as the answer does: one made at one wheel alone is not made, though what it showed is told as a fault. */
export function lookedOver(
  { looked, findings }: Pick<Appraisal, "looked" | "findings">,
  { find }: AppraisalBody,
  { checks, attributeDefaults }: Pick<Reference, "checks" | "attributeDefaults">,
  say: Say,
): LookedOver {
  const seen = new Set(findings.map(({ check }) => check));
  const faulty = new Set(findings.filter(({ severity }) => severity > 0).map(({ check }) => check));
  const sound = Math.min(looked.made, seen.size - faulty.size);
  const notMade = applicable(checks, settled(find, attributeDefaults))
    .filter(({ id }) => !isMade(findings.filter(({ check }) => check === id)))
    // A name that asks ("Does the seatpost move?") stands here as the thing asked about.
    .map(({ name }) => name.replace(/\?$/, ""));
  const open = looked.applicable - looked.made;
  return {
    lines: [
      looked.made === 0 ? say("checksNoneMade") : say("checksSound", { n: looked.made, sound }),
      say("checksLimit"),
      open === 0 ? say("checksAllMade") : say("checksOpen", { n: open }),
    ],
    notMade: open === 0 ? [] : notMade,
  };
}

/** A check is made on the whole bike or at both wheels. What the description alone tells (a tyre marking) is a finding too. */
function isMade(found: readonly ReportedFinding[]): boolean {
  const places = new Set(found.map(({ position }) => position));
  return places.has("bike") || places.has("both") || (places.has("front") && places.has("rear"));
}
