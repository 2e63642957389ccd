import { Spoken } from "../parts/Spoken.tsx";
import { WORKING } from "../words/common.ts";
import { LOOK_UNDO } from "../words/looks.ts";
import { sentence } from "../words/plain.ts";
import { turnedWords } from "../words/stand.ts";
import type { Bench } from "./useBench.ts";

/** What the last answer was and what it turned, with the way back. Spoken once, half a second after the answer. */
export function LastChange({ bench, onUndo }: { bench: Bench; onUndo: () => void }) {
  const { last, appraisal, status } = bench;
  const settled = status === "settled";
  const turned =
    last === null || last.answer === null || appraisal === null || !settled
      ? ""
      : turnedWords(last.answer, appraisal);
  const told = last === null ? "" : `${sentence(last.said)} ${turned}`.trim();
  return (
    <>
      <Spoken text={settled ? told : null} />
      {last !== null && (
        <div class="lastchange">
          <p>
            <b>{sentence(last.said)}</b> {status === "slow" ? WORKING : turned}
          </p>
          <button type="button" class="plainbtn" onClick={onUndo}>
            {LOOK_UNDO}
          </button>
        </div>
      )}
    </>
  );
}
