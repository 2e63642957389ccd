import type { Appraisal } from "../api/types.ts";
import { standing } from "../courses/standing.ts";
import { capital, uncapital } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { goalMoney, money, roundMoney } from "./money.ts";
import { likelyRate } from "./range.ts";

/** What a sentence about one find needs beside its answer. */
export interface Told {
  /** Inside a sentence: "the plum hybrid". */
  readonly called: string;
  /** Asked or paid; undefined where no price is known. */
  readonly price?: number | undefined;
  /** Name of a check or operation. */
  readonly nameOf: (id: string) => string;
}

/** The decision as a heading: "Restore the copper track bike: €16 an hour, likely between €5 and €28." */
export function verdict(appraisal: Appraisal, goal: number, told: Told): string {
  if (appraisal.decision.stop !== null) return `Stopped. ${capital(stopReason(appraisal))}.`;
  return `${advice(appraisal, told)}: ${ground(appraisal, goal, told)}.`;
}

/** The decision in a few words: "Restore it", "Leave it", "Stopped", "Look first". */
export function advice(appraisal: Appraisal, { called }: Pick<Told, "called">): string {
  if (appraisal.decision.stop !== null) return "Stopped";
  if (appraisal.decision.lookFirst !== null) return "Look first";
  return COURSE_WORDS[appraisal.decision.course].advice(called);
}

function ground(appraisal: Appraisal, goal: number, { called, price, nameOf }: Told): string {
  const { currency, decision } = appraisal;
  if (decision.lookFirst !== null)
    return `${uncapital(nameOf(decision.lookFirst))} before anything else on ${called}`;
  const stand = standing(appraisal);
  if (stand === null) return "no figure";
  if (stand.verdict.course !== "leave") {
    const { marginPerHour } = stand.verdict;
    return marginPerHour === null ? "no figure" : likelyRate(marginPerHour, currency);
  }
  const most = decision.walkAwayPrice;
  if (most !== null && roundMoney(most) > 0 && price !== undefined && price > most) {
    return `it bears ${money(most, currency)} at most, and ${money(price, currency)} is asked`;
  }
  if (stand.shown === null) return "no other course is open";
  if ((stand.shown.margin?.mean ?? 0) < 0) return "any work here loses money";
  return `nothing here earns your ${goalMoney(goal, currency)} an hour`;
}

/** Why everything stops, without a full stop: "serial number: filed, drilled or over-stamped". */
export function stopReason({ cautions, decision }: Pick<Appraisal, "cautions" | "decision">): string {
  const caution = cautions.find(({ id }) => id === decision.stop);
  if (caution === undefined) return "a hard caution stands";
  // A finding raised it ("Serial number: Filed ..."), or the kind of bike did: then the title says more.
  const told = caution.because.includes(": ") ? caution.because : caution.title;
  return told.replace(/\.$/, "").split(": ").map(uncapital).join(": ");
}
