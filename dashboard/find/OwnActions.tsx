import { useState } from "preact/hooks";
import type { Find } from "../finds/find.ts";
import { askingOf, ownFinds } from "../state/finds.ts";
import { go, standAt } from "../state/route.ts";
import { CopyButton } from "./CopyButton.tsx";

/** What can be done with a find of one's own. */
export function OwnActions({ find }: { find: Find }) {
  const { id } = find;
  const [sure, setSure] = useState(false);
  if (!sure) {
    return (
      <div class="acts">
        <a class="btn" href={`/describe/${encodeURIComponent(id)}`}>
          Change or look further
        </a>
        <a class="btn quiet" href={standAt(id)}>
          On the stand
        </a>
        <CopyButton find={find} />
        <button type="button" class="btn quiet" onClick={() => setSure(true)}>
          Remove
        </button>
      </div>
    );
  }
  const remove = () => {
    ownFinds.remove(id);
    askingOf(id).stop();
    go("/");
  };
  return (
    <fieldset class="acts">
      <legend class="sr">Remove this find for good?</legend>
      <button type="button" class="btn" onClick={remove}>
        Remove for good
      </button>
      <button
        type="button"
        class="btn quiet"
        ref={(button) => button?.focus()}
        onClick={() => setSure(false)}
      >
        Keep it
      </button>
    </fieldset>
  );
}
