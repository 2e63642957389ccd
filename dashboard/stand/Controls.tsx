import { handling, setHandling } from "../state/handling.ts";
import { lengthUnit, setLengthUnit } from "../state/units.ts";
import { LENGTH_UNITS } from "../words/length.ts";

/** How the stand behaves: larger buttons, single keys, millimetres or inches. Kept for the next time. */
export function Controls() {
  const { gloves, keys } = handling.value;
  return (
    <section class="controls" aria-label="Buttons, keys and lengths">
      <label class="tick">
        <input
          type="checkbox"
          checked={gloves}
          onChange={(event) => setHandling({ keys, gloves: event.currentTarget.checked })}
        />
        <span>Gloves on: larger buttons</span>
      </label>
      <fieldset class="units">
        <legend class="sr">Lengths in</legend>
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
        <summary>Keys</summary>
        <label class="tick">
          <input
            type="checkbox"
            checked={keys}
            onChange={(event) => setHandling({ gloves, keys: event.currentTarget.checked })}
          />
          <span>Keys answer: 1 to 9 a level, 0 can{"\u2019"}t tell, U undo, / find</span>
        </label>
      </details>
    </section>
  );
}
