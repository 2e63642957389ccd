import type { CourseOutcome } from "../api/types.ts";
import { capital } from "./count.ts";
import { money, priceWords } from "./money.ts";
import { days, hours } from "./time.ts";

/** What to pay for a find and what it takes. The price stands after the first. */
export const PAY_AT_MOST = "Pay at most";
export const AT_ANY_PRICE = "At any price";

/** "They ask €70. " before what holds at most; empty where nothing is asked. */
export function theyAsk(price: number | undefined, currency: string): string {
  return price === undefined ? "" : `They ask ${priceWords(price, currency)}. `;
}

/** "Breaks even at €95". */
export function breaksEvenAt(price: number, currency: string): string {
  return `Breaks even at ${money(price, currency)}`;
}

/** "6 h of your time". */
export function ofYourTime(of: number): string {
  return `${hours(of)} of your time`;
}

/** "€60 to lay out, about 21 days until it is sold." */
export function tiedUp({ cashNeeded, elapsedDays }: CourseOutcome, currency: string): string {
  const parts = [
    cashNeeded === null ? "" : `${money(cashNeeded, currency)} to lay out`,
    elapsedDays === null ? "" : `about ${days(elapsedDays)} until it is sold`,
  ].filter((part) => part !== "");
  return `${capital(parts.join(", "))}.`;
}
