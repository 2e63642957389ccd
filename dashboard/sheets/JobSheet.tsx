import type { Appraisal, CourseOutcome, Reference, ReportedPlan } from "../api/types.ts";
import type { Names } from "../find/names.ts";
import { listed } from "../words/count.ts";
import {
  JOB_SHEET_BESIDE,
  JOB_SHEET_CAUTIONS,
  JOB_SHEET_SHARED,
  JOB_SHEET_WORK,
  specialTools,
  workRange,
} from "../words/jobSheet.ts";
import { sentence } from "../words/plain.ts";
import { LEFT_AS_THEY_ARE } from "../words/plan.ts";
import { SHEETS } from "../words/sheets.ts";
import { minutes } from "../words/time.ts";
import { Box } from "./Box.tsx";
import { JobStep } from "./JobStep.tsx";
import { Readiness } from "./Readiness.tsx";
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
        <p>{workRange(course.course, plan)}</p>
        <Tools plan={plan} known={known} />
      </SheetHead>
      <Cautions cautions={appraisal.cautions} />
      {plan.sharedSteps.length > 0 && (
        <>
          <h2>{JOB_SHEET_SHARED}</h2>
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
      <h2>{JOB_SHEET_WORK}</h2>
      <ol class="steps">
        {plan.operations.map((operation) => (
          <JobStep
            key={`${operation.operation} ${operation.position}`}
            operation={operation}
            plan={plan}
            names={names}
            currency={appraisal.currency}
          />
        ))}
      </ol>
      <Rest plan={plan} names={names} />
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
  return tools.length === 0 ? null : <p>{specialTools(tools.map(({ name }) => name))}</p>;
}

function Cautions({ cautions }: Pick<Appraisal, "cautions">) {
  if (cautions.length === 0) return null;
  return (
    <div class="cautions">
      <h2>{JOB_SHEET_CAUTIONS}</h2>
      {cautions.map(({ id, kind, title, text, because }) => (
        <p key={id} class={kind}>
          <b>{sentence(title)}</b> {text} <i>{sentence(because)}</i>
        </p>
      ))}
    </div>
  );
}

/** Faults that are left. */
function Rest({ plan: { disclosed }, names }: { plan: ReportedPlan; names: Names }) {
  if (disclosed.length === 0) return null;
  return (
    <>
      <h2>{JOB_SHEET_BESIDE}</h2>
      <p>
        <b>{LEFT_AS_THEY_ARE}</b> {sentence(listed(disclosed.map(names.check)))}
      </p>
    </>
  );
}
