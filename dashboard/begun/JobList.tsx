import { Fragment } from "preact";
import { useRef } from "preact/hooks";
import { withDone } from "../answers/soFar.ts";
import { standAt } from "../state/route.ts";
import { BEGUN_DONE_MEANS, doneLegend } from "../words/begun.ts";
import { minutes } from "../words/time.ts";
import { RESULT_UNTOLD, sayResult } from "../words/untold.ts";
import { jobRows } from "./rows.ts";
import type { Untold } from "./untold.ts";
import type { ListProps } from "./WorkBegun.tsx";

interface JobListProps extends ListProps {
  readonly untold: readonly Untold[];
  /** Id of the find. */
  readonly find: string;
}

/** Work to tick as done; under a test or a query that is, the way to where its result is told. */
export function JobList({ soFar, onChange, course, known, untold, find }: JobListProps) {
  const order = useRef<readonly string[]>([]);
  const rows = jobRows(order.current, course?.plan?.operations ?? [], soFar.done, known);
  order.current = rows.map(({ operation }) => operation);
  if (rows.length === 0) return null;
  return (
    <fieldset class="begunlist">
      <legend>{doneLegend(course?.course)}</legend>
      {rows.map(({ operation, name, done, minutes: time }) => (
        <div key={operation} class="task">
          <label class="tick">
            <input
              type="checkbox"
              checked={done}
              onChange={(event) => onChange(withDone(soFar, operation, event.currentTarget.checked))}
            />
            <span>
              {name}
              {time !== null && !done && <span class="small nowrap">{minutes(time)}</span>}
            </span>
          </label>
          <Results untold={untold.filter((one) => one.operation === operation)} known={known} find={find} />
        </div>
      ))}
      <p class="hint">{BEGUN_DONE_MEANS}</p>
    </fieldset>
  );
}

/** Under a test or a query that is done: the way to the checks where its result is told. */
function Results({ untold, known, find }: Pick<JobListProps, "untold" | "known" | "find">) {
  if (untold.length === 0) return null;
  return (
    <p class="small">
      {RESULT_UNTOLD}
      {untold.map(({ check }) => (
        <Fragment key={check}>
          {" "}
          <a href={standAt(find, check)}>
            {sayResult(known.checks.find(({ id }) => id === check)?.name ?? check)}
          </a>
        </Fragment>
      ))}
    </p>
  );
}
