import type { Appraisal, Check, Reference } from "../api/types.ts";
import { capital } from "../words/count.ts";
import { READY_PARTS, READY_TITLES, readyCounts, readyRows } from "../words/ready.ts";
import { partWords } from "../words/spotLooks.ts";
import { SPOT_AT_HOME, SPOT_LOOK_NOW } from "../words/spotTexts.ts";
import type { Looking } from "./useLooking.ts";

interface OwedProps {
  readonly known: Reference;
  readonly appraisal: Appraisal;
  readonly looking: Looking;
}

/** What stands before anyone rides it and before it is sold, and the looks still owed: they stay owed whether or not they pay. */
export function Owed({ known, appraisal, looking }: OwedProps) {
  const { readiness } = appraisal;
  if (readiness.blocking.length === 0 && readiness.owed.length === 0) return null;
  const named = (id: string) => known.checks.find((check) => check.id === id);
  const isPaper = (id: string) => named(id)?.group === "paperwork";
  const { ride, sale } = readyRows(readiness, isPaper);
  return (
    <section class="panel" aria-labelledby="owed-title">
      <h2 id="owed-title">{capital(readyCounts(readiness, isPaper))}</h2>
      {(["ride", "sale"] as const).map((part) => {
        const { blocking, owed } = part === "ride" ? ride : sale;
        if (blocking.length + owed.length === 0) return null;
        return (
          <div key={part}>
            <h3>{READY_TITLES[part]}</h3>
            {blocking.length > 0 && (
              <>
                <p class="small">
                  <b>{READY_PARTS[part]}</b>
                </p>
                <ul class="bullets">
                  {blocking.map((id) => (
                    <li key={id}>{named(id)?.name ?? id}</li>
                  ))}
                </ul>
              </>
            )}
            {owed.length > 0 && (
              <>
                <p class="small">
                  <b>{READY_PARTS.owed}</b>
                </p>
                <ul class="lookrows">
                  {owed.map((id) => (
                    <OwedLook key={id} id={id} check={named(id)} looking={looking} />
                  ))}
                </ul>
              </>
            )}
          </div>
        );
      })}
    </section>
  );
}

/** A look owed: to be made now, or where. */
function OwedLook(props: { id: string; check: Check | undefined; looking: Looking }) {
  const { id, check, looking } = props;
  const look = looking.queue.open.find((one) => one.check === id);
  return (
    <li>
      <span>{check?.name ?? id}</span>
      {look === undefined ? (
        <span class="mv">{check?.where === "spot" ? "" : SPOT_AT_HOME}</span>
      ) : (
        <button type="button" class="plainbtn" onClick={() => looking.reopen(look)}>
          {SPOT_LOOK_NOW}
          {check !== undefined && <span class="sr"> {partWords(check)}</span>}
        </button>
      )}
    </li>
  );
}
