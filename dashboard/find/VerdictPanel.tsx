import type { Appraisal, CourseId, CourseOutcome } from "../api/types.ts";
import { hardlyLooked, standing } from "../courses/standing.ts";
import { Explained, Term } from "../parts/Term.tsx";
import { CourseSign } from "../signs/CourseSign.tsx";
import { COURSE_TOKEN } from "../signs/shapes.ts";
import { addedHours } from "../words/addedHours.ts";
import { FIND_ONLY_LEAVING, FIND_WHAT_TO_ASK, FIND_WHEN_DOWN } from "../words/findPanels.ts";
import {
  AN_HOUR,
  barKey,
  bestOtherCourse,
  knownSoFar,
  LIKELY_BETWEEN,
  rateBetween,
  VERDICT,
} from "../words/findVerdict.ts";
import { rate } from "../words/money.ts";
import { sentence } from "../words/plain.ts";
import { advice } from "../words/verdict.ts";
import { Certainty } from "./Certainty.tsx";
import { Offers } from "./Offers.tsx";
import { RateBar } from "./RateBar.tsx";
import { Reasons } from "./Reasons.tsx";

/** A find's answer with what it is held against. */
export interface Shown {
  readonly appraisal: Appraisal;
  readonly goal: number;
  readonly price: number | undefined;
  readonly paid: boolean;
}

/** The decision: what to do, what an hour on it earns and how sure that is, and what to pay. */
export function VerdictPanel(props: Shown & { sellAt: string | null; planAt: string }) {
  const { appraisal, goal, sellAt, planAt } = props;
  const stand = standing(appraisal);
  if (stand === null) return null;
  const { verdict, shown } = stand;
  const token = COURSE_TOKEN[verdict.course];
  return (
    <section class="panel verdict" aria-label={VERDICT} style={{ borderTopColor: `var(${token})` }}>
      <div>
        <p class="say">
          <CourseSign course={verdict.course} />
          {advice(appraisal, { called: "it" })}
        </p>
        {appraisal.decision.lookFirst !== null && <p class="small">{knownSoFar(verdict.course)}</p>}
        <Certainty appraisal={appraisal} goal={goal} />
        <Reasons reasons={appraisal.decision.reasons} currency={appraisal.currency} />
        {sellAt !== null && (
          <p class="small onward">
            <a href={sellAt}>{FIND_WHAT_TO_ASK}</a>
            <a href={planAt}>{FIND_WHEN_DOWN}</a>
          </p>
        )}
      </div>
      <div>
        {shown?.marginPerHour ? (
          <Rate shown={shown} verdict={verdict.course} appraisal={appraisal} goal={goal} />
        ) : (
          <p>{FIND_ONLY_LEAVING}</p>
        )}
      </div>
      <Offers {...props} shown={shown} />
    </section>
  );
}

/** "last 6 h", "6 h more". */
const ADDED_HOURS = /last \S+ h|\S+ h more/;

function Rate(props: { shown: CourseOutcome; verdict: CourseId; appraisal: Appraisal; goal: number }) {
  const { shown, verdict, appraisal, goal } = props;
  const figures = shown.marginPerHour ?? { rate: 0, p10: 0, p90: 0 };
  const { currency } = appraisal;
  const added = addedHours(shown, appraisal.courses, goal, currency);
  return (
    <>
      {verdict === "leave" && <p class="small">{bestOtherCourse(shown.course)}</p>}
      <p class="big">
        <span class="say">{rate(figures.rate, currency)}</span>{" "}
        <span>
          <Term of="margin-per-hour">{AN_HOUR}</Term>, <Term of="likely-between">{LIKELY_BETWEEN}</Term>{" "}
          <b class="nowrap">{rateBetween(figures.p10, figures.p90, currency)}</b>
        </span>
      </p>
      <RateBar
        figures={figures}
        goal={goal}
        currency={currency}
        course={verdict}
        open={hardlyLooked(appraisal)}
      />
      <p class="small">
        {barKey(goal, shown.belowGoalProbability ?? 0, currency)}{" "}
        {added !== null && <Explained text={sentence(added)} words={ADDED_HOURS} of="added-hours" />}
      </p>
    </>
  );
}
