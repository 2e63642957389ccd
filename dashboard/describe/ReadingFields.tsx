import { useId } from "preact/hooks";
import type { Fault } from "../api/fault.ts";
import { messagesAt } from "../api/fault.ts";
import type { Check, MeasuredInput, Reading } from "../api/types.ts";
import { NumberField, Wrong } from "../parts/NumberField.tsx";
import { Picks } from "../parts/Picks.tsx";
import { capital } from "../words/count.ts";
import { levelWords } from "../words/plain.ts";
import { labelled } from "../words/refusal.ts";

interface ReadingFieldsProps {
  readonly check: Check;
  readonly reading: Reading;
  readonly onReading: (reading: Reading) => void;
  readonly fault: Fault | null;
  readonly pointer: string;
}

/** What was seen at one place: measurements and marks where the check has them, and its levels. */
export function ReadingFields({ check, reading, onReading, fault, pointer }: ReadingFieldsProps) {
  const id = useId();
  const own = messagesAt(fault, pointer).filter(
    (message) => !inputMessages(check, fault, pointer).includes(message),
  );
  return (
    <>
      {check.measurement !== null && (
        <div class="measured">
          {check.measurement.inputs.map((input) => (
            <Measured
              key={input.id}
              input={input}
              reading={reading}
              onReading={onReading}
              fault={fault}
              pointer={pointer}
            />
          ))}
          {check.measurement.flags.map((flag) => (
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
      )}
      <Picks
        legend={check.measurement === null ? check.name : "Or judge by eye; a measurement wins"}
        quiet={check.measurement === null}
        choices={check.levels.map(({ id: level, description }) => ({
          value: level,
          label: levelWords(check, level),
          detail: description,
        }))}
        value={reading.level}
        onValue={(level) => onReading(level === undefined ? without(reading) : { ...reading, level })}
        none="Not looked at"
        layout="list"
      />
      <Wrong id={`${id}-wrong`} messages={own} />
    </>
  );
}

function without({ level: _, ...rest }: Reading): Reading {
  return rest;
}

function inputMessages(check: Check, fault: Fault | null, pointer: string): readonly string[] {
  return (check.measurement?.inputs ?? []).flatMap(({ id }) =>
    messagesAt(fault, `${pointer}/measured/${id}`),
  );
}

function Measured(props: {
  input: MeasuredInput;
  reading: Reading;
  onReading: (reading: Reading) => void;
  fault: Fault | null;
  pointer: string;
}) {
  const { input, reading, onReading, fault, pointer } = props;
  const set = (value: number | undefined) => {
    const { [input.id]: _, ...others } = reading.measured ?? {};
    onReading({ ...reading, measured: value === undefined ? others : { ...others, [input.id]: value } });
  };
  return (
    <NumberField
      label={`${capital(input.label)}${input.optional ? " (if you have it)" : ""}`}
      value={reading.measured?.[input.id]}
      onValue={set}
      {...(input.unit === "count" ? {} : { unit: input.unit })}
      messages={messagesAt(fault, `${pointer}/measured/${input.id}`).map((message) =>
        labelled(message, input),
      )}
    />
  );
}
