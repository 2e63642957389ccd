import type { Appraisal } from "../api/types.ts";
import type { Names } from "../find/names.ts";
import {
  faultWords,
  type HiddenFault,
  historyWords,
  lessLikely,
  raisedWords,
  UNSEEN_SOURCE,
  unseenTitle,
} from "../words/unseen.ts";

/** So many faults stand open; the rest is folded. */
const OPEN = 5;

/** The likeliest faults that nobody has looked for, why they are likely, and what the past seems to be. */
export function UnseenPanel({ appraisal, names }: { appraisal: Appraisal; names: Names }) {
  const { hidden, history } = appraisal;
  const past = historyWords(history);
  if (hidden.length === 0 && past === null) return null;
  const rest = hidden.slice(OPEN);
  return (
    <section class="panel" aria-labelledby="unseen-title">
      <h2 id="unseen-title">{unseenTitle(hidden, names)}</h2>
      {past !== null && (
        <p class="small">
          {past} {UNSEEN_SOURCE}
        </p>
      )}
      <Faults faults={hidden.slice(0, OPEN)} names={names} />
      {rest.length > 0 && (
        <details>
          <summary>{lessLikely(rest.length)}</summary>
          <Faults faults={rest} names={names} />
        </details>
      )}
    </section>
  );
}

function Faults({ faults, names }: { faults: readonly HiddenFault[]; names: Names }) {
  if (faults.length === 0) return null;
  return (
    <ul class="findings unseen">
      {faults.map((fault) => (
        <li key={fault.check}>
          <b>{names.check(fault.check)}</b>
          <span>{faultWords(fault, names)}</span>
          {raisedWords(fault, names).map((why) => (
            <span key={why} class="why">
              {why}
            </span>
          ))}
        </li>
      ))}
    </ul>
  );
}
