import { type Attributes, holds } from "../../bicycle.ts";
import type { Finding, FindingsByCheck } from "../finding.ts";
import type { InspectionIndex } from "../inspectionIndex.ts";
import { CLASS_COUNT } from "./factor.ts";
import type { Evidence } from "./history.ts";
import type { LevelChancesOf } from "./levelChances.ts";

/** A class that rounding leaves no chance at all is very unlikely, not impossible. */
const LEAST_LIKELIHOOD = 1e-30;

/**
 * The findings that speak of the hidden history, one a check, in the order of the checks. Front and rear seen apart count once, at the worse
 * level, since the priors are of the worse wheel; one wheel seen alone counts as the check. Borderline findings count at their level; what a
 * finding acquits has not been seen and does not count.
 * A symptom at a level that a cause explains, with that cause seen and itself evidence, is left out: weak brakes with worn pads say of the
 * history what the worn pads say, once. Good symptoms, and symptoms whose causes nobody found, count like any other.
 * A level that cannot be by the prior says nothing.
 * @param chancesOf the chances of a check's levels on this bike
 */
export function evidenceOf(
  attributes: Attributes,
  byCheck: FindingsByCheck,
  chancesOf: LevelChancesOf,
  index: InspectionIndex,
): Evidence {
  const speaking: Finding[] = [];
  const likelihoods = new Float64Array(byCheck.size * CLASS_COUNT);
  for (const [id, findings] of byCheck) {
    if (!index.history.shifts.has(id)) continue;
    const finding = worst(findings);
    if (isExplained(finding, attributes, byCheck, index)) continue;
    const { prior, byClass } = chancesOf(index.byId.get(id)!);
    if (!(prior[finding.rank]! > 0)) continue;
    const from = speaking.length * CLASS_COUNT;
    for (let z = 0; z < CLASS_COUNT; z++)
      likelihoods[from + z] = Math.max(byClass[z * prior.length + finding.rank]!, LEAST_LIKELIHOOD);
    speaking.push(finding);
  }
  return { findings: speaking, likelihoods };
}

function worst(findings: readonly Finding[]): Finding {
  let result = findings[0]!;
  for (const one of findings) if (one.rank > result.rank) result = one;
  return result;
}

/** Whether a known cause of the symptom was found, which speaks in its place. */
function isExplained(
  { check, rank }: Finding,
  attributes: Attributes,
  byCheck: FindingsByCheck,
  { history }: InspectionIndex,
): boolean {
  for (const symptom of history.symptoms.get(check) ?? []) {
    if (symptom.rank !== rank || !holds(symptom.when, attributes)) continue;
    for (const cause of symptom.causes) {
      if (!history.shifts.has(cause.check)) continue;
      if (byCheck.get(cause.check)?.some(({ level }) => cause.levels.includes(level))) return true;
    }
  }
  return false;
}
