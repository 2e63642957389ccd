import type { JSX } from "preact";
import { standing } from "../courses/standing.ts";
import { isInvented, ownership } from "../finds/ownership.ts";
import { DemoLine } from "../parts/DemoLine.tsx";
import { Heading } from "../parts/Heading.tsx";
import { CourseSign } from "../signs/CourseSign.tsx";
import { INVENTED_FIND, NO_ANSWER, WORKING, YOUR_OWN } from "../words/common.ts";
import { FIND_NO_FIGURE } from "../words/findTexts.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { likelyRate } from "../words/range.ts";
import { standTitle } from "../words/stand.ts";
import { onTheStand, STAND_INTO_A_COPY, STAND_WHOLE_ANSWER, standTab } from "../words/standTexts.ts";
import { advice } from "../words/verdict.ts";
import type { Bench } from "./useBench.ts";

/** Whose bike stands here, what was found so far, and what that comes to. */
export function StandHead({ bench, wheel }: { bench: Bench; wheel: JSX.Element }) {
  const { find, appraisal, fault, status } = bench;
  const at = `/finds/${encodeURIComponent(find.id)}`;
  return (
    <>
      <DemoLine own={!find.invented} />
      <p class="crumb">
        <a href="/">{PLACE_NAMES.finds}</a> / <a href={at}>{find.name}</a> / {PLACE_NAMES.stand}
      </p>
      <div class="standhead">
        <div>
          <p class="eyebrow">
            {onTheStand(find.name)}
            <span class="tag">
              {find.invented ? INVENTED_FIND : isInvented(find) ? ownership(find) : YOUR_OWN}
            </span>
          </p>
          <Heading title={standTab(find.name)}>
            {appraisal !== null ? standTitle(appraisal) : fault === null ? WORKING : NO_ANSWER}
          </Heading>
          <p class={status === "settled" ? "sofar" : "sofar dim"}>
            {status === "slow" ? WORKING : <SoFar bench={bench} />}
          </p>
          {find.invented && <p class="small">{STAND_INTO_A_COPY}</p>}
        </div>
        {wheel}
      </div>
    </>
  );
}

/** The course so far with its rate; no figure while a stop stands. */
function SoFar({ bench: { appraisal, find } }: { bench: Bench }) {
  if (appraisal === null) return null;
  const { decision, currency } = appraisal;
  if (decision.stop !== null) return <>{FIND_NO_FIGURE}</>;
  const figures = standing(appraisal)?.verdict.marginPerHour ?? null;
  return (
    <>
      <CourseSign course={decision.course} />
      <b>{advice(appraisal, { called: "it" })}</b>
      {figures !== null && <span>{likelyRate(figures, currency)}</span>}
      <a href={`/finds/${encodeURIComponent(find.id)}`}>{STAND_WHOLE_ANSWER}</a>
    </>
  );
}
