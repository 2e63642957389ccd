import type { Check, CourseId } from "../api/types.ts";
import { isInvented, ownership } from "../finds/ownership.ts";
import { Warning } from "../signs/Warning.tsx";
import { reference } from "../state/reference.ts";
import { WHAT_TO_DO } from "../words/common.ts";
import { NO_FIGURE, stoppedFind } from "../words/noFigure.ts";
import { sentence } from "../words/plain.ts";
import { problemWords } from "../words/togetherLeft.ts";
import { LEAVE_ANYWAY, ONLY_LEAVING_OPEN, TO_THE_FIND } from "../words/togetherSet.ts";
import { stopReason } from "../words/verdict.ts";
import { Hold } from "./Hold.tsx";
import { isOpen, type OutsideRow } from "./setRows.ts";

/** Finds that have no place in the choice: stopped, left by your word, with nothing open, or with something wrong. */
export function Outside({ rows }: { rows: readonly OutsideRow[] }) {
  const stopped = rows.filter(({ kind }) => kind === "stopped");
  const others = rows.filter(({ kind }) => kind !== "stopped");
  return (
    <>
      {others.length > 0 && (
        <ul class="setlist">
          {others.map((row) => (
            <li key={row.find.id} class="setitem">
              <div class="setname">
                <span class="setnumber" aria-hidden="true" />
                <div>
                  <Name row={row} />
                  <p class={row.kind === "problem" ? "wrong" : "small"}>
                    {said(row, reference.value?.checks ?? [])}
                  </p>
                  {row.kind === "problem" && (
                    <p class="small">
                      <a href={`/finds/${encodeURIComponent(row.find.id)}`}>
                        {TO_THE_FIND}
                        <span class="sr">: {row.find.name}</span>
                      </a>
                    </p>
                  )}
                </div>
              </div>
              {(row.kind !== "problem" || row.held !== null) && (
                <Hold find={row.find} held={row.held} open={openOf(row)} />
              )}
            </li>
          ))}
        </ul>
      )}
      {stopped.length > 0 && (
        <div class="warnings">
          {stopped.map(({ find, compared }) => (
            <Warning key={find.id} kind="stop">
              <b>{stoppedFind(find.name)}</b> {compared !== null && sentence(stopReason(compared))}{" "}
              {NO_FIGURE} {isInvented(find) && <span class="tag">{ownership(find)}</span>}{" "}
              <a class="nowrap" href={`/finds/${encodeURIComponent(find.id)}`}>
                {WHAT_TO_DO}
              </a>
            </Warning>
          ))}
        </div>
      )}
    </>
  );
}

function Name({ row: { find } }: { row: OutsideRow }) {
  return (
    <>
      <a href={`/finds/${encodeURIComponent(find.id)}`}>{find.name}</a>{" "}
      <span class="tag">{ownership(find)}</span>
    </>
  );
}

function said({ kind, faults, held }: OutsideRow, checks: readonly Check[]): string {
  if (kind === "problem") return problemWords(faults, held, checks);
  return kind === "left" ? LEAVE_ANYWAY : ONLY_LEAVING_OPEN;
}

function openOf({ compared }: OutsideRow): readonly CourseId[] {
  return compared === null ? [] : compared.courses.filter(isOpen).map(({ course }) => course);
}
