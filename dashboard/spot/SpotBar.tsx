import { useEffect, useState } from "preact/hooks";
import type { Fault } from "../api/fault.ts";
import type { Appraisal } from "../api/types.ts";
import { hardlyLooked, standing } from "../courses/standing.ts";
import { RateBar } from "../find/RateBar.tsx";
import { CourseSign } from "../signs/CourseSign.tsx";
import { COURSE_TOKEN } from "../signs/shapes.ts";
import type { FindAsking } from "../state/finds.ts";
import { NO_ANSWER, WORKING } from "../words/common.ts";
import { money, roundMoney } from "../words/money.ts";
import { offerWords } from "../words/spot.ts";
import { type BarTerms, barWords } from "../words/spotBar.ts";
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
      aria-label="Verdict so far"
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
      <Spoken {...props} appraisal={appraisal} />
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
          <p class="small">most to offer{hasMoved && `, was ${money(was, currency)}`}</p>
        </div>
      )}
    </>
  );
}

const SPEAK_MS = 500;

/** Speaks what was found, the verdict and the offer once, shortly after the last answer. */
function Spoken(props: SpotBarProps & { appraisal: Appraisal | null }) {
  const { appraisal, found, last, decided } = props;
  const [text, setText] = useState("");
  const words = appraisal === null ? null : barWords(appraisal, props);
  const most = appraisal?.decision.walkAwayPrice ?? null;
  const moved = appraisal === null || last === null ? null : offerWords(last, appraisal.currency);
  const offer =
    moved ??
    (appraisal === null || most === null ? "" : `Most to offer: ${money(most, appraisal.currency)}.`);
  const sentence =
    words === null ? "" : [found, `${words.title}.`, offer].filter((one) => one !== "").join(" ");
  const isStopped = appraisal !== null && appraisal.decision.stop !== null;
  useEffect(() => {
    // A figure from before a stop is gone at once, not half a second later.
    if (isStopped) setText("");
    const timer = setTimeout(() => setText(sentence), SPEAK_MS);
    return () => clearTimeout(timer);
  }, [sentence, isStopped, decided]);
  return (
    <p class="sr" aria-live="polite">
      {text}
    </p>
  );
}

function faultWords(fault: Fault): string {
  if (fault.kind === "no-signal") return "No signal. What you saw is kept and is asked again later.";
  if (fault.kind === "failed") return "The service failed. What you saw is kept.";
  return "An answer is refused; the figures are those from before.";
}
