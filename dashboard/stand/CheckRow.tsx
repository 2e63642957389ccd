import { useRef } from "preact/hooks";
import { messagesAt } from "../api/fault.ts";
import type { Check } from "../api/types.ts";
import type { Bike } from "../describe/bike.ts";
import { pointerTo } from "../describe/CheckAnswer.tsx";
import { summary } from "../describe/summary.ts";
import { lengthUnit } from "../state/units.ts";
import {
  LOOK_STATE_CANT_TELL,
  LOOK_STATE_CURED,
  LOOK_STATE_NOT_LOOKED,
  LOOK_STATE_REFUSED,
} from "../words/lookState.ts";
import { levelWords } from "../words/plain.ts";
import { NOT_TO_BE_RIDDEN, NOT_TO_BE_SOLD, ON_THE_LINE } from "../words/seen.ts";
import { LookCard } from "./LookCard.tsx";
import { worstOf } from "./looks.ts";
import type { Bench } from "./useBench.ts";

interface CheckRowProps {
  readonly check: Check;
  readonly bench: Bench;
  readonly bike: Bike;
  readonly isOpen: boolean;
  readonly onOpen: (open: boolean) => void;
}

/** The id of a check's row on the page. */
export function rowOf(check: string): string {
  return `check-${check}`;
}

/** One check in its group: one line with what was found, which opens to its card and folds again once answered. */
export function CheckRow({ check, bench, bike, isOpen, onOpen }: CheckRowProps) {
  const line = useRef<HTMLElement>(null);
  return (
    <details
      class="check"
      id={rowOf(check.id)}
      open={isOpen}
      onToggle={(event) => event.currentTarget.open !== isOpen && onOpen(event.currentTarget.open)}
    >
      <summary ref={line}>
        <span class="checkname">{check.name}</span>
        <State check={check} bench={bench} />
      </summary>
      {isOpen && (
        <LookCard
          check={check}
          bench={bench}
          bike={bike}
          onDone={() => {
            onOpen(false);
            line.current?.focus();
          }}
        />
      )}
    </details>
  );
}

/** What was found, as the line says it. */
function State({ check, bench }: { check: Check; bench: Bench }) {
  const { answers, appraisal, fault, unsure } = bench;
  const observation = answers.observations[check.id];
  if (messagesAt(fault, pointerTo(check)).length > 0)
    return <span class="state wrong">{LOOK_STATE_REFUSED}</span>;
  const finding = appraisal === null ? undefined : worstOf(appraisal.findings, check.id);
  if (observation === undefined) {
    const settled = finding !== undefined && bench.answers.tyreMarking !== undefined;
    if (settled) return <span class="state said">{levelWords(check, finding.level)}</span>;
    return (
      <span class="state">{unsure.includes(check.id) ? LOOK_STATE_CANT_TELL : LOOK_STATE_NOT_LOOKED}</span>
    );
  }
  return (
    <span class="state said">
      {finding?.source === "measured" && `${levelWords(check, finding.level)}: `}
      {summary(check, observation, lengthUnit.value)}
      {finding?.borderline !== undefined && <span class="tag">{ON_THE_LINE}</span>}
      {finding?.safetyBlock === true && (
        <span class="tag strong">{check.group === "paperwork" ? NOT_TO_BE_SOLD : NOT_TO_BE_RIDDEN}</span>
      )}
      {(finding?.curedBy.length ?? 0) > 0 && <span class="tag">{LOOK_STATE_CURED}</span>}
    </span>
  );
}
