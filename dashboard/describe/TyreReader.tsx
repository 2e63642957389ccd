import { useId } from "preact/hooks";
import type { MarkedTyre } from "../api/types.ts";
import { Wrong } from "../parts/NumberField.tsx";
import { MARKING } from "../words/checkTexts.ts";
import { listed } from "../words/count.ts";
import { sentence } from "../words/plain.ts";
import { BEAD_SEAT, beadSeatWords, lookAlikeTitle, tyreWidth, WIDTH, WIDTH_NOT_SAID } from "../words/tyre.ts";

export interface Marking {
  readonly text: string | undefined;
  readonly onText: (text: string | undefined) => void;
  /** What the answer read in it; null before there is one. */
  readonly read: MarkedTyre | null;
  /** Why it was refused. */
  readonly messages: readonly string[];
}

/** Reads the marking on a tyre: width and bead seat apart, and what looks alike and does not fit. */
export function TyreReader({ text, onText, read, messages }: Marking) {
  const id = useId();
  // An answer to another marking says nothing of this one.
  const fresh = read !== null && read.marking === text ? read : null;
  return (
    <div class="tyre">
      <div class="field">
        <label for={id}>{MARKING}</label>
        <input
          id={id}
          type="text"
          autocomplete="off"
          autocapitalize="off"
          placeholder="28-622"
          value={text ?? ""}
          onInput={(event) => {
            const typed = event.currentTarget.value;
            onText(typed.trim() === "" ? undefined : typed);
          }}
          aria-invalid={messages.length > 0}
          aria-describedby={`${id}-wrong`}
        />
        <Wrong id={`${id}-wrong`} messages={messages} />
      </div>
      <div role="status">{fresh !== null && <Read tyre={fresh} />}</div>
    </div>
  );
}

function Read({ tyre }: { tyre: MarkedTyre }) {
  const { width, candidates, lookAlikes, text } = tyre;
  return (
    <>
      <dl class="split">
        <div>
          <dt>{WIDTH}</dt>
          <dd>{width === null ? WIDTH_NOT_SAID : tyreWidth(width)}</dd>
        </div>
        <div>
          <dt>{BEAD_SEAT}</dt>
          <dd>{beadSeatWords(tyre)}</dd>
        </div>
      </dl>
      <p class="small">{sentence(text)}</p>
      {candidates.length > 1 && (
        <ul class="bullets">
          {candidates.map(({ diameterMm, reason }) => (
            <li key={diameterMm}>
              <b>{diameterMm} mm</b>: {reason}
            </li>
          ))}
        </ul>
      )}
      {lookAlikes.length > 0 && (
        <>
          <h3>{lookAlikeTitle(tyre)}</h3>
          <ul class="bullets">
            {lookAlikes.map(({ diameterMm, names, reason }) => (
              <li key={diameterMm}>
                <b>{diameterMm} mm</b>: {listed(names)}
                <span class="small"> ({reason})</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
