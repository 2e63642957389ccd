import { handling, setHandling } from "../state/handling.ts";
import { lengthUnit, setLengthUnit } from "../state/units.ts";
import { LENGTH_UNITS } from "../words/length.ts";
import {
  CONTROL_ALL,
  CONTROL_GLOVES,
  CONTROL_KEYS,
  CONTROL_LENGTHS,
  STAND_KEYS,
} from "../words/standControls.ts";

/** How the stand behaves: larger buttons, single keys, millimetres or inches. Kept for the next time. */
export function Controls() {
  const { gloves, keys } = handling.value;
  return (
    <section class="controls" aria-label={CONTROL_ALL}>
      <label class="tick">
        <input
          type="checkbox"
          checked={gloves}
          onChange={(event) => setHandling({ keys, gloves: event.currentTarget.checked })}
        />
        <span>{CONTROL_GLOVES}</span>
      </label>
      <fieldset class="units">
        <legend class="sr">{CONTROL_LENGTHS}</legend>
        {LENGTH_UNITS.map(({ value, label }) => (
          <label key={value} class="pick">
            <input
              type="radio"
              name="length-unit"
              checked={lengthUnit.value === value}
              onChange={() => setLengthUnit(value)}
            />
            <span>{label}</span>
          </label>
        ))}
      </fieldset>
      <details>
        <summary>{CONTROL_KEYS}</summary>
        <label class="tick">
          <input
            type="checkbox"
            checked={keys}
            onChange={(event) => setHandling({ gloves, keys: event.currentTarget.checked })}
          />
          <span>{STAND_KEYS}</span>
        </label>
      </details>
    </section>
  );
}
