import type { Appraisal, CourseOutcome } from "../api/types.ts";
import { capital, counted } from "./count.ts";
import { billed, money, roundMoney, roundTo } from "./money.ts";
import { advice, stopReason } from "./verdict.ts";

/** "Two faults found; 31 checks made; 9 not made". */
export function standTitle(
  appraisal: Pick<Appraisal, "findings" | "looked" | "decision" | "cautions">,
): string {
  if (appraisal.decision.stop !== null) return `Stopped. ${capital(stopReason(appraisal))}.`;
  const { findings, looked } = appraisal;
  const faulty = findings.filter(({ severity, curedBy }) => severity > 0 && curedBy.length === 0);
  const faults = new Set(faulty.map(({ check }) => check)).size;
  const open = looked.applicable - looked.made;
  const rest = open > 0 ? `; ${open} not made` : "";
  if (looked.made === 0 && faults === 0) return `Not looked at yet: ${looked.applicable} checks to make`;
  const made = `${looked.made} ${looked.made === 1 ? "check" : "checks"} made`;
  if (faults === 0) return `No fault found in the ${made}${rest}`;
  return `${capital(counted(faults, "fault"))} found; ${made}${rest}`;
}

/** "€1.30 a minute": what a look gains for each minute it takes. */
export function gainWords(gainPerMinute: number, currency: string): string {
  return `${billed(roundTo(gainPerMinute, 0.1), currency)} a minute`;
}

/** "about €24", "less than €1": what a look is worth beyond its minutes. */
export function worthWords(netGain: number, currency: string): string {
  return roundMoney(netGain) < 1 ? `less than ${money(1, currency)}` : `about ${money(netGain, currency)}`;
}

/** Over the looks still open. */
export function openTitle(open: number, pays: boolean): string {
  if (open === 0) return "No check is open";
  return pays ? "Still open, most worth a minute first" : "Still open, none worth its minute";
}

/** Why there is no next look. */
export const ENOUGH = "Enough looked at. No other look is worth its minute.";
export const ALL_MADE = "Every check at hand is made.";

/** "Four looks are still owed before it is ridden or sold as rideable." */
export function stillOwed(owed: number): string {
  return `${capital(counted(owed, "look"))} ${owed === 1 ? "is" : "are"} still owed before it is ridden or sold as rideable.`;
}

/** What an answer turned: "Now: sell it as found. Offer up from €24 to €41." Empty where it turned nothing. */
export function turnedWords(before: Appraisal, after: Appraisal): string {
  const advised = advice(after, { called: "it" });
  const turned =
    advice(before, { called: "it" }) === advised
      ? ""
      : `Now: ${advised.charAt(0).toLowerCase()}${advised.slice(1)}.`;
  const [was, is] = [before.decision.walkAwayPrice, after.decision.walkAwayPrice];
  const { currency } = after;
  const offer =
    was === null || is === null || roundMoney(was) === roundMoney(is)
      ? ""
      : `Most to pay ${is > was ? "up" : "down"} from ${money(was, currency)} to ${money(is, currency)}.`;
  return [turned, offer].filter((part) => part !== "").join(" ");
}

/**
 * Where a job may show something new: "You can still change course after this: answer what you found, and every course is
 * weighed anew from here. Over the whole job that right is worth about €9."
 * @param again said before on this page: then in short
 */
export function decideAgain(
  { rightToChange }: Pick<CourseOutcome, "rightToChange">,
  currency: string,
  again: boolean,
): string {
  if (again) return "You can still change course after this.";
  const worth =
    rightToChange === null || roundMoney(rightToChange) < 1
      ? ""
      : ` Over the whole job that right is worth about ${money(rightToChange, currency)}.`;
  return `You can still change course after this: answer what you found, and every course is weighed anew from here.${worth}`;
}
