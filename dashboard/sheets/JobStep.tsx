import type { PlannedOperation, ReportedPlan } from "../api/types.ts";
import type { Names } from "../find/names.ts";
import { listed } from "../words/count.ts";
import { sentence } from "../words/plain.ts";
import { amountWords, DECIDE_AGAIN, jobName, jobTags, torqueWords } from "../words/plan.ts";
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
  const { because, parts, torque, proof, redecide, assumed } = operation;
  const stop = plan.stopLimits.find(
    (limit) => limit.operation === operation.operation && isWorthTelling(limit),
  );
  const what = listed(because.map(names.check));
  const facts: readonly (readonly [string, string])[] = [
    [
      "Because of",
      because.length === 0 ? "" : assumed ? `${what}: not looked at, but likelier than not` : what,
    ],
    ["Uses", listed(parts.map(({ name, quantity, unit }) => amountWords(name, quantity, unit)))],
    ["Torque", torque === null ? "" : torqueWords(torque)],
    ["Proof", proof],
    ["Stop", stop === undefined ? "" : stopWords(stop, currency)],
    ["Then", redecide ? `decide again: ${DECIDE_AGAIN}` : ""],
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
        {facts.map(
          ([name, text]) =>
            text !== "" && (
              <div key={name} class={name === "Stop" || name === "Then" ? "halt" : ""}>
                <dt>{name}</dt>
                <dd>{sentence(text)}</dd>
              </div>
            ),
        )}
      </dl>
    </li>
  );
}
