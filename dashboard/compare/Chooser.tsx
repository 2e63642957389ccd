import type { Reference } from "../api/types.ts";
import type { Answered } from "../finds/answered.ts";
import { FindWheel } from "../finds/FindWheel.tsx";
import { ownership } from "../finds/ownership.ts";
import { type FindRow, rowOf } from "../finds/row.ts";
import { compared, toggleCompared } from "../state/compared.ts";
import {
  COMPARE_ADD_OR_DROP,
  COMPARE_FULL,
  COMPARE_HOW_MANY,
  NOT_WORKED_OUT,
} from "../words/compareTexts.ts";
import { anHour } from "../words/money.ts";
import { ONLY_LEAVING, STOPPED_NO_FIGURE } from "../words/noFigure.ts";
import { rateRange } from "../words/range.ts";
import { LEAST, MOST } from "./chosen.ts";

interface ChooserProps {
  readonly answers: readonly Answered[];
  readonly goal: number;
  readonly known: Reference;
}

/** Every find there is, to be added to those side by side or dropped. */
export function Chooser({ answers, goal, known }: ChooserProps) {
  const ids = compared.value;
  const full = ids.length >= MOST;
  return (
    <section class="panel chooser" id="chooser" aria-labelledby="chooser-title">
      <h2 id="chooser-title">{COMPARE_ADD_OR_DROP}</h2>
      <p class="small" role="status">
        {full ? COMPARE_FULL : COMPARE_HOW_MANY}
      </p>
      <ul>
        {answers.map(({ find, appraisal }) => {
          const ticked = ids.includes(find.id);
          const row = appraisal === null ? null : rowOf(find, appraisal, goal);
          return (
            <li key={find.id}>
              <label class="tick">
                <input
                  type="checkbox"
                  checked={ticked}
                  disabled={ticked ? ids.length <= LEAST : full}
                  onChange={() => toggleCompared(find.id)}
                />
                <span>
                  <b>{find.name}</b> <span class="tag">{ownership(find)}</span>
                  <span class="small">{row === null ? withoutRow(appraisal) : <Rate row={row} />}</span>
                </span>
                <FindWheel find={find} reference={known} />
              </label>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function Rate({ row: { rate, p10, p90, appraisal } }: { row: FindRow }) {
  return (
    <>
      {anHour(rate, appraisal.currency)},{" "}
      <span class="nowrap">{rateRange(p10, p90, appraisal.currency)}</span>
    </>
  );
}

function withoutRow(appraisal: Answered["appraisal"]): string {
  if (appraisal === null) return NOT_WORKED_OUT;
  return appraisal.decision.stop === null ? ONLY_LEAVING : STOPPED_NO_FIGURE;
}
