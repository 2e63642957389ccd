import { useState } from "preact/hooks";
import type { Fault } from "../api/fault.ts";
import { messagesAt } from "../api/fault.ts";
import type { Appraisal, Check, Observation } from "../api/types.ts";
import { drawingOf } from "../drawings/drawingOf.ts";
import { minutes } from "../words/time.ts";
import { CheckAnswer } from "./CheckAnswer.tsx";
import { foundBy, summary } from "./summary.ts";

interface CheckCardProps {
  readonly check: Check;
  readonly observation: Observation | undefined;
  readonly onObservation: (observation: Observation | undefined) => void;
  readonly appraisal: Appraisal | null;
  readonly fault: Fault | null;
}

/** One check: how to make it, its drawing, and the answers. Folded, it shows what was answered. */
export function CheckCard({ check, observation, onObservation, appraisal, fault }: CheckCardProps) {
  const pointer = `/observations/${check.id}`;
  const wrong = messagesAt(fault, pointer);
  const [opened, setOpened] = useState(false);
  return (
    <details class="check" onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>
        <span class="checkname">{check.name}</span>
        <span class={observation === undefined ? "state" : "state said"}>
          {wrong.length > 0 ? "refused" : summary(check, observation)}
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
            pointer={pointer}
          />
          <p class="found" role="status">
            {observation === undefined || appraisal === null ? "" : foundBy(check, appraisal.findings)}
          </p>
        </div>
      )}
    </details>
  );
}

function How({ check }: { check: Check }) {
  const drawing = drawingOf(check.id);
  const tools =
    check.tools.length === 0 ? "no tools" : check.tools.map((tool) => tool.replaceAll("-", " ")).join(", ");
  return (
    <div class={drawing === undefined ? "how" : "how drawn"}>
      {drawing !== undefined && (
        // A drawing of our own, built into the page.
        <div class="pic" dangerouslySetInnerHTML={{ __html: drawing }} />
      )}
      <div>
        <p>{check.how}</p>
        <p class="small">
          {minutes(check.minutes)}, {tools}
        </p>
      </div>
    </div>
  );
}
