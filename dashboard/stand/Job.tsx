import { useId } from "preact/hooks";
import type { Appraisal, CourseOutcome, PlannedOperation, StopLimit } from "../api/types.ts";
import type { JobRow } from "../begun/rows.ts";
import type { Names } from "../find/names.ts";
import { StepFacts } from "../find/PlanSteps.tsx";
import { answerCheck, JOB_DECIDE_AGAIN, JOB_DONE, JOB_HOW, JOB_LESS } from "../words/jobTexts.ts";
import { jobTags } from "../words/plan.ts";
import { decideAgain } from "../words/stand.ts";
import { atWheels } from "../words/standTexts.ts";
import { isWorthTelling, stopWords } from "../words/stopLimit.ts";
import { minutes } from "../words/time.ts";
import { CautionsAt, onJob } from "./CautionsAt.tsx";
import { SayResult } from "./SayResult.tsx";

interface JobProps {
  readonly row: JobRow;
  /** The same job at each wheel it is planned at; none once it is done. */
  readonly places: readonly PlannedOperation[];
  readonly course: CourseOutcome;
  readonly stops: readonly StopLimit[];
  readonly appraisal: Appraisal;
  readonly names: Names;
  readonly isOpen: boolean;
  readonly onOpen: (open: boolean) => void;
  /** Whether what may change here was told at a job before. */
  readonly isTold: boolean;
  /** Checks at which the result of a test is still to be told, once it is done. */
  readonly untold: readonly string[];
  readonly onDone: (done: boolean) => void;
  readonly onCheck: (check: string) => void;
}

/** One job: a box to tick, what it takes, and unfolded its torque, its proof, what warns, and where to decide again. */
export function Job(props: JobProps) {
  const { row, places, stops, appraisal, names, isOpen, onOpen, untold, onDone, onCheck } = props;
  const [first] = places;
  const stop = stops.find((limit) => limit.operation === row.operation && isWorthTelling(limit));
  const isOpenJob = !row.done && first !== undefined;
  const factsId = useId();
  return (
    <li class={row.done ? "job done" : "job"}>
      <div class="jobline">
        <label class="tick">
          <input
            type="checkbox"
            checked={row.done}
            onChange={(event) => onDone(event.currentTarget.checked)}
          />
          <span>
            <span class="jobname">{row.name}</span>
            <span class="small">
              {row.done ? JOB_DONE : row.minutes === null ? "" : minutes(row.minutes)}
              {isOpenJob && ` ${wheels(places)}`}
            </span>
          </span>
        </label>
        {isOpenJob && (
          <button
            type="button"
            class="plainbtn"
            aria-expanded={isOpen}
            aria-controls={factsId}
            onClick={() => onOpen(!isOpen)}
          >
            {isOpen ? JOB_LESS : JOB_HOW}
            <span class="sr">: {row.name}</span>
          </button>
        )}
      </div>
      {isOpenJob && (
        <div class="jobfacts" id={factsId}>
          {tagsOf(places).map((tag) => (
            <span key={tag} class="tag">
              {tag}
            </span>
          ))}
          {isOpen && (
            <>
              <CautionsAt cautions={onJob(appraisal.cautions, row.operation)} />
              <StepFacts operation={{ ...first, redecide: false }} names={names} />
            </>
          )}
          {stop !== undefined && <p class="stopat">{stopWords(stop, appraisal.currency)}</p>}
        </div>
      )}
      {row.done && untold.length > 0 && <SayResult checks={untold} names={names} onCheck={onCheck} />}
      {mayChange(row.operation, places, stops) && <DecideAgain {...props} />}
    </li>
  );
}

/** A moment at which the course may still change: what was found here is answered at its check. */
function DecideAgain({ places, course, appraisal, names, isTold, onCheck }: JobProps) {
  const checks = [...new Set(places.flatMap(({ because }) => because))];
  return (
    <div class="decide">
      <b>{JOB_DECIDE_AGAIN}</b> {decideAgain(course, appraisal.currency, isTold)}
      {checks.length > 0 && (
        <span class="acts">
          {checks.map((check) => (
            <button key={check} type="button" class="btn quiet" onClick={() => onCheck(check)}>
              {answerCheck(names.check(check))}
            </button>
          ))}
        </span>
      )}
    </div>
  );
}

/** Whether the course may change at a job: it opens or frees something, or its end is open. */
export function mayChange(
  operation: string,
  places: readonly PlannedOperation[],
  stops: readonly StopLimit[],
): boolean {
  const isOpenEnded = stops.some((limit) => limit.operation === operation && isWorthTelling(limit));
  return isOpenEnded || places.some(({ redecide }) => redecide);
}

/** "front and rear" where it is planned at both, the wheel where at one. */
function wheels(places: readonly PlannedOperation[]): string {
  const at = places.flatMap(({ position }) =>
    position === "both" ? ["front", "rear"] : position === "bike" ? [] : [position],
  );
  return atWheels(at);
}

function tagsOf(places: readonly PlannedOperation[]): readonly string[] {
  // What to decide stands in a block of its own here.
  return [...new Set(places.flatMap((place) => jobTags({ ...place, redecide: false })))];
}
