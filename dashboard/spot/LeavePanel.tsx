import { useState } from "preact/hooks";
import { RemoveSure } from "../find/RemoveSure.tsx";
import type { OwnFind } from "../finds/own.ts";
import { removeFind } from "../state/finds.ts";
import { go } from "../state/route.ts";
import { REMOVING } from "../words/removing.ts";

/** Left where it is: what was seen is kept, or not. */
export function LeavePanel({ own }: { own: OwnFind }) {
  const [sure, setSure] = useState(false);
  const remove = () => {
    removeFind(own.id);
    go("/");
  };
  return (
    <div class="ending">
      <p>What you saw is kept among the finds; they may come down yet.</p>
      <p class="acts">
        <a class="btn" href="/">
          Leave and keep it
        </a>
        <a class="btn quiet" href="/spot">
          Look at another
        </a>
        {!sure && (
          <button type="button" class="btn quiet" onClick={() => setSure(true)}>
            Remove
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
