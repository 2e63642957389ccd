import { useEffect, useState } from "preact/hooks";
import { reachable } from "../api/reception.ts";
import { onDevice } from "../local/onDevice.ts";
import { newer } from "../state/newer.ts";
import { NEWER, noSignal } from "../words/whereWorkedOut.ts";
import { thisDevice } from "./thisDevice.ts";

/** Stands under the masthead while there is no signal, and when a newer version can be had; else it takes no room. */
export function StatusLine() {
  const [runs, setRuns] = useState(false);
  useEffect(() => void onDevice.ready.then(() => setRuns(true)), []);
  const offered = newer.value;
  return (
    <div class="statusline" role="status">
      {!reachable.value && <p>{noSignal(runs, thisDevice())}</p>}
      {offered !== null && (
        <p>
          {NEWER[offered.what]}{" "}
          <button type="button" class="btn quiet" onClick={offered.take}>
            {NEWER.take}
          </button>
        </p>
      )}
    </div>
  );
}
