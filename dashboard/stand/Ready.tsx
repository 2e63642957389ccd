import type { Appraisal, Check, CourseOutcome } from "../api/types.ts";
import type { Names } from "../find/names.ts";
import { capital } from "../words/count.ts";
import { FIND_NOT_CERTIFIED } from "../words/findTexts.ts";
import { sentence } from "../words/plain.ts";
import { curesOf, owedWords, READY_TITLES, readyRows } from "../words/ready.ts";
import { readinessTitle } from "../words/titles.ts";
import { RESULT_UNTOLD } from "../words/untold.ts";
import { worstOf } from "./looks.ts";

interface ReadyProps {
  readonly appraisal: Appraisal;
  readonly checks: readonly Check[];
  /** The course whose plan is in sight. */
  readonly course: CourseOutcome | undefined;
  readonly names: Names;
  /** Checks at which the result of a test that is done is still to be told. */
  readonly untold: readonly string[];
  readonly onCheck: (check: string) => void;
}

/** What stands between the bike and the road, and between it and a sale: faults to cure and looks owed apart, each with what to do. */
export function Ready(props: ReadyProps) {
  const { appraisal, names } = props;
  const rows = readyRows(appraisal.readiness, names.isPaper);
  return (
    <section class="panel ready" id="ready" aria-labelledby="ready-title">
      <h2 id="ready-title">{readinessTitle(appraisal, names.isPaper)}</h2>
      <List {...props} title={READY_TITLES.ride} blocking={rows.ride.blocking} owed={rows.ride.owed} />
      <List {...props} title={READY_TITLES.sale} blocking={rows.sale.blocking} owed={rows.sale.owed} />
      {appraisal.readiness.ready && <p class="small">{FIND_NOT_CERTIFIED}</p>}
    </section>
  );
}

function List(props: ReadyProps & { title: string; blocking: readonly string[]; owed: readonly string[] }) {
  const { title, blocking, owed, appraisal, checks, course, names, untold, onCheck } = props;
  if (blocking.length + owed.length === 0) return null;
  const jobs = course?.plan?.operations ?? [];
  const safeJobs = appraisal.courses.find((one) => one.course === "make-safe")?.plan?.operations ?? [];
  const rideable = course?.course === "restore" || course?.course === "make-safe";
  return (
    <>
      <h3>{title}</h3>
      {blocking.length > 0 && (
        <ul class="blocks">
          {blocking.map((id) => {
            const worst = worstOf(appraisal.findings, id);
            return (
              <li key={id}>
                <Lead id={id} names={names} onCheck={onCheck} />
                {worst !== undefined && <span>{sentence(names.level(id, worst.level))}</span>}
                <span class="small">
                  {untold.includes(id)
                    ? RESULT_UNTOLD
                    : curesOf(id, worst?.curedBy ?? [], jobs, safeJobs, rideable, names)}
                </span>
              </li>
            );
          })}
        </ul>
      )}
      {owed.length > 0 && (
        <ul class="owed">
          {owed.map((id) => (
            <li key={id}>
              <Lead id={id} names={names} onCheck={onCheck} />
              <span class="small">
                {untold.includes(id) ? RESULT_UNTOLD : owedWords(checks.find((one) => one.id === id))}
              </span>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function Lead({ id, names, onCheck }: Pick<ReadyProps, "names" | "onCheck"> & { id: string }) {
  return (
    <button type="button" class="plainbtn" onClick={() => onCheck(id)}>
      {capital(names.check(id))}
    </button>
  );
}
