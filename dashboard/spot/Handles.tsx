import { NEEDED } from "../answers/answers.ts";
import { DemoLine } from "../parts/DemoLine.tsx";
import { WorkedOut } from "../parts/WorkedOut.tsx";
import type { FindAsking } from "../state/finds.ts";
import { handling, setHandling } from "../state/handling.ts";
import { FIELD_NAMES } from "../words/fields.ts";
import {
  SPOT_ALL_DETAILS,
  SPOT_CHANGE_IT,
  SPOT_GLOVES,
  SPOT_HANDLES,
  SPOT_KEYS,
  SPOT_WHAT_IT_IS,
} from "../words/spotTexts.ts";
import type { StageProps } from "./OnTheSpot.tsx";

/** Larger buttons, at hand under the card. */
export function Gloves() {
  const { gloves, keys } = handling.value;
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={gloves}
        onChange={(event) => setHandling({ keys, gloves: event.currentTarget.checked })}
      />
      <span>{SPOT_GLOVES}</span>
    </label>
  );
}

/** Whether keys answer, what was picked, and the long form. */
export function Handles({ own, known, asking, onReopen }: StageProps & { asking: FindAsking }) {
  const { gloves, keys } = handling.value;
  const { attributes } = own.answers;
  return (
    <section class="handles" aria-label={SPOT_HANDLES}>
      <label class="tick">
        <input
          type="checkbox"
          checked={keys}
          onChange={(event) => setHandling({ gloves, keys: event.currentTarget.checked })}
        />
        <span>{SPOT_KEYS}</span>
      </label>
      <details>
        <summary>{SPOT_WHAT_IT_IS}</summary>
        <ul class="lookrows">
          {NEEDED.map((name) => (
            <li key={name}>
              <b>{known.attributes[name].find(({ value }) => value === attributes[name])?.label}</b>
              <button type="button" class="plainbtn" onClick={() => onReopen(name)}>
                {SPOT_CHANGE_IT}
                <span class="sr">: {FIELD_NAMES[name]}</span>
              </button>
            </li>
          ))}
        </ul>
      </details>
      <DemoLine own />
      <WorkedOut askings={[asking]} />
      <p>
        <a class="tall" href={`/describe/${encodeURIComponent(own.id)}`}>
          {SPOT_ALL_DETAILS}
        </a>
      </p>
    </section>
  );
}
