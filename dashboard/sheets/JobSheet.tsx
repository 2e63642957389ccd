import type { Appraisal, CourseOutcome, PlannedOperation, Reference, ReportedPlan } from "../api/types.ts";
import type { Names } from "../find/names.ts";
import { capital, listed } from "../words/count.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { sentence } from "../words/plain.ts";
import { amountWords, DECIDE_AGAIN, jobName, jobTags, LEFT_AS_THEY_ARE, torqueWords } from "../words/plan.ts";
import { between } from "../words/range.ts";
import { beforeRiding, FINAL_CHECK, SCREENS, SHEETS } from "../words/sheets.ts";
import { isWorthTelling, limitsElsewhere, stopWords } from "../words/stopLimit.ts";
import { bareHours, minutes } from "../words/time.ts";
import { Box } from "./Box.tsx";
import { SheetHead } from "./SheetHead.tsx";

export interface JobSheetProps {
  readonly bike: string;
  readonly facts: string;
  readonly invented: string;
  readonly appraisal: Appraisal;
  readonly course: CourseOutcome;
  readonly plan: ReportedPlan;
  readonly known: Reference;
  readonly names: Names;
}

/** The work of a course in working order, to be ticked off at the bench. */
export function JobSheet(props: JobSheetProps) {
  const { bike, facts, invented, appraisal, course, plan, known, names } = props;
  return (
    <section class="jobsheet">
      <SheetHead title={SHEETS.job} bike={bike} facts={facts} invented={invented}>
        <p>
          {COURSE_WORDS[course.course].name}: likely between{" "}
          {between(bareHours(plan.minutes.p10 / 60), bareHours(plan.minutes.p90 / 60), " and ")} hours of
          work, 8 outcomes in 10. Torques and limits are customary: the marking on the part rules.
        </p>
        <Tools plan={plan} known={known} />
      </SheetHead>
      <Cautions cautions={appraisal.cautions} />
      {plan.sharedSteps.length > 0 && (
        <>
          <h2>Taking apart and putting back, once for all jobs</h2>
          <ul class="boxlist">
            {plan.sharedSteps.map(({ step, name, minutes: time }) => (
              <li key={step}>
                <Box />
                <span>
                  {name} ({minutes(time)})
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
      <h2>The work, in order</h2>
      <ol class="steps">
        {plan.operations.map((operation) => (
          <Step
            key={`${operation.operation} ${operation.position}`}
            operation={operation}
            plan={plan}
            names={names}
            currency={appraisal.currency}
          />
        ))}
      </ol>
      <Rest plan={plan} names={names} currency={appraisal.currency} />
      <Readiness appraisal={appraisal} names={names} />
    </section>
  );
}

function Tools({ plan, known }: { plan: ReportedPlan; known: Reference }) {
  const jobs = new Set(
    plan.operations.filter(({ doneBy }) => doneBy === "self").map(({ operation }) => operation),
  );
  const needed = new Set(known.operations.filter(({ id }) => jobs.has(id)).flatMap(({ tools }) => tools));
  const tools = known.tools.filter(({ id }) => needed.has(id));
  return tools.length === 0 ? null : <p>Special tools: {tools.map(({ name }) => name).join("; ")}.</p>;
}

function Cautions({ cautions }: Pick<Appraisal, "cautions">) {
  if (cautions.length === 0) return null;
  return (
    <div class="cautions">
      <h2>Before you begin</h2>
      {cautions.map(({ id, kind, title, text, because }) => (
        <p key={id} class={kind}>
          <b>{sentence(title)}</b> {text} <i>{sentence(because)}</i>
        </p>
      ))}
    </div>
  );
}

interface StepProps {
  readonly operation: PlannedOperation;
  readonly plan: ReportedPlan;
  readonly names: Names;
  readonly currency: string;
}

function Step({ operation, plan, names, currency }: StepProps) {
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

/** Limits of work that may prove needed, and faults that are left. */
function Rest({ plan, names, currency }: Pick<StepProps, "plan" | "names" | "currency">) {
  const limits = limitsElsewhere(plan);
  const { disclosed } = plan;
  if (limits.length + disclosed.length === 0) return null;
  return (
    <>
      <h2>Beside the plan</h2>
      {limits.map((limit) => (
        <p key={limit.operation}>{stopWords(limit, currency)}</p>
      ))}
      {disclosed.length > 0 && (
        <p>
          <b>{LEFT_AS_THEY_ARE}</b> {sentence(listed(disclosed.map(names.check)))}
        </p>
      )}
    </>
  );
}

/** What must be cleared before anyone rides it. */
function Readiness({ appraisal, names }: { appraisal: Appraisal; names: Names }) {
  const { readiness, looked } = appraisal;
  const owed = readiness.owed.filter((id) => !readiness.blocking.includes(id));
  return (
    <div class="readiness">
      <h2>Before anyone rides it</h2>
      <p>{beforeRiding(readiness, looked.applicable - looked.made)}</p>
      <ul class="boxlist one">
        {readiness.blocking.map((id) => (
          <Line key={id} text={`${names.check(id)}: cured and looked at again`} />
        ))}
        {owed.map((id) => (
          <Line key={id} text={`${capital(names.check(id))}: looked at`} />
        ))}
        <Line text={FINAL_CHECK} />
      </ul>
      <p>{SCREENS}</p>
    </div>
  );
}

function Line({ text }: { text: string }) {
  return (
    <li>
      <Box />
      <span>{text}</span>
    </li>
  );
}
