import type { Attributes } from "../bicycle.ts";
import { DomainError } from "../domainError.ts";
import { whyNotApplicable } from "./applicability.ts";
import type { Dimensions } from "./find.ts";
import type { Finding, Inspection, Position } from "./finding.ts";
import { findingsByCheck } from "./findingsByCheck.ts";
import { evidenceOf } from "./history/evidence.ts";
import { levelChancesOn } from "./history/levelChances.ts";
import { historyAfter } from "./history/posterior.ts";
import type { InspectionIndex, RankedCheck } from "./inspectionIndex.ts";
import { escaped } from "./measuredInputs.ts";
import { isPerWheel, type Observation, type Observations, type Reading } from "./observation.ts";
import { readingFinding } from "./readingFinding.ts";
import { tyreSize } from "./tyreSize.ts";
import { unseenChecks } from "./unseen.ts";

/**
 * The outcome of looking at one bike: findings in the order of the table of checks (front before rear), what was not looked
 * at with its chances, observations that do not apply, and diameters that do not fit each other.
 * @param attributes settled; see `settleAttributes`
 * @param dimensions numbers and markings of the description
 * @param observations by check; absent means not looked at, never sound
 * @param index compiled tables
 * @throws DomainError with an RFC 6901 pointer into the request: `unknown-id` for a check, level, input or flag that does
 * not exist, `impossible-measurement`, `out-of-domain` for a reading that says nothing or a check without wheels read at a wheel
 */
export function inspect(
  attributes: Attributes,
  dimensions: Dimensions,
  observations: Observations,
  index: InspectionIndex,
): Inspection {
  requireKnownChecks(observations, index);
  const findings: Finding[] = [];
  const ignored: { check: string; reason: string }[] = [];
  for (const ranked of index.checks) {
    const { id } = ranked.check;
    const observation = Object.hasOwn(observations, id) ? observations[id] : undefined;
    if (observation === undefined) continue;
    const reason = whyNotApplicable(ranked.check, attributes);
    if (reason === null) addFindings(findings, ranked, observation, attributes);
    else ignored.push({ check: id, reason });
  }
  const sizeCheck = index.beadSeatCheck?.check.id;
  const size = tyreSize(
    dimensions,
    findings.filter((one) => one.check === sizeCheck),
    attributes,
    index,
  );
  if (size.finding !== null) insert(size.finding, findings, index);
  const byCheck = findingsByCheck(findings);
  const chancesOf = levelChancesOn(attributes, index);
  const history = historyAfter(
    evidenceOf(attributes, byCheck, chancesOf, index),
    attributes.kept,
    index.history,
  );
  return {
    findings,
    byCheck,
    unseen: unseenChecks(attributes, byCheck, history, chancesOf, index),
    history,
    ignored: [...ignored, ...size.ignored],
    mismatches: size.mismatches,
    tyre: size.tyre,
  };
}

function requireKnownChecks(observations: Observations, index: InspectionIndex): void {
  for (const id of Object.keys(observations)) {
    if (index.byId.has(id)) continue;
    const allowed = `one of ${[...index.byId.keys()].join(", ")}`;
    throw new DomainError("unknown-id", "check", id, allowed, `/observations/${escaped(id)}`);
  }
}

function addFindings(
  findings: Finding[],
  ranked: RankedCheck,
  observation: Observation,
  attributes: Attributes,
): void {
  const { id, perWheel } = ranked.check;
  if (!isPerWheel(observation)) {
    findings.push(findingAt(ranked, observation as Reading, perWheel ? "both" : "bike", attributes));
    return;
  }
  const wheels = (["front", "rear"] as const).filter((wheel) => observation[wheel] !== undefined);
  if (!perWheel) {
    const requirement = "one reading for the whole bike: this check does not tell front and rear apart";
    const pointer = pointerTo(ranked, wheels[0] ?? "front");
    throw new DomainError("out-of-domain", id, wheels.join(" and "), requirement, pointer);
  }
  const besides = Object.keys(observation).find((key) => key !== "front" && key !== "rear");
  if (wheels.length === 0 || besides !== undefined) {
    const requirement = "a reading for front, rear or each of them, and nothing beside these";
    throw new DomainError("out-of-domain", id, besides ?? "nothing", requirement, pointerTo(ranked, "both"));
  }
  for (const wheel of wheels) findings.push(findingAt(ranked, observation[wheel]!, wheel, attributes));
}

/** The finding, with the errors' pointers made whole. */
function findingAt(
  ranked: RankedCheck,
  reading: Reading,
  position: Position,
  attributes: Attributes,
): Finding {
  try {
    return readingFinding(ranked, reading, position, attributes);
  } catch (error) {
    if (!(error instanceof DomainError) || error.pointer === undefined) throw error;
    const { code, argument, value, requirement } = error;
    const pointer = pointerTo(ranked, position);
    const whole = error.pointer === "" ? pointer : `${pointer}/${error.pointer}`;
    throw new DomainError(code, argument, value, requirement, whole);
  }
}

/** Where an observation stands in the request. */
function pointerTo({ check }: RankedCheck, position: Position): string {
  const observation = `/observations/${escaped(check.id)}`;
  return position === "front" || position === "rear" ? `${observation}/${position}` : observation;
}

/** Puts a finding where the table of checks has it. */
function insert(finding: Finding, findings: Finding[], index: InspectionIndex): void {
  const order = [...index.byId.keys()];
  const place = order.indexOf(finding.check);
  const after = findings.findIndex((one) => order.indexOf(one.check) > place);
  findings.splice(after === -1 ? findings.length : after, 0, finding);
}
