import type { PlannedOperation, ReportedPlan, StopLimit } from "../api/types.ts";
import { Explained } from "../parts/Term.tsx";
import { money } from "../words/money.ts";
import { sentence } from "../words/plain.ts";
import { DECIDE_AGAIN, jobFacts, jobName, jobTags, THEN } from "../words/plan.ts";
import { PLAN_SHARED } from "../words/planPanel.ts";
import { isWorthTelling, stopWords } from "../words/stopLimit.ts";
import { minutes } from "../words/time.ts";
import type { Names } from "./names.ts";

const spent = ({ parts }: PlannedOperation) =>
  parts.reduce((sum, { price, quantity }) => sum + price * quantity, 0);
const sharedMinutes = ({ sharedSteps }: ReportedPlan) =>
  sharedSteps.reduce((sum, step) => sum + step.minutes, 0);
const longest = (plan: ReportedPlan) =>
  Math.max(1, sharedMinutes(plan), ...plan.operations.map((operation) => operation.minutes));
const dearest = (plan: ReportedPlan) => Math.max(1, ...plan.operations.map(spent));

/** The work of a plan in working order, each job with its minutes and money as lengths on common scales. */
export function PlanSteps({ plan, names, currency }: { plan: ReportedPlan; names: Names; currency: string }) {
  const explaining = plan.stopLimits.find(isWorthTelling);
  return (
    <ol class="plan">
      {plan.operations.map((operation) => (
        <Step
          key={`${operation.operation} ${operation.position}`}
          operation={operation}
          longest={longest(plan)}
          dearest={dearest(plan)}
          names={names}
          currency={currency}
          explains={explaining?.operation === operation.operation}
          stop={plan.stopLimits.find(
            (limit) => limit.operation === operation.operation && isWorthTelling(limit),
          )}
        />
      ))}
      <Shared plan={plan} />
    </ol>
  );
}

interface StepProps {
  readonly operation: PlannedOperation;
  readonly longest: number;
  readonly dearest: number;
  readonly names: Names;
  readonly currency: string;
  /** When to give up on it, where its end is open. */
  readonly stop: StopLimit | undefined;
  /** The first limit of the plan stands here: the word is explained. */
  readonly explains: boolean;
}

function Step({ operation, longest, dearest, names, currency, stop, explains }: StepProps) {
  const cost = spent(operation);
  return (
    <li>
      <details>
        <summary>
          <span class="wn">
            <span>{jobName(operation)}</span>
            {jobTags(operation).map((tag) => (
              <span key={tag} class="tag">
                {tag}
              </span>
            ))}
          </span>
          <Length
            share={operation.minutes / longest}
            kind={operation.kind === "optional" ? "choice" : "time"}
          />
          <span class="wv">{minutes(operation.minutes)}</span>
          <Length share={cost / dearest} kind="money" />
          <span class="wv">{cost > 0 ? money(cost, currency) : "\u2013"}</span>
        </summary>
        <StepFacts operation={operation} names={names} />
      </details>
      {stop !== undefined && (
        <p class="stopat">
          {explains ? <StopTerm limit={stop} currency={currency} /> : stopWords(stop, currency)}
        </p>
      )}
    </li>
  );
}

/** A limit with its word explained. */
function StopTerm({ limit, currency }: { limit: StopLimit; currency: string }) {
  return <Explained text={stopWords(limit, currency)} words={/Stop trying/} of="stop-limit" />;
}

/** Why a job is in the plan, what it uses, its torque, and the check that proves it done. */
export function StepFacts({ operation, names }: { operation: PlannedOperation; names: Names }) {
  const { redecide } = operation;
  const facts = [...jobFacts(operation, names.check), ...(redecide ? [[THEN, DECIDE_AGAIN] as const] : [])];
  return (
    <dl class="facts">
      {facts.map(([name, text]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{sentence(text)}</dd>
        </div>
      ))}
    </dl>
  );
}

function Length({ share, kind }: { share: number; kind: "time" | "choice" | "money" }) {
  return (
    <span class="length" aria-hidden="true">
      {share > 0 && <span class={kind} style={{ width: `${Math.max(2, share * 100)}%` }} />}
    </span>
  );
}

/** Dismantling that several operations share, counted once. */
function Shared({ plan }: { plan: ReportedPlan }) {
  if (plan.sharedSteps.length === 0) return null;
  const total = sharedMinutes(plan);
  return (
    <li>
      <details>
        <summary>
          <span class="wn">
            <span>{PLAN_SHARED}</span>
          </span>
          <Length share={total / longest(plan)} kind="time" />
          <span class="wv">{minutes(total)}</span>
          <Length share={0} kind="money" />
          <span class="wv">{"\u2013"}</span>
        </summary>
        <ul class="pairs">
          {plan.sharedSteps.map(({ step, name, minutes: time }) => (
            <li key={step}>
              <span>{name}</span>
              <span>{minutes(time)}</span>
            </li>
          ))}
        </ul>
      </details>
    </li>
  );
}
