import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { isPerWheel, pruned } from "../answers/reading.ts";
import type { Fault } from "../api/fault.ts";
import type { Check, Observation, Reading } from "../api/types.ts";
import { CHECK_APART } from "../words/checkAnswer.ts";
import { capital } from "../words/count.ts";
import type { Bike } from "./bike.ts";
import { ReadingFields } from "./ReadingFields.tsx";

export interface CheckAnswerProps {
  readonly check: Check;
  readonly observation: Observation | undefined;
  readonly onObservation: (observation: Observation | undefined) => void;
  readonly fault: Fault | null;
  readonly bike: Bike;
  readonly pressing: boolean;
  /** A level of the whole bike, or of both wheels alike, was pressed: the whole answer. */
  readonly onPressed?: (() => void) | undefined;
  /** What stands under the measurement of the whole bike, or of a wheel. */
  readonly after?: (wheel: "front" | "rear" | null) => ComponentChildren;
}

/** Where a check's observation stands in the question. */
export function pointerTo(check: Pick<Check, "id">): string {
  return `/observations/${check.id}`;
}

/** The answer to one check: for the whole bike, or front and rear apart. */
export function CheckAnswer({ check, observation, onObservation, after, ...fields }: CheckAnswerProps) {
  const apart = observation !== undefined && isPerWheel(observation);
  const [split, setSplit] = useState(apart);
  const pointer = pointerTo(check);
  const whole = observation !== undefined && !apart ? (observation as Reading) : {};
  const setWhole = (reading: Reading) => onObservation(pruned(reading) ?? undefined);
  if (!check.perWheel) {
    return (
      <ReadingFields
        {...fields}
        check={check}
        reading={whole}
        onReading={setWhole}
        pointer={pointer}
        after={after?.(null)}
      />
    );
  }
  const wheels = apart ? observation : {};
  const setWheel = (wheel: "front" | "rear", reading: Reading) => {
    const { [wheel]: _, ...other } = wheels as { front?: Reading; rear?: Reading };
    const left = pruned(reading);
    const next = left === null ? other : { ...other, [wheel]: left };
    onObservation(Object.keys(next).length === 0 ? undefined : next);
  };
  return (
    <>
      <label class="tick">
        <input
          type="checkbox"
          checked={split}
          onChange={(event) => {
            setSplit(event.currentTarget.checked);
            if (!event.currentTarget.checked) onObservation(undefined);
            else if (Object.keys(whole).length > 0) onObservation({ front: whole, rear: whole });
          }}
        />
        <span>{CHECK_APART}</span>
      </label>
      {split ? (
        (["front", "rear"] as const).map((wheel) => (
          <fieldset key={wheel} class="wheelside">
            <legend>{capital(wheel)}</legend>
            <ReadingFields
              {...fields}
              onPressed={undefined}
              check={check}
              reading={wheels[wheel] ?? {}}
              onReading={(reading) => setWheel(wheel, reading)}
              pointer={`${pointer}/${wheel}`}
              after={after?.(wheel)}
            />
          </fieldset>
        ))
      ) : (
        <ReadingFields
          {...fields}
          check={check}
          reading={whole}
          onReading={setWhole}
          pointer={pointer}
          after={after?.(null)}
        />
      )}
    </>
  );
}
