import { useState } from "preact/hooks";
import type { Find } from "../finds/find.ts";
import { removeFind } from "../state/finds.ts";
import { go, standAt } from "../state/route.ts";
import { REMOVE } from "../words/common.ts";
import { FIND_CHANGE } from "../words/findPanels.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { CopyButton } from "./CopyButton.tsx";
import { RemoveSure } from "./RemoveSure.tsx";

/** What can be done with a find of one's own. */
export function OwnActions({ find }: { find: Find }) {
  const { id } = find;
  const [sure, setSure] = useState(false);
  const remove = () => {
    removeFind(id);
    go("/");
  };
  if (!sure) {
    return (
      <div class="acts">
        <a class="btn" href={`/describe/${encodeURIComponent(id)}`}>
          {FIND_CHANGE}
        </a>
        {/* Once it is paid for, what to offer is no question. */}
        {find.body.find.purchase?.paid !== true && (
          <a class="btn quiet" href={`/spot/${encodeURIComponent(id)}`}>
            {PLACE_NAMES.spot}
          </a>
        )}
        <a class="btn quiet" href={standAt(id)}>
          {PLACE_NAMES.stand}
        </a>
        <CopyButton find={find} />
        <button type="button" class="btn quiet" onClick={() => setSure(true)}>
          {REMOVE}
        </button>
      </div>
    );
  }
  return <RemoveSure onKeep={() => setSure(false)} onRemove={remove} />;
}
