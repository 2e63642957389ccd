import { useEffect, useState } from "preact/hooks";
import { pruned, sendable } from "../answers/reading.ts";
import { type Fault, messagesAt } from "../api/fault.ts";
import type { Check, MeasuredInput, Reading } from "../api/types.ts";
import { NumberField, Wrong } from "../parts/NumberField.tsx";
import { capital } from "../words/count.ts";
import { labelled } from "../words/refusal.ts";
import type { Look } from "./trail.ts";

interface MeasureFoldProps {
  readonly check: Check;
  readonly look: Look;
  readonly reading: Reading | undefined;
  readonly fault: Fault | null;
  /** An answer is under way. */
  readonly busy: boolean;
  readonly onReading: (reading: Reading) => void;
}

/** The measurement behind a look, for whoever has the rule at hand. It is taken when it is whole; a refusal stands beside its field. */
export function MeasureFold({ check, look, reading, fault, busy, onReading }: MeasureFoldProps) {
  const [draft, setDraft] = useState<Reading>(() => measuredOf(reading));
  const [isMissing, setMissing] = useState(false);
  const pointer = `/observations/${check.id}${look.position === null ? "" : `/${look.position}`}`;
  const refused = messagesAt(fault, `/observations/${check.id}`);
  const isRefused = refused.length > 0;
  const [isOpen, setOpen] = useState(isRefused || draft.measured !== undefined);
  const take = () => {
    const whole = sendable(draft, check);
    setMissing(whole === null);
    if (whole !== null && !busy) onReading(whole);
  };
  useEffect(() => {
    if (isRefused) setOpen(true);
  }, [isRefused]);
  const inputs = check.measurement?.inputs ?? [];
  const flags = check.measurement?.flags ?? [];
  // A reading for both wheels is refused without a wheel in the pointer.
  const at = (id: string) => [
    ...messagesAt(fault, `${pointer}/measured/${id}`),
    ...(look.position === null ? [] : messagesAt(fault, `/observations/${check.id}/measured/${id}`)),
  ];
  const beside = inputs.flatMap(({ id }) => at(id));
  return (
    <details class="full" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Measure it instead</summary>
      <form
        class="measured"
        onSubmit={(event) => {
          event.preventDefault();
          take();
        }}
      >
        {inputs.map((input) => (
          <Input key={input.id} input={input} draft={draft} onDraft={setDraft} messages={at(input.id)} />
        ))}
        {flags.map(({ id, label }) => (
          <label key={id} class="tick">
            <input
              type="checkbox"
              checked={draft.flags?.includes(id) ?? false}
              onChange={(event) => {
                const others = draft.flags?.filter((one) => one !== id) ?? [];
                const next = event.currentTarget.checked ? [...others, id] : others;
                setDraft(pruned({ ...draft, flags: next }) ?? {});
              }}
            />
            <span>{capital(label)}</span>
          </label>
        ))}
        <Wrong
          id={`${check.id}-measure-wrong`}
          messages={[
            ...(isMissing ? ["Fill in every figure that is not marked as optional."] : []),
            ...refused.filter((message) => !beside.includes(message)),
          ]}
        />
        <button type="submit" class="btn quiet">
          Take this reading
        </button>
      </form>
    </details>
  );
}

function measuredOf(reading: Reading | undefined): Reading {
  if (reading?.measured === undefined && reading?.flags === undefined) return {};
  const { level: _, ...rest } = reading;
  return rest;
}

function Input(props: {
  input: MeasuredInput;
  draft: Reading;
  onDraft: (draft: Reading) => void;
  messages: readonly string[];
}) {
  const { input, draft, onDraft, messages } = props;
  return (
    <NumberField
      label={`${capital(input.label)}${input.optional ? " (if you have it)" : ""}`}
      value={draft.measured?.[input.id]}
      onValue={(value) => {
        const { [input.id]: _, ...others } = draft.measured ?? {};
        const measured = value === undefined ? others : { ...others, [input.id]: value };
        onDraft(pruned({ ...draft, measured }) ?? {});
      }}
      {...(input.unit === "count" ? {} : { unit: input.unit })}
      messages={messages.map((message) => labelled(message, input))}
    />
  );
}
