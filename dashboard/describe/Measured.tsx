import { CHECK_FINER } from "../words/checkTexts.ts";
import "../style/measure.css";
import { messagesAt } from "../api/fault.ts";
import type { MeasuredInput, Measurement } from "../api/types.ts";
import { lengthUnit } from "../state/units.ts";
import { capital } from "../words/count.ts";
import { lengthsFor, withLengths } from "../words/length.ts";
import { labelled } from "../words/refusal.ts";
import { MeasuredDrawing } from "./MeasuredDrawing.tsx";
import { MeasureField } from "./MeasureField.tsx";
import type { ReadingFieldsProps } from "./ReadingFields.tsx";
import { startFor, stepFor } from "./stepping.ts";

/** The measurement of a check: its drawing, a field for each reading, and marks to set beside it. */
export function Measured(props: ReadingFieldsProps & { measurement: Measurement }) {
  const { check, measurement, reading, onReading, fault, pointer, bike, after } = props;
  const readings = reading.measured ?? {};
  const lengths = lengthsFor(check, lengthUnit.value);
  const set = (id: string, value: number | undefined) => {
    const { [id]: _, ...others } = readings;
    onReading({ ...reading, measured: value === undefined ? others : { ...others, [id]: value } });
  };
  const needed = measurement.inputs.filter(({ optional }) => !optional);
  const finer = measurement.inputs.filter(({ optional }) => optional);
  const field = (input: MeasuredInput) => (
    <MeasureField
      key={input.id}
      input={input}
      value={readings[input.id]}
      onValue={(value) => set(input.id, value)}
      lengths={lengths}
      step={stepFor(input, measurement)}
      start={startFor(input, measurement, readings)}
      messages={messagesAt(fault, `${pointer}/measured/${input.id}`).map((message) =>
        withLengths(labelled(message, input), lengths, true),
      )}
    />
  );
  return (
    <div class="measured">
      <MeasuredDrawing check={check} measurement={measurement} readings={readings} bike={bike} />
      <div class={needed.length > 1 ? "measures paired" : "measures"}>{needed.map(field)}</div>
      {finer.length > 0 && (
        <details open={finer.some(({ id }) => readings[id] !== undefined)}>
          <summary>{CHECK_FINER}</summary>
          <div class="measures paired">{finer.map(field)}</div>
        </details>
      )}
      {after}
      {measurement.flags.map((flag) => (
        <label key={flag.id} class="tick">
          <input
            type="checkbox"
            checked={reading.flags?.includes(flag.id) ?? false}
            onChange={(event) => {
              const others = reading.flags?.filter((one) => one !== flag.id) ?? [];
              onReading({
                ...reading,
                flags: event.currentTarget.checked ? [...others, flag.id] : others,
              });
            }}
          />
          <span>{capital(flag.label)}</span>
        </label>
      ))}
    </div>
  );
}
