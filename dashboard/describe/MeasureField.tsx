import { useId, useState } from "preact/hooks";
import type { MeasuredInput } from "../api/types.ts";
import { Wrong } from "../parts/NumberField.tsx";
import { useChanged } from "../parts/useChanged.ts";
import { inputLabel } from "../words/checkTexts.ts";
import { bareLength, type LengthUnit, readLength, stepOf } from "../words/length.ts";
import { lessOf, moreOf, noInches } from "../words/measureField.ts";
import { noNumber } from "../words/numberField.ts";
import { readNumber, typedNumber } from "../words/readNumber.ts";

interface MeasureFieldProps {
  readonly input: MeasuredInput;
  /** In the input's own unit. */
  readonly value: number | undefined;
  readonly onValue: (value: number | undefined) => void;
  /** How lengths are shown and typed here. */
  readonly lengths: LengthUnit;
  /** How far one press moves it, in its own unit; null where there is no stepping (a size is one of a list). */
  readonly step: number | null;
  /** Where stepping starts while nothing is entered. */
  readonly start: number;
  readonly messages: readonly string[];
}

/** A measured figure to type or to step, each button as large as a thumb. What was typed stays, even where it is refused. */
export function MeasureField(props: MeasureFieldProps) {
  const { input, value, onValue, lengths, step, start, messages } = props;
  const id = useId();
  const unit = input.unit === "mm" ? lengths : input.unit;
  const write = (number: number | undefined) =>
    number === undefined ? "" : input.unit === "mm" ? bareLength(number, lengths) : typedNumber(number);
  const read = (typed: string) =>
    input.unit === "mm" ? readLength(typed, lengths, readNumber) : readNumber(typed);
  const [text, setText] = useState(() => write(value));

  // A value that changed elsewhere (a step, undo, another unit) shows; what is being typed stays as it is typed.
  useChanged([value, unit], () => setText((typed) => (read(typed) === value ? typed : write(value))));

  const type = (typed: string) => {
    setText(typed);
    const number = read(typed);
    if (number !== null) onValue(number);
  };
  const by = (way: -1 | 1) => {
    const move = input.unit === "mm" ? stepOf(step ?? 0, lengths) : (step ?? 0);
    const next = value === undefined ? start : value + way * move;
    type(write(Math.min(input.max, Math.max(input.min, next))));
  };
  const label = inputLabel(input.label, input.optional);
  const wrong = read(text) === null ? [notRead(unit)] : messages;
  return (
    <div class="field measure">
      <label for={id}>
        {label}
        {unit !== "count" && `, ${unit}`}
      </label>
      <div class={step === null ? "stepper bare" : "stepper"}>
        {step !== null && (
          <button type="button" aria-label={lessOf(label)} onClick={() => by(-1)}>
            {"\u2212"}
          </button>
        )}
        <input
          id={id}
          type="text"
          inputMode={unit === "in" ? "text" : "decimal"}
          autocomplete="off"
          value={text}
          onInput={(event) => type(event.currentTarget.value)}
          aria-invalid={wrong.length > 0}
          {...(wrong.length > 0 ? { "aria-describedby": `${id}-wrong` } : {})}
        />
        {step !== null && (
          <button type="button" aria-label={moreOf(label)} onClick={() => by(1)}>
            +
          </button>
        )}
      </div>
      <Wrong id={`${id}-wrong`} messages={wrong} />
    </div>
  );
}

function notRead(unit: string): string {
  return unit === "in" ? noInches(12.06, "12 1/16") : noNumber(43.5, 1);
}
