import { useEffect, useState } from "preact/hooks";
import { sentence } from "../words/plain.ts";
import { turnedWords } from "../words/stand.ts";
import type { Bench } from "./useBench.ts";

const SPEAK_MS = 500;

/** What the last answer was and what it turned, with the way back. Spoken once, half a second after the answer. */
export function LastChange({ bench, onUndo }: { bench: Bench; onUndo: () => void }) {
  const { last, appraisal, status } = bench;
  const settled = status === "settled";
  const turned =
    last === null || last.answer === null || appraisal === null || !settled
      ? ""
      : turnedWords(last.answer, appraisal);
  const told = last === null ? "" : `${sentence(last.said)} ${turned}`.trim();
  const [spoken, setSpoken] = useState("");
  useEffect(() => {
    if (!settled) return;
    const timer = setTimeout(() => setSpoken(told), SPEAK_MS);
    return () => clearTimeout(timer);
  }, [told, settled]);
  return (
    <>
      <p class="sr" aria-live="polite">
        {spoken}
      </p>
      {last !== null && (
        <div class="lastchange">
          <p>
            <b>{sentence(last.said)}</b> {status === "slow" ? "Working it out" : turned}
          </p>
          <button type="button" class="plainbtn" onClick={onUndo}>
            Undo
          </button>
        </div>
      )}
    </>
  );
}
