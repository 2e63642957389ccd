import type { Appraisal, ReportedFinding } from "../api/types.ts";
import { Cautions } from "../signs/Cautions.tsx";
import { uncapital } from "../words/count.ts";
import { curedSince, leftOut, noFaultFound, onTheLine, wheelKey, whereSeen } from "../words/findSeen.ts";
import { sentence } from "../words/plain.ts";
import { bearInMind, NOT_TO_BE_RIDDEN, NOT_TO_BE_SOLD, ON_THE_LINE } from "../words/seen.ts";
import { cautionsTitle, lookedTitle } from "../words/titles.ts";
import type { Names } from "./names.ts";

/** Hard cautions open, soft ones folded with their count. */
export function CautionsPanel({ appraisal }: { appraisal: Appraisal }) {
  const { cautions } = appraisal;
  const hard = cautions.filter(({ kind }) => kind === "hard");
  const soft = cautions.filter(({ kind }) => kind === "soft");
  return (
    <section class="panel" aria-labelledby="cautions-title">
      <h2 id="cautions-title">{cautionsTitle(cautions)}</h2>
      <Cautions cautions={hard} />
      {soft.length > 0 && (
        <details>
          <summary>{bearInMind(soft.length, hard.length > 0)}</summary>
          <Cautions cautions={soft} />
        </details>
      )}
    </section>
  );
}

/** What was seen: faults first, then how much was looked at. */
export function FindingsPanel({
  appraisal,
  names,
  wheel,
}: {
  appraisal: Appraisal;
  names: Names;
  wheel: preact.JSX.Element;
}) {
  const { findings, mismatches, ignored, looked } = appraisal;
  const faults = [...findings.filter(({ severity }) => severity > 0)].sort((a, b) => b.severity - a.severity);
  const sound = findings.filter(({ severity }) => severity === 0);
  return (
    <section class="panel" aria-labelledby="findings-title">
      <h2 id="findings-title">{lookedTitle(appraisal)}</h2>
      <div class="looked">
        {wheel}
        <p class="small">{wheelKey(looked.applicable)}</p>
      </div>
      {faults.length > 0 && (
        <ul class="findings">
          {faults.map((finding) => (
            <Fault key={`${finding.check} ${finding.position}`} finding={finding} names={names} />
          ))}
        </ul>
      )}
      {mismatches.map(({ text }) => (
        <p key={text} class="note">
          {sentence(text)}
        </p>
      ))}
      {sound.length > 0 && (
        <details>
          <summary>{noFaultFound(sound.length)}</summary>
          <ul class="bullets">
            {sound.map((finding) => (
              <li key={`${finding.check} ${finding.position}`}>
                {names.check(finding.check)}
                {whereSeen(finding)}: {uncapital(names.level(finding.check, finding.level))}
                {finding.borderline !== undefined && `. ${onTheLine(finding.borderline)}`}
              </li>
            ))}
          </ul>
        </details>
      )}
      {ignored.length > 0 && <p class="small">{leftOut(ignored.map(({ check }) => names.check(check)))}</p>}
    </section>
  );
}

function Fault({ finding, names }: { finding: ReportedFinding; names: Names }) {
  const { check, level, borderline, safetyBlock, note, curedBy } = finding;
  return (
    <li class={safetyBlock ? "block" : ""}>
      <b>
        {names.check(check)}
        {whereSeen(finding)}
      </b>
      <span>{sentence(note === "" ? names.level(check, level) : names.inUnit(check, note))}</span>
      {safetyBlock && (
        <span class="tag strong">{names.isPaper(check) ? NOT_TO_BE_SOLD : NOT_TO_BE_RIDDEN}</span>
      )}
      {curedBy.length > 0 && <span class="tag">{curedSince(curedBy.map(names.operation))}</span>}
      {/* Between which levels, and what to do, stands in the note. */}
      {borderline !== undefined && <span class="tag">{ON_THE_LINE}</span>}
    </li>
  );
}
