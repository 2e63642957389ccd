import type { SellingPlan } from "../api/types.ts";
import type { OfferMade } from "../selling/body.ts";
import { money } from "./money.ts";
import { sentence } from "./plain.ts";
import { moneyRange } from "./range.ts";
import { askedMoney } from "./selling.ts";

/** What to do about an offer, and why. */
export interface OfferWords {
  /** "Take it.", "Ask €310 back.", "Wait." */
  readonly advice: string;
  /** The offer that this answers: "€280 in week 2". */
  readonly about: string;
  readonly reason: string;
  /** What it would fetch, as that offer tells. */
  readonly rate: string;
}

/** The answer to an offer in the words of the screen. */
export function offerWords(
  answered: NonNullable<SellingPlan["offer"]>,
  made: OfferMade,
  { currency, value }: Pick<SellingPlan, "currency" | "value">,
): OfferWords {
  const { answer, counter, reason, goingRate } = answered;
  const after = money(goingRate.p50, currency);
  const before = money(value.p50, currency);
  const moved = after === before ? `still about ${after}` : `about ${after} in place of ${before}`;
  return {
    advice:
      answer === "accept"
        ? "Take it."
        : answer === "counter" && counter !== null
          ? `Ask ${askedMoney(counter, currency)} back.`
          : "Wait.",
    about: `${askedMoney(made.amount, currency)} in week ${made.week}`,
    reason: sentence(exactly(reason, currency)),
    rate: `After this offer it would fetch ${moved}, likely ${moneyRange(goingRate.p10, goingRate.p90, currency)}.`,
  };
}

/** The API's sentence with its amounts as they stand, "282 EUR" as "€282": rounded further, more would read as the same. */
function exactly(reason: string, currency: string): string {
  return reason.replace(new RegExp(`(\\d+(?:\\.\\d+)?) ${currency}\\b`, "g"), (_, amount: string) =>
    askedMoney(Number(amount), currency),
  );
}

/** Texts of the panel that answers an offer. */
export const OFFER_TITLE = "Has somebody made an offer?";
export const OFFER_CAME_IN = "came in";

/** "week 3". */
export function weekWord(week: number): string {
  return `week ${week}`;
}
