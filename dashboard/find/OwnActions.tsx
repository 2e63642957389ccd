import { useState } from "preact/hooks";
import type { Find } from "../finds/find.ts";
import { askingOf, ownFinds } from "../state/finds.ts";
import { go, standAt } from "../state/route.ts";
import { FIND_TEXTS } from "../words/findTexts.ts";
import { CopyButton } from "./CopyButton.tsx";

/** What can be done with a find of one's own. */
export function OwnActions({ find }: { find: Find }) {
  const { id } = find;
  const [sure, setSure] = useState(false);
  if (!sure) {
    return (
      <div class="acts">
        <a class="btn" href={`/describe/${encodeURIComponent(id)}`}>
          {FIND_TEXTS.change}
        </a>
        {/* Once it is paid for, what to offer is no question. */}
        {find.body.find.purchase?.paid !== true && (
          <a class="btn quiet" href={`/spot/${encodeURIComponent(id)}`}>
            On the spot
          </a>
        )}
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
      <legend class="sr">{FIND_TEXTS.removeSure}</legend>
      <button type="button" class="btn" onClick={remove}>
        {FIND_TEXTS.remove}
      </button>
      <button
        type="button"
        class="btn quiet"
        ref={(button) => button?.focus()}
        onClick={() => setSure(false)}
      >
        {FIND_TEXTS.keep}
      </button>
    </fieldset>
  );
}
