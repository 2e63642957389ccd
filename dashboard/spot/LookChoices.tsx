import type { ComponentChildren } from "preact";
import type { Check } from "../api/types.ts";
import { lengthUnit } from "../state/units.ts";
import { lengthsFor, withLengths } from "../words/length.ts";
import { LOOK_CANT_TELL, LOOK_LATER } from "../words/looks.ts";
import { levelWords } from "../words/plain.ts";

interface LookChoicesProps {
  readonly check: Check;
  readonly chosen: string | undefined;
  /** Number keys answer: each button names its own. */
  readonly keys: boolean;
  readonly onLevel: (level: string) => void;
  readonly onPass: (how: "cannot-tell" | "later") => void;
}

/** The answers to a look as large buttons, and the two ways past it. */
export function LookChoices({ check, chosen, keys, onLevel, onPass }: LookChoicesProps) {
  const lengths = lengthsFor(check, lengthUnit.value);
  return (
    <div class="choices">
      {check.levels.map(({ id, description }, i) => (
        <Press key={id} isChosen={chosen === id} onPress={() => onLevel(id)}>
          <b>{levelWords(check, id)}</b>
          <span>{withLengths(description, lengths)}</span>
          {keys && <i aria-hidden="true">{i + 1}</i>}
        </Press>
      ))}
      <div class="half">
        <Press onPress={() => onPass("cannot-tell")}>
          <b>{LOOK_CANT_TELL}</b>
          {keys && <i aria-hidden="true">0</i>}
        </Press>
        <Press onPress={() => onPass("later")}>
          <b>{LOOK_LATER}</b>
        </Press>
      </div>
    </div>
  );
}

interface PressProps {
  /** Absent on a way past the look, which is never a finding. */
  readonly isChosen?: boolean;
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

function Press({ isChosen, onPress, children }: PressProps) {
  return (
    <button
      type="button"
      class={isChosen === undefined ? "press cant" : "press"}
      {...(isChosen === undefined ? {} : { "aria-pressed": isChosen })}
      // The second press of a double one would answer the next card.
      onClick={(event) => event.detail < 2 && onPress()}
    >
      {children}
    </button>
  );
}
