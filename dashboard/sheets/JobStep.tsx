import type { PlannedOperation, ReportedPlan } from "../api/types.ts";
import type { Names } from "../find/names.ts";
import { DECIDE_AGAIN_HERE, JOB_SHEET_MIN, JOB_SHEET_STOP, JOB_SHEET_TOOK } from "../words/jobSheet.ts";
import { sentence } from "../words/plain.ts";
import { jobFacts, jobName, jobTags, THEN } from "../words/plan.ts";
import { isWorthTelling, stopWords } from "../words/stopLimit.ts";
import { minutes } from "../words/time.ts";
import { Box } from "./Box.tsx";

interface JobStepProps {
  readonly operation: PlannedOperation;
  readonly plan: ReportedPlan;
  readonly names: Names;
  readonly currency: string;
}

/** A job to tick off: its minutes and those it took, what it uses, its torque, its proof, and where to stop. */
export function JobStep({ operation, plan, names, currency }: JobStepProps) {
  const stop = plan.stopLimits.find(
    (limit) => limit.operation === operation.operation && isWorthTelling(limit),
  );
  const facts = [
    ...jobFacts(operation, names.check),
    ...(stop === undefined ? [] : [[JOB_SHEET_STOP, stopWords(stop, currency)] as const]),
    ...(operation.redecide ? [[THEN, DECIDE_AGAIN_HERE] as const] : []),
  ];
  return (
    <li>
      <p class="step">
        <Box />
        <b>{jobName(operation)}</b>
        {jobTags(operation).map((tag) => (
          <span key={tag} class="mark">
            {tag}
          </span>
        ))}
        <span class="minutes">
          {minutes(operation.minutes)}
          {JOB_SHEET_TOOK} <span class="rule" /> {JOB_SHEET_MIN}
        </span>
      </p>
      <dl>
        {facts.map(([name, text]) => (
          <div key={name} class={name === JOB_SHEET_STOP || name === THEN ? "halt" : ""}>
            <dt>{name}</dt>
            <dd>{sentence(text)}</dd>
          </div>
        ))}
      </dl>
    </li>
  );
}
