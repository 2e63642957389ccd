import { useId } from "preact/hooks";
import type { Check } from "../api/types.ts";
import { lengthUnit } from "../state/units.ts";
import { lengthsFor, withLengths } from "../words/length.ts";
import { levelWords } from "../words/plain.ts";

interface LevelButtonsProps {
  readonly check: Check;
  readonly level: string | undefined;
  readonly onLevel: (level: string) => void;
  readonly legend: string;
  /** The legend is spoken only. */
  readonly quiet: boolean;
}

/** The levels of a check as large buttons: one press answers. Each shows the key that presses it, where there are keys. */
export function LevelButtons({ check, level, onLevel, legend, quiet }: LevelButtonsProps) {
  const id = useId();
  return (
    <fieldset class="levels">
      <legend class={quiet ? "sr" : ""} id={id}>
        {legend}
      </legend>
      {check.levels.map((one, i) => (
        <button
          key={one.id}
          type="button"
          class="level"
          aria-pressed={level === one.id}
          onClick={() => onLevel(one.id)}
        >
          <span class="key" aria-hidden="true">
            {i + 1}
          </span>
          <b>{levelWords(check, one.id)}</b>
          <small>{withLengths(one.description, lengthsFor(check, lengthUnit.value))}</small>
        </button>
      ))}
    </fieldset>
  );
}
