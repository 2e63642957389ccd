import type { Appraisal, Check, Reference } from "../api/types.ts";
import { ReadyParts } from "../find/ReadyParts.tsx";
import { capital } from "../words/count.ts";
import { readyCounts } from "../words/ready.ts";
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
  return (
    <section class="panel" aria-labelledby="owed-title">
      <h2 id="owed-title">{capital(readyCounts(readiness, isPaper))}</h2>
      <ReadyParts
        readiness={readiness}
        isPaper={isPaper}
        fault={(id) => named(id)?.name ?? id}
        look={(id) => <OwedLook id={id} check={named(id)} looking={looking} />}
        looksAs="lookrows"
      />
    </section>
  );
}

/** A look owed: to be made now, or where. */
function OwedLook(props: { id: string; check: Check | undefined; looking: Looking }) {
  const { id, check, looking } = props;
  const look = looking.queue.open.find((one) => one.check === id);
  return (
    <>
      <span>{check?.name ?? id}</span>
      {look === undefined ? (
        <span class="mv">{check?.where === "spot" ? "" : SPOT_AT_HOME}</span>
      ) : (
        <button type="button" class="plainbtn" onClick={() => looking.reopen(look)}>
          {SPOT_LOOK_NOW}
          {check !== undefined && <span class="sr"> {partWords(check)}</span>}
        </button>
      )}
    </>
  );
}
