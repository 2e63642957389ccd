import type { Check, ReportedFinding } from "../api/types.ts";
import { limitsOn, lineBetween } from "../checks/limits.ts";
import type { Bike } from "../describe/bike.ts";
import { foundBy } from "../describe/summary.ts";
import { Warning } from "../signs/Warning.tsx";
import { lengthUnit } from "../state/units.ts";
import { uncapital } from "../words/count.ts";
import { countsAs, measureAgain } from "../words/lookState.ts";
import { onTheLine } from "../words/measured.ts";
import { levelWords } from "../words/plain.ts";
import type { Bench } from "./useBench.ts";

/** What the answer made of a measurement: its level, or that it lies on the line between two. Said as it comes. */
export function Found(props: {
  check: Check;
  /** Of one wheel alone; null for the bike, or both wheels alike. */
  wheel: "front" | "rear" | null;
  bench: Bench;
  bike: Bike;
}) {
  const { check, wheel, bench, bike } = props;
  const { answers, appraisal } = bench;
  const isAnswered = answers.observations[check.id] !== undefined || answers.tyreMarking !== undefined;
  const findings = (appraisal?.findings ?? []).filter(
    ({ check: id, position }) => isAnswered && id === check.id && (wheel === null || position === wheel),
  );
  const clear = findings.filter(({ borderline }) => borderline === undefined);
  return (
    <div role="status" class="foundat">
      {clear.length > 0 && <p class="found">{foundBy(check, clear, lengthUnit.value)}</p>}
      {findings.map((finding) => (
        <OnTheLine key={finding.position} check={check} finding={finding} bike={bike} />
      ))}
    </div>
  );
}

function OnTheLine({ check, finding, bike }: { check: Check; finding: ReportedFinding; bike: Bike }) {
  const { borderline, derived, position } = finding;
  if (borderline === undefined || derived === undefined || check.measurement === null) return null;
  const [better, worse] = borderline;
  const line = {
    better: uncapital(levelWords(check, better)),
    worse: uncapital(levelWords(check, worse)),
    at: lineBetween(limitsOn(check.measurement, bike.attributes), better, worse),
  };
  const wheel = position === "front" || position === "rear" ? position : null;
  return (
    <Warning kind="mind">
      <b>{measureAgain(wheel)}</b>{" "}
      {onTheLine(line, derived.value, check.measurement.readingError, derived.unit, lengthUnit.value)}{" "}
      {countsAs(uncapital(levelWords(check, finding.level)))}
    </Warning>
  );
}
