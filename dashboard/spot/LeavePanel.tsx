import { useState } from "preact/hooks";
import { RemoveSure } from "../find/RemoveSure.tsx";
import type { OwnFind } from "../finds/own.ts";
import { removeFind } from "../state/finds.ts";
import { go } from "../state/route.ts";
import { REMOVE } from "../words/common.ts";
import { REMOVING } from "../words/removing.ts";
import { END_LEAVE_AND_KEEP, END_LEAVE_KEPT, END_LOOK_AT_ANOTHER } from "../words/spotEnd.ts";

/** Left where it is: what was seen is kept, or not. */
export function LeavePanel({ own }: { own: OwnFind }) {
  const [sure, setSure] = useState(false);
  const remove = () => {
    removeFind(own.id);
    go("/");
  };
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
          <p>{REMOVING.sure}</p>
          <RemoveSure onKeep={() => setSure(false)} onRemove={remove} />
        </>
      )}
    </div>
  );
}
