import type { PlannedOperation, ReportedPlan } from "../api/types.ts";
import type { Names } from "../find/names.ts";
import { sentence } from "../words/plain.ts";
import { DECIDE_AGAIN, jobFacts, jobName, jobTags } from "../words/plan.ts";
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
    ...(stop === undefined ? [] : [["Stop", stopWords(stop, currency)] as const]),
    ...(operation.redecide ? [["Then", `decide again: ${DECIDE_AGAIN}`] as const] : []),
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
          {minutes(operation.minutes)}, took <span class="rule" /> min
        </span>
      </p>
      <dl>
        {facts.map(([name, text]) => (
          <div key={name} class={name === "Stop" || name === "Then" ? "halt" : ""}>
            <dt>{name}</dt>
            <dd>{sentence(text)}</dd>
          </div>
        ))}
      </dl>
    </li>
  );
}
