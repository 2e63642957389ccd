import type { Reference } from "../api/types.ts";
import { capital } from "../words/count.ts";
import { LOOK_CANT_TELL, LOOK_LATER } from "../words/looks.ts";
import { moveWords, seenTitle } from "../words/spot.ts";
import { partWords } from "../words/spotLooks.ts";
import { SPOT_CHANGE_IT, SPOT_PUT_OFF } from "../words/spotTexts.ts";
import { seenWords } from "./told.ts";
import type { LookStep } from "./trail.ts";
import type { Looking } from "./useLooking.ts";

interface SeenLooksProps {
  readonly known: Reference;
  readonly looks: readonly LookStep[];
  readonly looking: Looking;
}

/** What was looked at, the newest first, with what each look did to the offer. Any of them can be opened again. */
export function SeenLooks({ known, looks, looking }: SeenLooksProps) {
  const isStopped = looking.sight === "stopped";
  const seen = looks.filter(({ how }) => how === "seen");
  return (
    <section class="panel" aria-labelledby="seen-title">
      <h2 id="seen-title">
        {seen.length === 0 ? SPOT_PUT_OFF : seenTitle(isStopped ? seen.map(unpriced) : seen, known.currency)}
      </h2>
      <ul class="lookrows">
        {[...looks].reverse().map((step) => {
          const check = known.checks.find(({ id }) => id === step.check);
          if (check === undefined) return null;
          const where = step.position === null ? "" : `, ${step.position}`;
          return (
            <li key={`${step.check} ${step.position}`}>
              <b>
                {partWords(check)}
                {where}
              </b>
              <span class="mv">{isStopped ? "" : moveWords(step, known.currency)}</span>
              <span class="small">
                {step.how === "seen"
                  ? capital(seenWords(check, step))
                  : step.how === "later"
                    ? LOOK_LATER
                    : LOOK_CANT_TELL}
              </span>
              <button type="button" class="plainbtn" onClick={() => looking.reopen(step)}>
                {SPOT_CHANGE_IT}
                <span class="sr">
                  {" "}
                  {partWords(check)}
                  {where}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** Once everything is stopped no figure is shown, not even an older one. */
function unpriced({ offerBefore: _, offerAfter: __, ...step }: LookStep): LookStep {
  return step;
}
