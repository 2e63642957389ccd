import type { Fault } from "../api/fault.ts";
import type { Appraisal } from "../api/types.ts";
import { hardlyLooked, standing } from "../courses/standing.ts";
import { RateBar } from "../find/RateBar.tsx";
import { Spoken } from "../parts/Spoken.tsx";
import { CourseSign } from "../signs/CourseSign.tsx";
import { COURSE_TOKEN } from "../signs/shapes.ts";
import type { FindAsking } from "../state/finds.ts";
import { NO_ANSWER, WORKING } from "../words/common.ts";
import { money, roundMoney } from "../words/money.ts";
import { offerWords } from "../words/spot.ts";
import { type BarTerms, barWords } from "../words/spotBar.ts";
import { answersRefused, barTrouble, mostToOffer, offerSpoken, VERDICT_SO_FAR } from "../words/verdictBar.ts";
import type { LookStep } from "./trail.ts";

interface SpotBarProps extends BarTerms {
  readonly asking: FindAsking;
  readonly goal: number;
  /** The last step, where it was a look. */
  readonly last: LookStep | null;
  /** What it found, in words. */
  readonly found: string;
}

/** Always at the foot: the verdict, the rate with its range and the goal, the most to offer and what it was. */
export function SpotBar(props: SpotBarProps) {
  const { asking, decided } = props;
  const appraisal = asking.answer.value;
  const status = asking.status.value;
  const fault = asking.fault.value;
  const isStopped = appraisal !== null && appraisal.decision.stop !== null;
  const token =
    appraisal === null ? "--edge" : isStopped ? "--stop" : COURSE_TOKEN[appraisal.decision.course];
  const classes = [
    "foot",
    "spotbar",
    isStopped || decided ? "" : "dashed",
    isStopped ? "stopped" : "",
    status === "settled" ? "" : "dim",
  ].filter((one) => one !== "");
  return (
    <section
      class={classes.join(" ")}
      aria-label={VERDICT_SO_FAR}
      style={{ borderTopColor: `var(${token})` }}
    >
      <div class="in">
        {appraisal === null ? (
          <p class="v">{fault === null ? WORKING : NO_ANSWER}</p>
        ) : (
          <Answered {...props} appraisal={appraisal} isSlow={status === "slow"} />
        )}
        {fault !== null && <p class="footfault">{faultWords(fault)}</p>}
      </div>
      <Spoken text={spokenWords(props, appraisal)} silenced={isStopped} />
    </section>
  );
}

function Answered(props: SpotBarProps & { appraisal: Appraisal; isSlow: boolean }) {
  const { appraisal, goal, isSlow, last } = props;
  const { currency, decision } = appraisal;
  const words = barWords(appraisal, props);
  const figures = standing(appraisal)?.shown?.marginPerHour ?? null;
  const most = decision.walkAwayPrice;
  const was = last?.offerBefore;
  const hasMoved = was !== undefined && most !== null && roundMoney(was) !== roundMoney(most);
  return (
    <>
      <div>
        <p class="v">
          {words.course !== null && <CourseSign course={words.course} />}
          {isSlow ? WORKING : words.title}
        </p>
        <p class="small">{words.line}</p>
      </div>
      {figures !== null && decision.stop === null && (
        <RateBar
          figures={figures}
          goal={goal}
          currency={currency}
          course={decision.course}
          open={hardlyLooked(appraisal)}
        />
      )}
      {most !== null && decision.stop === null && (
        <div class="o">
          <span class="num">{money(most, currency)}</span>
          <p class="small">{mostToOffer(hasMoved ? was : null, currency)}</p>
        </div>
      )}
    </>
  );
}

/** What was found, the verdict and the offer; empty before there is an answer. */
function spokenWords(props: SpotBarProps, appraisal: Appraisal | null): string {
  if (appraisal === null) return "";
  const { found, last } = props;
  const { currency, decision } = appraisal;
  const most = decision.walkAwayPrice;
  const moved = last === null ? null : offerWords(last, currency);
  const offer = moved ?? (most === null ? "" : offerSpoken(most, currency));
  return [found, `${barWords(appraisal, props).title}.`, offer].filter((one) => one !== "").join(" ");
}

function faultWords(fault: Fault): string {
  return fault.kind === "refused" ? answersRefused(1) : barTrouble(fault, "saw");
}
