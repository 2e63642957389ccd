import { download } from "../ownPrices/download.ts";
import { SET_SAVE_SET } from "../words/setTexts.ts";
import { LEFT, setHeading, THE_OTHERS } from "../words/togetherSet.ts";
import { Outside } from "./Outside.tsx";
import { Overruns } from "./Overruns.tsx";
import { SetItem } from "./SetItem.tsx";
import { setCsv } from "./setCsv.ts";
import type { SetRow } from "./setRows.ts";
import type { Standing } from "./standing.ts";
import { Total } from "./Total.tsx";

/** The chosen, what they come to, and those left. */
export function SetPanel({ stood, dimmed }: { stood: Standing; dimmed: boolean }) {
  const { answer, rows, outside, goal } = stood;
  const overrun = answer.overruns.length > 0;
  // Where no set fits, what is held to stands in the place of the chosen.
  const isFirst = ({ chosen, held }: SetRow) => (overrun ? held !== null : chosen);
  const chosen = rows.filter(isFirst);
  const left = rows.filter((row) => !isFirst(row));
  const { currency, objective } = answer;
  const worked = chosen.reduce((sum, { shown }) => sum + shown.netBenefit, 0);
  const leaving = worked - (answer.total?.netBenefit ?? worked);
  const list = (some: typeof rows) => (
    <ul class="setlist">
      {some.map((row) => (
        <SetItem key={row.find.id} row={row} goal={goal} objective={objective} currency={currency} />
      ))}
    </ul>
  );
  return (
    <section class={dimmed ? "panel set dim" : "panel set"} aria-labelledby="set-title">
      <h2 id="set-title">{setHeading(chosen.length, overrun)}</h2>
      <Overruns stood={stood} />
      {answer.total !== null && chosen.length > 0 && (
        <Total total={answer.total} leaving={leaving} goal={goal} currency={currency} />
      )}
      {list(chosen)}
      {(left.length > 0 || outside.length > 0) && <h3>{overrun ? THE_OTHERS : LEFT}</h3>}
      {list(left)}
      <Outside rows={outside} />
      {rows.length > 0 && (
        <div class="links">
          <button
            type="button"
            class="plainbtn"
            onClick={() => download("which-together.csv", setCsv(stood))}
          >
            {SET_SAVE_SET}
          </button>
        </div>
      )}
    </section>
  );
}
