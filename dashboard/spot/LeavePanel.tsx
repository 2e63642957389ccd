import { useState } from "preact/hooks";
import { RemoveSure } from "../find/RemoveSure.tsx";
import type { OwnFind } from "../finds/own.ts";
import { REMOVE } from "../words/common.ts";
import { FIND_TEXTS } from "../words/findTexts.ts";
import { END_TEXTS } from "../words/spotEnd.ts";

/** Left where it is: what was seen is kept, or not. */
export function LeavePanel({ own }: { own: OwnFind }) {
  const [sure, setSure] = useState(false);
  return (
    <div class="ending">
      <p>{END_TEXTS.leaveKept}</p>
      <p class="acts">
        <a class="btn" href="/">
          {END_TEXTS.leaveAndKeep}
        </a>
        <a class="btn quiet" href="/spot">
          {END_TEXTS.lookAtAnother}
        </a>
        {!sure && (
          <button type="button" class="btn quiet" onClick={() => setSure(true)}>
            {REMOVE}
          </button>
        )}
      </p>
      {sure && (
        <>
          <p>{FIND_TEXTS.removeSure}</p>
          <RemoveSure id={own.id} onKeep={() => setSure(false)} />
        </>
      )}
    </div>
  );
}
