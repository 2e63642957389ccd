import { useState } from "preact/hooks";
import type { Fault } from "../api/fault.ts";
import { messagesAt } from "../api/fault.ts";
import type { Appraisal, Check, Observation } from "../api/types.ts";
import { lengthUnit } from "../state/units.ts";
import { CHECK_REFUSED } from "../words/checkTexts.ts";
import type { Bike } from "./bike.ts";
import { CheckAnswer, pointerTo } from "./CheckAnswer.tsx";
import { How } from "./How.tsx";
import { foundBy, summary } from "./summary.ts";

interface CheckCardProps {
  readonly check: Check;
  readonly observation: Observation | undefined;
  readonly onObservation: (observation: Observation | undefined) => void;
  readonly appraisal: Appraisal | null;
  readonly fault: Fault | null;
  readonly bike: Bike;
}

/** One check: how to make it, its drawing, and the answers. Folded, it shows what was answered. */
export function CheckCard({ check, observation, onObservation, appraisal, fault, bike }: CheckCardProps) {
  const wrong = messagesAt(fault, pointerTo(check));
  const [opened, setOpened] = useState(false);
  const unit = lengthUnit.value;
  return (
    <details class="check" onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>
        <span class="checkname">{check.name}</span>
        <span class={observation === undefined ? "state" : "state said"}>
          {wrong.length > 0 ? CHECK_REFUSED : summary(check, observation, unit)}
        </span>
      </summary>
      {/* What nobody has opened is not built: there are dozens. */}
      {opened && (
        <div class="checkbody">
          <How check={check} />
          <CheckAnswer
            check={check}
            observation={observation}
            onObservation={onObservation}
            fault={fault}
            bike={bike}
            pressing={false}
          />
          <p class="found" role="status">
            {observation === undefined || appraisal === null ? "" : foundBy(check, appraisal.findings, unit)}
          </p>
        </div>
      )}
    </details>
  );
}
