import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";
import { sendable } from "../answers/reading.ts";
import type { Fault } from "../api/fault.ts";
import { messagesAt } from "../api/fault.ts";
import type { Check, Reading } from "../api/types.ts";
import { Wrong } from "../parts/NumberField.tsx";
import { Picks } from "../parts/Picks.tsx";
import { lengthUnit } from "../state/units.ts";
import { CHECK_BY_EYE, CHECK_LEVELS, CHECK_NOT_LOOKED } from "../words/checkAnswer.ts";
import { lengthsFor, withLengths } from "../words/length.ts";
import { levelWords } from "../words/plain.ts";
import type { Bike } from "./bike.ts";
import { LevelButtons } from "./LevelButtons.tsx";
import { Measured } from "./Measured.tsx";

export interface ReadingFieldsProps {
  readonly check: Check;
  readonly reading: Reading;
  readonly onReading: (reading: Reading) => void;
  readonly fault: Fault | null;
  readonly pointer: string;
  readonly bike: Bike;
  /** Levels as buttons that answer at one press, rather than as a choice that can be taken back in place. */
  readonly pressing: boolean;
  /** A level was pressed: the whole answer. */
  readonly onPressed?: (() => void) | undefined;
  /** What stands under the measurement: what came of it. */
  readonly after?: ComponentChildren;
}

/** What was seen at one place: measurements and marks where the check has them, and its levels. */
export function ReadingFields(props: ReadingFieldsProps) {
  const { check, reading, onReading, fault, pointer, pressing, onPressed } = props;
  const id = useId();
  const measured = check.measurement !== null;
  const own = messagesAt(fault, pointer).filter(
    (message) => !inputMessages(check, fault, pointer).includes(message),
  );
  const setLevel = (level: string | undefined) =>
    onReading(level === undefined ? without(reading) : { ...reading, level });
  return (
    <>
      {check.measurement !== null && <Measured {...props} measurement={check.measurement} />}
      {pressing ? (
        <ByEye folded={isMeasured(check, reading)}>
          <LevelButtons
            check={check}
            level={reading.level}
            onLevel={(level) => {
              setLevel(level);
              onPressed?.();
            }}
            legend={measured ? CHECK_BY_EYE : check.name}
            quiet={!measured}
          />
        </ByEye>
      ) : (
        <Picks
          legend={measured ? CHECK_BY_EYE : check.name}
          quiet={!measured}
          choices={check.levels.map(({ id: level, description }) => ({
            value: level,
            label: levelWords(check, level),
            detail: withLengths(description, lengthsFor(check, lengthUnit.value)),
          }))}
          value={reading.level}
          onValue={setLevel}
          none={CHECK_NOT_LOOKED}
          layout="list"
        />
      )}
      <Wrong id={`${id}-wrong`} messages={own} />
    </>
  );
}

/** A measurement wins over the eye: once there is one, the levels fold away. */
function ByEye({ folded, children }: { folded: boolean; children: ComponentChildren }) {
  if (!folded) return <>{children}</>;
  return (
    <details>
      <summary>{CHECK_LEVELS}</summary>
      {children}
    </details>
  );
}

function isMeasured(check: Check, reading: Reading): boolean {
  return reading.measured !== undefined && sendable(reading, check)?.measured !== undefined;
}

function without({ level: _, ...rest }: Reading): Reading {
  return rest;
}

function inputMessages(check: Check, fault: Fault | null, pointer: string): readonly string[] {
  return (check.measurement?.inputs ?? []).flatMap(({ id }) =>
    messagesAt(fault, `${pointer}/measured/${id}`),
  );
}
