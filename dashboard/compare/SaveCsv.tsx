import { useState } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import { download } from "../ownPrices/download.ts";
import { COMPARE_NO_WRITER, COMPARE_SAVE } from "../words/compareTexts.ts";
import type { Compared } from "./compared.ts";

/** Hands out the finds side by side as a file; what writes it is fetched only then. */
export function SaveCsv(props: { finds: readonly Compared[]; goal: number; known: Reference }) {
  const { finds, goal, known } = props;
  const [failed, setFailed] = useState(false);
  const save = async () => {
    const writer = await import("./comparisonCsv.ts").catch(() => null);
    setFailed(writer === null);
    if (writer !== null) download("side-by-side.csv", writer.comparisonCsv(finds, goal, known));
  };
  return (
    <p class="links">
      <button type="button" class="btn quiet" onClick={() => void save()}>
        {COMPARE_SAVE}
      </button>
      <span class="small" role="status">
        {failed ? COMPARE_NO_WRITER : ""}
      </span>
    </p>
  );
}
