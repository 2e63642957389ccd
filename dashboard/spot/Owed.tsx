import type { Appraisal, Reference } from "../api/types.ts";
import { capital, counted } from "../words/count.ts";
import { partWords } from "../words/spotLooks.ts";
import type { Looking } from "./useLooking.ts";

interface OwedProps {
  readonly known: Reference;
  readonly appraisal: Appraisal;
  readonly looking: Looking;
}

/** What must be cured before anyone rides it, and the looks still owed: they stay owed whether or not they pay. */
export function Owed({ known, appraisal, looking }: OwedProps) {
  const { blocking, owed } = appraisal.readiness;
  if (blocking.length === 0 && owed.length === 0) return null;
  const named = (id: string) => known.checks.find((check) => check.id === id);
  const openHere = (id: string) => looking.queue.open.find(({ check }) => check === id);
  return (
    <section class="panel" aria-labelledby="owed-title">
      <h2 id="owed-title">{owedTitle(blocking.length, owed.length)}</h2>
      {blocking.length > 0 && (
        <>
          <h3>To cure before anyone rides it</h3>
          <ul class="bullets">
            {blocking.map((id) => (
              <li key={id}>{named(id)?.name ?? id}</li>
            ))}
          </ul>
        </>
      )}
      {owed.length > 0 && (
        <>
          <h3>Looks owed before riding or selling</h3>
          <ul class="lookrows">
            {owed.map((id) => {
              const check = named(id);
              const look = openHere(id);
              return (
                <li key={id}>
                  <span>{check?.name ?? id}</span>
                  {look === undefined ? (
                    <span class="mv">{check?.where === "spot" ? "" : "at home"}</span>
                  ) : (
                    <button type="button" class="plainbtn" onClick={() => looking.reopen(look)}>
                      Look now
                      {check !== undefined && <span class="sr"> {partWords(check)}</span>}
                    </button>
                  )}
                </li>
              );
            })}
          </ul>
        </>
      )}
    </section>
  );
}

function owedTitle(blocking: number, owed: number): string {
  const parts = [
    blocking > 0 ? `${counted(blocking, "fault")} to cure` : "",
    owed > 0 ? `${counted(owed, "look")} owed` : "",
  ].filter((part) => part !== "");
  return capital(parts.join(", "));
}
