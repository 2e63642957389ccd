import { useEffect, useRef, useState } from "preact/hooks";
import type { Fault } from "../api/fault.ts";
import type { Appraisal } from "../api/types.ts";
import { hardlyLooked, standing } from "../courses/standing.ts";
import { RateBar } from "../find/RateBar.tsx";
import { Spoken } from "../parts/Spoken.tsx";
import { CourseSign } from "../signs/CourseSign.tsx";
import { COURSE_TOKEN } from "../signs/shapes.ts";
import { WORKING } from "../words/common.ts";
import { capital } from "../words/count.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { money, roundMoney } from "../words/money.ts";
import { likelyRate } from "../words/range.ts";
import { advice, stopReason } from "../words/verdict.ts";

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
      aria-label="Verdict so far"
      style={{ borderTopColor: appraisal === null ? "var(--edge)" : `var(${token})` }}
    >
      <div class="in">
        {appraisal === null ? <Waiting {...props} /> : <Answered {...props} appraisal={appraisal} />}
        {fault !== null && <p class="footfault">{faultLine(fault)}</p>}
      </div>
      <Spoken text={spokenWords(appraisal)} silenced={stop} />
    </section>
  );
}

function Waiting({ open, status, fault }: VerdictBarProps) {
  if (fault !== null) return null;
  const text = status === "slow" ? WORKING : open === 0 ? "\u00a0" : `${capital(picksLeft(open))} to go`;
  return (
    <p class="v" role="status">
      {text}
    </p>
  );
}

function picksLeft(open: number): string {
  return open === 1 ? "one pick" : `${["", "one", "two", "three", "four"][open] ?? open} picks`;
}

function Answered(props: VerdictBarProps & { appraisal: Appraisal }) {
  const { appraisal, goal, price, paid, status } = props;
  const { currency, decision } = appraisal;
  const stand = standing(appraisal);
  const figures = stand?.shown?.marginPerHour ?? null;
  if (decision.stop !== null) {
    return (
      <div>
        <p class="v">Stopped</p>
        <p class="small">{capital(stopReason(appraisal))}. No figure is worked out.</p>
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
              ? `${COURSE_WORDS[stand.shown.course].name}: `
              : !price || paid
                ? ""
                : `At the ${money(price, currency)} asked: `}
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
      <p class="small">most to offer{before !== null && `, was ${money(before, currency)}`}</p>
    </div>
  );
}

/** Verdict and offer in a sentence each; null before there is an answer. */
function spokenWords(appraisal: Appraisal | null): string | null {
  if (appraisal === null) return null;
  const { currency, decision } = appraisal;
  const reason = decision.stop === null ? "" : `: ${stopReason(appraisal)}`;
  const most = decision.walkAwayPrice;
  const offer = most === null ? "" : ` Most to offer: ${money(most, currency)}.`;
  return `${advice(appraisal, { called: "it" })}${reason}.${offer}`;
}

function faultLine(fault: Fault): string {
  if (fault.kind === "no-signal") return "No signal. What you entered is kept and is asked again later.";
  if (fault.kind === "failed") return "The service failed. What you entered is kept.";
  const what = fault.fields.length > 1 ? `${fault.fields.length} answers are` : "An answer is";
  return `${what} refused; the figures are those from before.`;
}
