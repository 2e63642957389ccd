import { useRef, useState } from "preact/hooks";
import { withAnswer } from "../answers/answers.ts";
import { isBlank, NOTHING_SO_FAR, withDone } from "../answers/soFar.ts";
import type { Appraisal, CourseId, Reference } from "../api/types.ts";
import { jobRows } from "../begun/rows.ts";
import { untoldResults } from "../begun/untold.ts";
import { planInSight, plannedCourses } from "../courses/planInSight.ts";
import type { Names } from "../find/names.ts";
import { PlanPicks } from "../find/PlanPanel.tsx";
import { JOB_DONE, JOB_NOT_DONE, JOB_SPENT_ON_ITS_PAGE, JOB_TICK } from "../words/jobTexts.ts";
import { saidOf } from "../words/lookState.ts";
import { planTitle } from "../words/titles.ts";
import { RESULT_UNTOLD } from "../words/untold.ts";
import { Job, mayChange } from "./Job.tsx";
import type { Bench } from "./useBench.ts";

interface WorkProps {
  readonly bench: Bench;
  readonly appraisal: Appraisal;
  readonly known: Reference;
  readonly names: Names;
  readonly picked: CourseId | null;
  readonly onPick: (course: CourseId) => void;
  readonly onCheck: (check: string) => void;
}

/** The jobs of a plan in working order, to tick as they are done: torque, proof, and where to decide again. */
export function Work({ bench, appraisal, known, names, picked, onPick, onCheck }: WorkProps) {
  const order = useRef<readonly string[]>([]);
  const [unfolded, setUnfolded] = useState<string | null>(null);
  const course = planInSight(appraisal, picked);
  const soFar = bench.answers.soFar ?? NOTHING_SO_FAR;
  if (course === undefined || course.plan === null) return null;
  const { plan } = course;
  const rows = jobRows(order.current, plan.operations, soFar.done, known);
  order.current = rows.map(({ operation }) => operation);
  const first = rows.find(({ done }) => !done)?.operation;
  const planned = plannedCourses(appraisal);
  const placesOf = (job: string) => plan.operations.filter(({ operation }) => operation === job);
  const turning = rows.find(({ operation }) => mayChange(operation, placesOf(operation), plan.stopLimits));
  const untold = untoldResults(known, soFar.done, appraisal);
  const tick = (operation: string, done: boolean) => {
    const next = withDone(soFar, operation, done);
    const answers = withAnswer(bench.answers, "soFar", isBlank(next) ? undefined : next);
    const isUntold = done && untoldResults(known, [operation], appraisal).length > 0;
    const said = done ? (isUntold ? RESULT_UNTOLD : JOB_DONE) : JOB_NOT_DONE;
    bench.put(answers, saidOf(names.operation(operation), said));
    setUnfolded(null);
  };
  return (
    <section class="panel" id="work" aria-labelledby="work-title">
      <h2 id="work-title">{planTitle(course, appraisal.currency)}</h2>
      <p class="small">
        {JOB_TICK} <a href={`/finds/${encodeURIComponent(bench.find.id)}`}>{JOB_SPENT_ON_ITS_PAGE}</a>.
      </p>
      {planned.length > 1 && <PlanPicks planned={planned} chosen={course.course} onPick={onPick} />}
      <ol class="jobs">
        {rows.map((row) => (
          <Job
            key={row.operation}
            row={row}
            places={placesOf(row.operation)}
            course={course}
            stops={plan.stopLimits}
            appraisal={appraisal}
            names={names}
            isOpen={(unfolded ?? first) === row.operation}
            onOpen={(open) => setUnfolded(open ? row.operation : "")}
            isTold={turning !== undefined && turning !== row}
            untold={untold.flatMap((one) => (one.operation === row.operation ? [one.check] : []))}
            onDone={(done) => tick(row.operation, done)}
            onCheck={onCheck}
          />
        ))}
      </ol>
    </section>
  );
}
