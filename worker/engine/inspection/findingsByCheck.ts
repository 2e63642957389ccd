import type { CheckId, LevelId } from "./check.ts";
import type { Finding, FindingsByCheck } from "./finding.ts";

/** Findings gathered for look-up. */
export function findingsByCheck(findings: readonly Finding[]): FindingsByCheck {
  const result = new Map<CheckId, Finding[]>();
  for (const finding of findings) {
    const sofar = result.get(finding.check);
    if (sofar === undefined) result.set(finding.check, [finding]);
    else sofar.push(finding);
  }
  return result;
}

/** The first finding of a check at one of some levels, if there is one. */
export function findingAt(
  byCheck: FindingsByCheck,
  { check, levels }: { readonly check: CheckId; readonly levels: readonly LevelId[] },
): Finding | undefined {
  return byCheck.get(check)?.find(({ level }) => levels.includes(level));
}
