import type { Find } from "../finds/find.ts";
import { ALONE } from "../finds/own.ts";
import { isInvented, ownership } from "../finds/ownership.ts";
import { useStanding } from "../finds/useStanding.ts";
import { defaultState } from "../listing/saleStates.ts";
import { askingOf } from "../state/finds.ts";
import { WORKING } from "../words/common.ts";
import { ONLY_LEAVING, STOPPED_NO_FIGURE } from "../words/noFigure.ts";
import { moneyRange } from "../words/range.ts";
import {
  CHOICE_ANOTHER,
  CHOICE_ENOUGH,
  CHOICE_FINDS,
  CHOICE_IN_FULL,
  CHOICE_NOT_YET,
  CHOICE_SELL_ANOTHER,
} from "../words/sellingChoice.ts";
import { STATE_NAMES } from "../words/states.ts";

/** The finds to choose from, one's own first, and the bicycle that is none of them. */
export function SellingChoice({ finds }: { finds: readonly Find[] }) {
  // All at once: a line that comes late would push the others down.
  const { answers } = useStanding();
  if (answers.length === 0) return <p role="status">{WORKING}</p>;
  const own = finds.filter((find) => !find.invented);
  const invented = finds.filter((find) => find.invented);
  return (
    <section class="panel sellchoice" aria-labelledby="choice-title">
      <h2 id="choice-title">{CHOICE_FINDS}</h2>
      <ul>
        {[...own, ...invented].map((find) => (
          <li key={find.id}>
            <a href={`/selling/${encodeURIComponent(find.id)}`}>
              <b>{find.name}</b>
              <span class="small">{priceLine(find)}</span>
            </a>
            {isInvented(find) && <span class="tag">{ownership(find)}</span>}
          </li>
        ))}
      </ul>
      <h2>{CHOICE_ANOTHER}</h2>
      <p class="small">{CHOICE_ENOUGH}</p>
      <div class="acts">
        <a class="btn" href={`/selling/${ALONE}`}>
          {CHOICE_SELL_ANOTHER}
        </a>
        <a class="btn quiet" href="/describe">
          {CHOICE_IN_FULL}
        </a>
      </div>
    </section>
  );
}

function priceLine({ id }: Find): string {
  const answer = askingOf(id).answer.value;
  if (answer === null) return CHOICE_NOT_YET;
  if (answer.value === null) return STOPPED_NO_FIGURE;
  const state = defaultState(answer);
  const band = state === null ? null : answer.value[state];
  if (state === null || band === null) return ONLY_LEAVING;
  return `${STATE_NAMES[state].toLowerCase()}, ${moneyRange(band.p10, band.p90, answer.currency)}`;
}
