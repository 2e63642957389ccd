import type { Appraisal } from "../api/types.ts";
import { DRAFT_UNTICK, jobsDone } from "../words/listingDraft.ts";
import type { Say } from "./catalogue.ts";
import { jobKey, jobsOf, jobWords } from "./jobs.ts";
import { courseOf, type SaleState } from "./saleStates.ts";

/** The jobs of the plan behind a state, each ticked while it counts as done. */
export function Jobs(props: {
  answer: Appraisal;
  state: SaleState;
  undone: ReadonlySet<string>;
  onUndone: (undone: ReadonlySet<string>) => void;
  say: Say;
}) {
  const { answer, state, undone, onUndone, say } = props;
  const jobs = jobsOf(courseOf(state, answer.courses)?.plan);
  if (jobs.length === 0) return null;
  const done = jobs.filter((job) => !undone.has(jobKey(job))).length;
  const toggle = (key: string, isDone: boolean) => {
    const next = new Set(undone);
    if (isDone) next.delete(key);
    else next.add(key);
    onUndone(next);
  };
  return (
    <details>
      <summary>{jobsDone(done, jobs.length)}</summary>
      <fieldset class="jobs">
        <legend class="small">{DRAFT_UNTICK}</legend>
        {jobs.map((job) => (
          <label key={jobKey(job)} class="tick">
            <input
              type="checkbox"
              checked={!undone.has(jobKey(job))}
              onChange={(event) => toggle(jobKey(job), event.currentTarget.checked)}
            />
            <span>{jobWords(job, say)}</span>
          </label>
        ))}
      </fieldset>
    </details>
  );
}
