import { useState } from "preact/hooks";
import { gainWords } from "../words/stand.ts";
import { minutes } from "../words/time.ts";
import type { OpenLook } from "./looks.ts";

const SHOWN = 8;

/** The looks still open, those first that gain most for a minute. Each leads to its card. */
export function OpenList(props: {
  looks: readonly OpenLook[];
  currency: string;
  onCheck: (check: string) => void;
}) {
  const { looks, currency, onCheck } = props;
  const [all, setAll] = useState(false);
  const shown = all ? looks : looks.slice(0, SHOWN);
  return (
    <section class="panel openlist" aria-labelledby="open-title">
      <h2 id="open-title">
        {looks.length === 0 ? "No check is open" : "Still open, most worth a minute first"}
      </h2>
      <ol>
        {shown.map(({ check, worth }) => (
          <li key={check.id}>
            <button type="button" class="plainbtn" onClick={() => onCheck(check.id)}>
              {check.name}
            </button>
            <span class="small">
              {minutes(worth?.minutes ?? check.minutes)}
              {check.where === "dismantled" && ", once it is apart"}
            </span>
            <span class="small gain">
              {worth !== null && worth.gainPerMinute > 0
                ? gainWords(worth.gainPerMinute, currency)
                : check.ifNotChecked === "block"
                  ? "owed"
                  : "\u2013"}
            </span>
          </li>
        ))}
      </ol>
      {looks.length > SHOWN && (
        <button type="button" class="plainbtn" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? "Show fewer" : `Show all ${looks.length}`}
        </button>
      )}
    </section>
  );
}
