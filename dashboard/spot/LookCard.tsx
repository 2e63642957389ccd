import { useEffect, useRef, useState } from "preact/hooks";
import type { Check, Reading } from "../api/types.ts";
import type { Bike } from "../describe/bike.ts";
import { drawingOf } from "../drawings/drawingOf.ts";
import type { OwnFind } from "../finds/own.ts";
import { useKeys } from "../parts/useKeys.ts";
import type { FindAsking } from "../state/finds.ts";
import { lengthUnit } from "../state/units.ts";
import { lengthsFor, withLengths } from "../words/length.ts";
import { afterThis, whyWords } from "../words/spot.ts";
import { askWords, briefWords } from "../words/spotLooks.ts";
import { SPOT_BOTH_ALIKE, SPOT_HOW_IN_FULL } from "../words/spotTexts.ts";
import { adviceOf } from "./advice.ts";
import { LookChoices } from "./LookChoices.tsx";
import { MeasureFold } from "./MeasureFold.tsx";
import { observed, readingAt } from "./observed.ts";
import { type Look, sameLook } from "./trail.ts";
import type { Looking } from "./useLooking.ts";

interface LookCardProps {
  readonly check: Check;
  readonly look: Look;
  readonly own: OwnFind;
  readonly asking: FindAsking;
  readonly looking: Looking;
  /** Its heading takes the focus: the card before it was answered. */
  readonly focus: boolean;
  readonly keys: boolean;
  readonly bike: Bike;
  readonly currency: string;
}

/** One look: why it is next, how it is made, and its answers. Answering goes on to the next. */
export function LookCard({ check, look, own, asking, looking, focus, keys, bike, currency }: LookCardProps) {
  const { pending, queue } = looking;
  const [isAlike, setAlike] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (!focus) return;
    heading.current?.focus({ preventScroll: true });
    heading.current?.closest("main")?.scrollIntoView({ block: "start" });
  }, [focus]);

  const said = own.answers.observations[check.id];
  const chosen = pending?.level ?? readingAt(said, look)?.level;
  const answer = (reading: Reading, level: string | null) => {
    if (pending !== null) return;
    const position = isAlike ? null : look.position;
    looking.answer({ ...look, position }, observed(said, look, reading, isAlike), { level });
  };
  const take = (level: string) => answer({ level }, level);
  const pass = (how: "cannot-tell" | "later") => {
    if (pending === null) looking.pass(look, how);
  };
  useKeys(keys, {
    level: (index) => {
      const level = check.levels[index];
      if (level !== undefined) take(level.id);
    },
    cannotTell: () => pass("cannot-tell"),
  });

  const worth = adviceOf(asking.answer.value)?.of[check.id] ?? null;
  const isWorth = queue.worth.some((one) => sameLook(one, look));
  return (
    <>
      <section class="panel ask" aria-labelledby="look-title">
        <h2 id="look-title" ref={heading} tabIndex={-1}>
          {askWords(check)}
          {look.position !== null && <span>: {look.position}</span>}
        </h2>
        <p class="whynext">{whyWords(check, worth, currency)}</p>
        <How check={check} />
        {look.position === "front" && (
          <label class="tick">
            <input
              type="checkbox"
              checked={isAlike}
              onChange={(event) => setAlike(event.currentTarget.checked)}
            />
            <span>{SPOT_BOTH_ALIKE}</span>
          </label>
        )}
        <LookChoices check={check} chosen={chosen} keys={keys} onLevel={take} onPass={pass} />
        {briefWords(check) !== check.how && (
          <details class="infull">
            <summary>{SPOT_HOW_IN_FULL}</summary>
            <p class="small">{inHand(check, check.how)}</p>
          </details>
        )}
        {check.measurement !== null && (
          <MeasureFold
            check={check}
            measurement={check.measurement}
            position={isAlike ? null : look.position}
            reading={readingAt(said, look)}
            fault={asking.fault.value}
            bike={bike}
            busy={pending !== null}
            onReading={(reading) => answer(reading, null)}
          />
        )}
      </section>
      <p class="after">{afterThis(queue.worth.length - (isWorth ? 1 : 0))}</p>
    </>
  );
}

/** A text about a check with its lengths in the user's unit. */
function inHand(check: Check, text: string): string {
  return withLengths(text, lengthsFor(check, lengthUnit.value));
}

/** Its drawing where it has one, and how it is made, in short. */
function How({ check }: { check: Check }) {
  const drawing = drawingOf(check.id);
  return (
    <div class={drawing === undefined ? "show" : "show pictured"}>
      {drawing !== undefined && (
        // A drawing of our own, built into the page.
        <div class="pic" dangerouslySetInnerHTML={{ __html: drawing }} />
      )}
      <p>{inHand(check, briefWords(check))}</p>
    </div>
  );
}
