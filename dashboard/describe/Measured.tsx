import "../style/measure.css";
import { messagesAt } from "../api/fault.ts";
import type { Measurement } from "../api/types.ts";
import { lengthUnit } from "../state/units.ts";
import { capital } from "../words/count.ts";
import { withLengths } from "../words/length.ts";
import { labelled } from "../words/refusal.ts";
import { MeasuredDrawing } from "./MeasuredDrawing.tsx";
import { MeasureField } from "./MeasureField.tsx";
import type { ReadingFieldsProps } from "./ReadingFields.tsx";
import { startFor, stepFor } from "./stepping.ts";

/** The measurement of a check: its drawing, a field for each reading, and marks to set beside it. */
export function Measured(props: ReadingFieldsProps & { measurement: Measurement }) {
  const { check, measurement, reading, onReading, fault, pointer, bike } = props;
  const readings = reading.measured ?? {};
  // Bead seats are named in millimetres the world over.
  const lengths = measurement.derivation.kind === "bead-seat" ? "mm" : lengthUnit.value;
  const set = (id: string, value: number | undefined) => {
    const { [id]: _, ...others } = readings;
    onReading({ ...reading, measured: value === undefined ? others : { ...others, [id]: value } });
  };
  return (
    <div class="measured">
      <MeasuredDrawing check={check} measurement={measurement} readings={readings} bike={bike} />
      <div class={measurement.inputs.length > 1 ? "measures paired" : "measures"}>
        {measurement.inputs.map((input) => (
          <MeasureField
            key={input.id}
            input={input}
            value={readings[input.id]}
            onValue={(value) => set(input.id, value)}
            lengths={lengths}
            step={stepFor(input, measurement)}
            start={startFor(input, measurement, readings)}
            messages={messagesAt(fault, `${pointer}/measured/${input.id}`).map((message) =>
              withLengths(labelled(message, input), lengths),
            )}
          />
        ))}
      </div>
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
