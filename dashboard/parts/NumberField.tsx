import { useId, useState } from "preact/hooks";
import { atField } from "../words/atField.ts";
import { less, more, noNumber } from "../words/numberField.ts";
import { readNumber, typedNumber } from "../words/readNumber.ts";
import { useChanged } from "./useChanged.ts";

interface NumberFieldProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onValue: (value: number | undefined) => void;
  /** Shown before or behind the figure. */
  readonly before?: string;
  readonly unit?: string;
  readonly hint?: string;
  /** What is wrong with it, from the API. */
  readonly messages?: readonly string[];
  /** Adds buttons that change the value by so much. */
  readonly step?: number;
}

const typed = (value: number | undefined) => (value === undefined ? "" : typedNumber(value));

/** A number with its unit. What was typed stays, even where it is refused; the reason stands beside it. */
export function NumberField(props: NumberFieldProps) {
  const { label, value, onValue, before, unit, hint, messages = [], step } = props;
  const id = useId();
  const [text, setText] = useState(typed(value));
  const read = readNumber(text);

  // A value that changed elsewhere (a step, another page) shows; what is being typed stays as it is typed.
  useChanged([value], () => setText((before) => (readNumber(before) === value ? before : typed(value))));

  const type = (next: string) => {
    setText(next);
    const number = readNumber(next);
    if (number !== null) onValue(number);
  };
  const by = (change: number) => type(typedNumber(Math.round(((value ?? 0) + change) * 100) / 100));
  const wrong = read === null ? [noNumber(43.5, 1)] : messages.map((message) => atField(label, message));
  const described = [hint === undefined ? "" : `${id}-hint`, wrong.length > 0 ? `${id}-wrong` : ""]
    .join(" ")
    .trim();

  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="figure">
        {before !== undefined && <span aria-hidden="true">{before}</span>}
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={text}
          onInput={(event) => type(event.currentTarget.value)}
          aria-invalid={wrong.length > 0}
          {...(described === "" ? {} : { "aria-describedby": described })}
        />
        {unit !== undefined && <span>{unit}</span>}
        {step !== undefined && (
          <>
            <button type="button" class="step" aria-label={less(label)} onClick={() => by(-step)}>
              {"\u2212"}
            </button>
            <button type="button" class="step" aria-label={more(label)} onClick={() => by(step)}>
              +
            </button>
          </>
        )}
      </div>
      {hint !== undefined && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <Wrong id={`${id}-wrong`} messages={wrong} />
    </div>
  );
}

/** What is wrong with a field, beside it. */
export function Wrong({ id, messages }: { id: string; messages: readonly string[] }) {
  if (messages.length === 0) return null;
  return (
    <p class="wrong" id={id} role="alert">
      {messages.join(" ")}
    </p>
  );
}
