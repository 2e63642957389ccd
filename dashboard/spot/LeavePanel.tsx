import { useState } from "preact/hooks";
import { RemoveSure } from "../find/RemoveSure.tsx";
import type { OwnFind } from "../finds/own.ts";
import { REMOVE } from "../words/common.ts";
import { REMOVE_SURE } from "../words/removeSure.ts";
import { END_LEAVE_AND_KEEP, END_LEAVE_KEPT, END_LOOK_AT_ANOTHER } from "../words/spotEnd.ts";

/** Left where it is: what was seen is kept, or not. */
export function LeavePanel({ own }: { own: OwnFind }) {
  const [sure, setSure] = useState(false);
  return (
    <div class="ending">
      <p>{END_LEAVE_KEPT}</p>
      <p class="acts">
        <a class="btn" href="/">
          {END_LEAVE_AND_KEEP}
        </a>
        <a class="btn quiet" href="/spot">
          {END_LOOK_AT_ANOTHER}
        </a>
        {!sure && (
          <button type="button" class="btn quiet" onClick={() => setSure(true)}>
            {REMOVE}
          </button>
        )}
      </p>
      {sure && (
        <>
          <p>{REMOVE_SURE}</p>
          <RemoveSure id={own.id} onKeep={() => setSure(false)} />
        </>
      )}
    </div>
  );
}
