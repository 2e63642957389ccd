import { useEffect, useRef } from "preact/hooks";
import type { Appraisal, Reference } from "../api/types.ts";
import { Cautions } from "../signs/Cautions.tsx";
import { askWords } from "../words/spotLooks.ts";
import { SPOT_CAUTION, SPOT_GO_ON_LOOKING, youSaw } from "../words/spotTexts.ts";
import { seenWords } from "./told.ts";
import type { LookStep } from "./trail.ts";
import type { Looking } from "./useLooking.ts";

interface CautionCardProps {
  readonly known: Reference;
  readonly appraisal: Appraisal;
  readonly looks: readonly LookStep[];
  readonly looking: Looking;
}

/** The card of the look that raised a hard caution, with the caution open. */
export function CautionCard({ known, appraisal, looks, looking }: CautionCardProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const last = looks.at(-1);
  const check = known.checks.find(({ id }) => id === last?.check);
  return (
    <section class="panel ask" aria-labelledby="caution-title">
      <h2 id="caution-title" ref={heading} tabIndex={-1}>
        {check === undefined ? SPOT_CAUTION : askWords(check)}
        {last !== undefined && last.position !== null && <span>: {last.position}</span>}
      </h2>
      {check !== undefined && last !== undefined && <p class="whynext">{youSaw(seenWords(check, last))}</p>}
      <Cautions cautions={appraisal.cautions.filter(({ id }) => looking.raised.includes(id))} />
      <p class="acts spotacts">
        <button type="button" class="btn" onClick={looking.goOn}>
          {SPOT_GO_ON_LOOKING}
        </button>
      </p>
    </section>
  );
}
