import { useEffect, useId, useState } from "preact/hooks";

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

/** Thousands set off by commas, as the screen itself writes them. */
const THOUSANDS = /^[1-9]\d{0,2}(,\d{3})+$/;

/**
 * Reads a number as people write it: a comma or a point, a real minus sign, spaces. A comma before just three
 * digits sets off thousands. Undefined for nothing, null for no number.
 */
export function readNumber(text: string): number | undefined | null {
  const close = text.trim().replace("\u2212", "-").replaceAll(" ", "");
  const plain = THOUSANDS.test(close) ? close.replaceAll(",", "") : close.replace(",", ".");
  if (plain === "") return undefined;
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

/** A number with its unit. What was typed stays, even where it is refused; the reason stands beside it. */
export function NumberField(props: NumberFieldProps) {
  const { label, value, onValue, before, unit, hint, messages = [], step } = props;
  const id = useId();
  const [text, setText] = useState(value === undefined ? "" : String(value));
  const read = readNumber(text);

  // A value that changed elsewhere (a step, another page) shows; what is being typed stays as it is typed.
  useEffect(() => {
    setText((typed) => (readNumber(typed) === value ? typed : value === undefined ? "" : String(value)));
  }, [value]);

  const type = (typed: string) => {
    setText(typed);
    const number = readNumber(typed);
    if (number !== null) onValue(number);
  };
  const by = (change: number) => type(String(Math.round(((value ?? 0) + change) * 100) / 100));
  const wrong = read === null ? ["This is no number. Write it like 43.5."] : messages;
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
            <button type="button" class="step" aria-label={`${label}: less`} onClick={() => by(-step)}>
              {"\u2212"}
            </button>
            <button type="button" class="step" aria-label={`${label}: more`} onClick={() => by(step)}>
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
