import type { Appraisal, CourseOutcome } from "../api/types.ts";
import { standing } from "../courses/standing.ts";
import { capital, count, listed, uncapital } from "./count.ts";
import { anHour, money, priceWords, rate, roundMoney, roundTo } from "./money.ts";
import { atMost, neverPays } from "./mostToPay.ts";
import { minutes } from "./time.ts";
import { stopReason } from "./verdict.ts";

/** The end of looking: a heading and a line. */
export function endWords(
  worthLeft: number,
  openLeft: number,
  looks: number,
): { readonly title: string; readonly line: string } {
  if (worthLeft > 0) {
    const left =
      worthLeft === 1
        ? "One look is still worth its minute"
        : `${capital(count(worthLeft))} looks are still worth their minute`;
    return { title: "Decide on what you saw", line: `${left}.` };
  }
  if (openLeft === 0) return { title: "All looked at", line: "Nothing is left to look at here." };
  if (looks === 0)
    return {
      title: "No look pays here",
      line: "Nothing you are likely to see would change the advice at this price.",
    };
  return { title: "Enough looked at", line: "No other look is worth its minute." };
}

/** What is worth doing though not here. */
export function elsewhereTitle(tests: number, atHome: number, paid: boolean): string {
  if (tests > 0) return `Worth finding out before you ${paid ? "start" : "pay"}`;
  return atHome === 1 ? "Worth a look at home, before you start" : "Worth looks at home, before you start";
}

/** "€45, 30 min" */
export function testWords(
  { fee, minutes: takes }: { fee: number; minutes: number },
  currency: string,
): string {
  return fee === 0 ? minutes(takes) : `${money(fee, currency)}, ${minutes(takes)}`;
}

/** What to offer, sentence by sentence. */
export function offerAdvice(
  appraisal: Appraisal,
  { goal, price }: { goal: number; price: number | undefined },
): readonly string[] {
  const { currency, decision } = appraisal;
  const most = decision.walkAwayPrice;
  if (most === null) return [];
  const asked =
    price === undefined ? "What they ask is not known." : `They ask ${priceWords(price, currency)}.`;
  if (roundMoney(most) <= 0) return [asked, neverPays("Even for nothing,", goal, appraisal)];
  const told = [asked, atMost(most, goal, appraisal)];
  const hours = earning(appraisal)?.hours?.mean ?? 0;
  // The price comes off the margin one for one, and hours do not depend on it.
  if (hours > 0 && roundTo(TEN / hours, 1) >= 1)
    told.push(`Every ${money(TEN, currency)} less adds about ${rate(TEN / hours, currency)} to each hour.`);
  return told;
}

/** What must be asked before any money changes hands: "Before you pay, still to ask: serial number and papers." Empty where nothing is. */
export function beforeYouPay(parts: readonly string[]): string {
  if (parts.length === 0) return "";
  return `Before you pay, still to ask: ${listed(parts.map(uncapital))}.`;
}

/** The step in which an offer comes down, in the currency's unit. */
const TEN = 10;

/** The course that would be taken at an acceptable price. */
function earning(appraisal: Appraisal): CourseOutcome | null {
  return standing(appraisal)?.shown ?? null;
}

/** "At €35: €13 an hour": what an hour earns at another price than the answer's. Null where no course is open. */
export function atPrice(
  appraisal: Appraisal,
  { price = 0, offer }: { price: number | undefined; offer: number },
): string | null {
  const { currency } = appraisal;
  const course = earning(appraisal);
  if (course === null || course.margin === null || course.hours === null || course.hours.mean <= 0)
    return null;
  const perHour = (course.margin.mean + price - offer) / course.hours.mean;
  return `At ${priceWords(offer, currency)}: ${anHour(perHour, currency)}.`;
}

/**
 * "The whole job leaves €64, likely between €20 and €105." at another price than the answer's: the margin and its range move
 * by just the difference, which the rate's range does not. Null where no course is open.
 */
export function leftAtPrice(
  appraisal: Appraisal,
  { price = 0, offer }: { price: number | undefined; offer: number },
): string | null {
  const { currency } = appraisal;
  const margin = earning(appraisal)?.margin ?? null;
  if (margin === null) return null;
  const less = price - offer;
  const [low, high] = [money(margin.p10 + less, currency), money(margin.p90 + less, currency)];
  const range = low === high ? "hardly more or less" : `likely between ${low} and ${high}`;
  return `The whole job leaves ${money(margin.mean + less, currency)}, ${range}.`;
}

/** Texts of the end of looking: what to do now, and each way to do it. */
export const END_OFFER = "Offer";
export const END_LEAVE = "Leave";
export const END_HOME = "Take home";
export const END_TRY_PRICE = "Try a price";
export const END_LEAVE_IT = "Leave it";
export const END_LEAVE_KEPT = "What you saw is kept among the finds; they may come down yet.";
export const END_LEAVE_AND_KEEP = "Leave and keep it";
export const END_LOOK_AT_ANOTHER = "Look at another";
export const END_PAID = "What you paid";
export const END_WRITE_PAID = "Write what you paid; 0 for nothing.";
export const END_NAME = "What you call it (optional)";
export const END_TAKE_HOME = "Take it home";

/** "Offer €41 at most". */
export function offerTitle(most: number, currency: string): string {
  return roundMoney(most) > 0 ? `Offer ${money(most, currency)} at most` : "Not even for nothing";
}

/** "Stopped. A crack in the frame." */
export function stoppedTitle(appraisal: Appraisal): string {
  return `Stopped. ${capital(stopReason(appraisal))}.`;
}
