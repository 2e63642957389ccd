import { useEffect, useRef, useState } from "preact/hooks";
import type { Fault } from "../api/fault.ts";
import type { Appraisal } from "../api/types.ts";
import { hardlyLooked, standing } from "../courses/standing.ts";
import { RateBar } from "../find/RateBar.tsx";
import { Spoken } from "../parts/Spoken.tsx";
import { CourseSign } from "../signs/CourseSign.tsx";
import { COURSE_TOKEN } from "../signs/shapes.ts";
import { WORKING } from "../words/common.ts";
import { atAsked, ofCourse, picksToGo, STOPPED, stoppedLine, verdictSpoken } from "../words/describeBar.ts";
import { money, roundMoney } from "../words/money.ts";
import { likelyRate } from "../words/range.ts";
import { advice } from "../words/verdict.ts";
import { answersRefused, barTrouble, mostToOffer, VERDICT_SO_FAR } from "../words/verdictBar.ts";

interface VerdictBarProps {
  readonly appraisal: Appraisal | null;
  readonly status: "settled" | "asking" | "slow";
  readonly fault: Fault | null;
  readonly goal: number;
  readonly price: number | undefined;
  readonly paid: boolean;
  /** How many of the four picks are still open. */
  readonly open: number;
}

/** The answer so far, always in sight at the foot: verdict, rate with its range, and the most to offer. */
export function VerdictBar(props: VerdictBarProps) {
  const { appraisal, status, fault } = props;
  const stop = appraisal !== null && appraisal.decision.stop !== null;
  const token = appraisal === null || stop ? "--stop" : COURSE_TOKEN[appraisal.decision.course];
  const dashed = appraisal !== null && !stop && hardlyLooked(appraisal);
  const classes = ["foot", dashed ? "dashed" : "", status === "settled" ? "" : "dim"].join(" ").trim();
  return (
    <section
      class={classes}
      aria-label={VERDICT_SO_FAR}
      style={{ borderTopColor: appraisal === null ? "var(--edge)" : `var(${token})` }}
    >
      <div class="in">
        {appraisal === null ? <Waiting {...props} /> : <Answered {...props} appraisal={appraisal} />}
        {fault !== null && <p class="footfault">{faultLine(fault)}</p>}
      </div>
      <Spoken text={appraisal === null ? null : verdictSpoken(appraisal)} silenced={stop} />
    </section>
  );
}

function Waiting({ open, status, fault }: VerdictBarProps) {
  if (fault !== null) return null;
  const text = status === "slow" ? WORKING : open === 0 ? "\u00a0" : picksToGo(open);
  return (
    <p class="v" role="status">
      {text}
    </p>
  );
}

function Answered(props: VerdictBarProps & { appraisal: Appraisal }) {
  const { appraisal, goal, price, paid, status } = props;
  const { currency, decision } = appraisal;
  const stand = standing(appraisal);
  const figures = stand?.shown?.marginPerHour ?? null;
  if (decision.stop !== null) {
    return (
      <div>
        <p class="v">{STOPPED}</p>
        <p class="small">{stoppedLine(appraisal)}</p>
      </div>
    );
  }
  return (
    <>
      <div>
        <p class="v">
          <CourseSign course={decision.course} />
          {status === "slow" ? WORKING : advice(appraisal, { called: "it" })}
        </p>
        {figures !== null && (
          <p class="small">
            {decision.course === "leave" && stand?.shown
              ? ofCourse(stand.shown.course)
              : !price || paid
                ? ""
                : atAsked(price, currency)}
            {likelyRate(figures, currency)}
          </p>
        )}
      </div>
      {figures !== null && (
        <RateBar
          figures={figures}
          goal={goal}
          currency={currency}
          course={decision.course}
          open={hardlyLooked(appraisal)}
        />
      )}
      <Most most={decision.walkAwayPrice} currency={currency} />
    </>
  );
}

/** The most to offer, and what it was before the last answer changed it. */
function Most({ most, currency }: { most: number | null; currency: string }) {
  const last = useRef<number | null>(null);
  const [before, setBefore] = useState<number | null>(null);
  useEffect(() => {
    if (last.current !== null && most !== null && roundMoney(last.current) !== roundMoney(most)) {
      setBefore(last.current);
    }
    last.current = most;
  }, [most]);
  if (most === null) return null;
  return (
    <div class="o">
      <span class="num">{money(most, currency)}</span>
      <p class="small">{mostToOffer(before, currency)}</p>
    </div>
  );
}

function faultLine(fault: Fault): string {
  return fault.kind === "refused" ? answersRefused(fault.fields.length) : barTrouble(fault, "entered");
}
