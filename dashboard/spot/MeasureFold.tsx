import { useEffect, useState } from "preact/hooks";
import { sendable } from "../answers/reading.ts";
import { type Fault, messagesAt } from "../api/fault.ts";
import type { Check, Measurement, Reading } from "../api/types.ts";
import type { Bike } from "../describe/bike.ts";
import { Measured } from "../describe/Measured.tsx";
import { Wrong } from "../parts/NumberField.tsx";
import { MEASURE_WORDS, SEAT_HINT } from "../words/spot.ts";
import type { Look } from "./trail.ts";

interface MeasureFoldProps {
  readonly check: Check;
  readonly measurement: Measurement;
  /** Which wheel it is for; null for the whole bike, or both wheels alike. */
  readonly position: Look["position"];
  readonly reading: Reading | undefined;
  readonly fault: Fault | null;
  readonly bike: Bike;
  /** An answer is under way. */
  readonly busy: boolean;
  readonly onReading: (reading: Reading) => void;
}

/** The measurement behind a look, for whoever has the rule at hand. It is taken when it is whole; a refusal stands beside its field. */
export function MeasureFold(props: MeasureFoldProps) {
  const { check, measurement, position, reading, fault, bike, busy, onReading } = props;
  const [draft, setDraft] = useState<Reading>(() => measuredOf(reading));
  const [isMissing, setMissing] = useState(false);
  const pointer = `/observations/${check.id}${position === null ? "" : `/${position}`}`;
  const refused = messagesAt(fault, `/observations/${check.id}`);
  const isRefused = refused.length > 0;
  const [isOpen, setOpen] = useState(isRefused || draft.measured !== undefined);
  useEffect(() => {
    if (isRefused) setOpen(true);
  }, [isRefused]);
  const take = () => {
    const whole = sendable(draft, check);
    setMissing(whole === null);
    if (whole !== null && !busy) onReading(whole);
  };
  const beside = measurement.inputs.flatMap(({ id }) => messagesAt(fault, `${pointer}/measured/${id}`));
  return (
    <details class="infull" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{MEASURE_WORDS.open}</summary>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          take();
        }}
      >
        {measurement.derivation.kind === "bead-seat" && <p class="small">{SEAT_HINT}</p>}
        <Measured
          check={check}
          measurement={measurement}
          reading={draft}
          onReading={setDraft}
          fault={fault}
          pointer={pointer}
          bike={bike}
          pressing
        />
        <Wrong
          id={`${check.id}-measure-wrong`}
          messages={[
            ...(isMissing ? [MEASURE_WORDS.missing] : []),
            ...refused.filter((message) => !beside.includes(message)),
          ]}
        />
        <button type="submit" class="btn quiet">
          {MEASURE_WORDS.take}
        </button>
      </form>
    </details>
  );
}

/** What was measured or marked before, without a level judged by eye. */
function measuredOf(reading: Reading | undefined): Reading {
  if (reading === undefined) return {};
  const { level: _, ...rest } = reading;
  return rest;
}
