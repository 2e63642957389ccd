import { useState } from "preact/hooks";
import type { Names } from "../find/names.ts";
import { money } from "../words/money.ts";
import { gainWords, openTitle } from "../words/stand.ts";
import { STAND_ONCE_APART, STAND_OWED, STAND_SHOW_FEWER, showAll } from "../words/standTexts.ts";
import { minutes } from "../words/time.ts";
import type { OpenLook, PaidTest } from "./looks.ts";

/** Looks shown at first: fewer where none pays. */
const SHOWN = { paying: 8, idle: 3 } as const;

/** The looks still open, those first that gain most for a minute. Each leads to its card. */
export function OpenList(props: {
  looks: readonly OpenLook[];
  tests: readonly PaidTest[];
  names: Names;
  currency: string;
  onCheck: (check: string) => void;
}) {
  const { looks, tests, names, currency, onCheck } = props;
  const [all, setAll] = useState(false);
  const pays = tests.length > 0 || looks.some(({ worth }) => worth !== null && worth.netGain > 0);
  const most = pays ? SHOWN.paying : SHOWN.idle;
  const shown = all ? looks : looks.slice(0, most);
  return (
    <section class="panel openlist" aria-labelledby="open-title">
      <h2 id="open-title">{openTitle(looks.length, pays)}</h2>
      <ol>
        {shown.map(({ check, worth }) => (
          <li key={check.id}>
            <button type="button" class="plainbtn" onClick={() => onCheck(check.id)}>
              {check.name}
            </button>
            <span class="small">
              {minutes(worth?.minutes ?? check.minutes)}
              {check.where === "dismantled" && STAND_ONCE_APART}
            </span>
            <span class="small gain">
              {worth !== null && worth.gainPerMinute > 0
                ? gainWords(worth.gainPerMinute, currency)
                : check.ifNotChecked === "block"
                  ? STAND_OWED
                  : "\u2013"}
            </span>
          </li>
        ))}
        {tests.map(({ operation, minutes: time, fee, gainPerMinute }) => (
          <li key={operation}>
            <span>{names.operation(operation)}</span>
            <span class="small">
              {minutes(time)}
              {fee > 0 && `, ${money(fee, currency)}`}
            </span>
            <span class="small gain">{gainWords(gainPerMinute, currency)}</span>
          </li>
        ))}
      </ol>
      {looks.length > most && (
        <button type="button" class="plainbtn" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? STAND_SHOW_FEWER : showAll(looks.length)}
        </button>
      )}
    </section>
  );
}
