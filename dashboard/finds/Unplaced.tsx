import type { Appraisal } from "../api/types.ts";
import { Warning } from "../signs/Warning.tsx";
import { askingOf } from "../state/finds.ts";
import { WHAT_TO_DO } from "../words/common.ts";
import { NO_FIGURE, NO_RATE, stoppedFind } from "../words/noFigure.ts";
import { sentence } from "../words/plain.ts";
import { stopReason } from "../words/verdict.ts";
import type { Answered } from "./answered.ts";
import type { Find } from "./find.ts";
import { isInvented, ownership } from "./ownership.ts";
import type { FindRow } from "./row.ts";

/** A find that a hard caution stops: it comes with no figure. */
export function Stopped({ find, appraisal }: { find: Find; appraisal: Appraisal }) {
  return (
    <Warning kind="stop">
      <b>{stoppedFind(find.name)}</b> {sentence(stopReason(appraisal))} {NO_FIGURE}{" "}
      {isInvented(find) && <span class="tag">{ownership(find)}</span>}{" "}
      <a class="nowrap" href={`/finds/${encodeURIComponent(find.id)}`}>
        {WHAT_TO_DO}
      </a>
    </Warning>
  );
}

/** Finds that have an answer but no bar, or were refused: nothing is dropped in silence. */
export function Unplaced({ answers, rows }: { answers: readonly Answered[]; rows: readonly FindRow[] }) {
  const placed = new Set(rows.map(({ find }) => find.id));
  const rest = answers.filter(
    ({ find, appraisal }) => !placed.has(find.id) && (appraisal === null || appraisal.decision.stop === null),
  );
  const told = rest.flatMap(({ find, appraisal }) => {
    const fault = askingOf(find.id).fault.value;
    if (appraisal !== null) return [{ find, text: NO_RATE }];
    return fault?.kind === "refused" ? [{ find, text: fault.fields[0]?.message ?? fault.detail }] : [];
  });
  if (told.length === 0) return null;
  return (
    <ul class="unplaced">
      {told.map(({ find, text }) => (
        <li key={find.id}>
          <a href={`/finds/${encodeURIComponent(find.id)}`}>{find.name}</a>: {text}
        </li>
      ))}
    </ul>
  );
}
