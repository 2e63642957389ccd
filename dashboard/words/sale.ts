import type { SaleState } from "../listing/saleStates.ts";
import type { Value } from "../sale/states.ts";
import { money, roundMoney } from "./money.ts";
import { fraction } from "./ownShare.ts";
import { moneyRange } from "./range.ts";
import { STATE_NAMES } from "./states.ts";

/** "Made safe it sells for about €205, likely between €170 and €250." The range is 8 in 10. */
export function saleTitle(value: Value, state: SaleState, currency: string): string {
  const band = value[state];
  if (band === null) return "";
  const low = money(band.p10, currency);
  const high = money(band.p90, currency);
  const range = low === high ? "hardly more or less" : `likely between ${low} and ${high}`;
  const odd = value.extrapolates ? " Unlike anything in the data, so the range is wide." : "";
  return `${STATE_NAMES[state]} it sells for about ${money(band.p50, currency)}, ${range}.${odd}`;
}

const ORDER: readonly SaleState[] = ["restored", "madeSafe", "asFound", "parts"];

/**
 * What the other states would fetch: "Restored it fetches about €20 more, as found €280 less". The differences are those of
 * the figures shown.
 */
export function otherStatesTitle(value: Value, state: SaleState, currency: string): string {
  const here = roundMoney(value[state]?.p50 ?? 0);
  const [first, second] = ORDER.flatMap((other) => {
    const band = value[other];
    if (other === state || band === null) return [];
    const more = roundMoney(band.p50) - here;
    const told = `${money(Math.abs(more), currency)} ${more < 0 ? "less" : "more"}`;
    return [{ name: STATE_NAMES[other], told: more === 0 ? "the same" : told }];
  });
  if (first === undefined) return "It can be sold in this state alone";
  const rest = second === undefined ? "" : `, ${second.name.toLowerCase()} ${second.told}`;
  return `${first.name} it fetches about ${first.told}${rest}`;
}

/** "+€34", "−€12": a step of a price, rounded as prices are. */
export function stepMoney(change: number, currency: string): string {
  const said = money(Math.abs(change), currency);
  if (roundMoney(change) === 0) return said;
  return change < 0 ? `\u2212${said}` : `+${said}`;
}

/** The middle of a range without and with a price: "€380 to €420", "hardly: €420". */
export function movedWords(before: number, after: number, currency: string): string {
  const from = money(before, currency);
  const to = money(after, currency);
  return from === to ? `hardly: ${to}` : `${from} to ${to}`;
}

/** Both ends of a range, its width in money and as a share of its middle. */
export function widthWords({ p10, p90 }: { p10: number; p90: number }, currency: string): string {
  // The middle of a range whose logarithm is symmetric.
  const middle = Math.sqrt(p10 * p90);
  const share = middle > 0 ? `, ${Math.round(((p90 - p10) / middle) * 100)} % of its middle` : "";
  return `${moneyRange(p10, p90, currency)}: ${money(p90 - p10, currency)} wide${share}`;
}

/** "Three more sales like it would narrow the range by a quarter". */
export function threeMoreTitle({ now, after }: Value["threeMore"]): string {
  const width = now.p90 - now.p10;
  const narrower = width > 0 ? 1 - (after.p90 - after.p10) / width : 0;
  if (narrower < 0.04) return "Three more sales like it would hardly narrow the range";
  return `Three more sales like it would narrow the range by ${fraction(narrower)}`;
}

/**
 * What adverts ask, in a sentence.
 * @param factor asking prices over going rates
 * @param adverts how many asking prices of the user's own it was learned from
 */
export function askedSentence(factor: number, adverts: number): string {
  const percent = Math.round(Math.abs(factor - 1) * 100);
  const how =
    percent === 0
      ? "An asking price is taken as it stands: adverts ask what bicycles go for"
      : `An asking price is brought down first: adverts ask about ${percent} % ${factor > 1 ? "more" : "less"} than bicycles go for`;
  const source =
    adverts === 0
      ? "an invented figure, until you add asking prices of your own"
      : `learned in part from your ${adverts === 1 ? "one asking price" : `${adverts} asking prices`}`;
  return `${how} (${source}).`;
}

/** The plain bike that every price starts from, as the price model sets it. */
export const PLAIN_BIKE =
  "a hybrid of the 2010s with parts of the mid tier, ready to ride, sold in a town in July";

interface StepWords {
  readonly name: string;
  readonly why: string;
}

const STEPS: Readonly<Record<string, StepWords>> = {
  kind: { name: "Kind and tier", why: "what kind it is, and how good its parts were when new" },
  era: { name: "Age", why: "bicycles of its decade fetch more or less than those of the 2010s" },
  material: { name: "Frame material", why: "what the frame is made of" },
  size: { name: "Size", why: "middle sizes find more buyers" },
  fashion: { name: "Fashion", why: "what is in demand just now" },
  originality: { name: "Originality", why: "how much of it is as it left the shop" },
  desirability: { name: "Sought after", why: "fine detail that some buyers pay for" },
  condition: { name: "Restored", why: "fully restored rather than just ready to ride" },
  presentation: { name: "Presentation", why: "washed, polished and well photographed" },
  papers: { name: "Papers", why: "what you can show: receipt, bill of sale" },
  season: { name: "Month", why: "the month it is sold in, or the whole year where none is set" },
  place: { name: "Place", why: "where it is sold" },
  market: { name: "Prices where you sell", why: "your own sales beside the invented ones" },
  "same-model": { name: "This very model", why: "your own sales of the same model" },
  limit: { name: "Limit", why: "presentation, papers, month and place together move a price only so far" },
  rest: { name: "All else", why: "steps too small to show" },
};

/** What the last step to each state is. */
const LAST: Readonly<Record<SaleState, StepWords>> = {
  asFound: { name: "Sold as found", why: "no work done, and faults told to the buyer" },
  madeSafe: { name: "Made safe alone", why: "what stops riding is cured; what only looks worn stays" },
  restored: { name: "What the plan leaves", why: "wear and marks that the planned work does not take away" },
  parts: { name: "Sold as parts", why: "piece by piece, and some pieces never sell" },
};

/** A step of a price in plain words. */
export function stepWords(term: string, state: SaleState): StepWords {
  return (term === "state" ? LAST[state] : STEPS[term]) ?? { name: term, why: "" };
}

/** Whether a step is known from the user's own sales alone. */
export function isOwnStep(term: string): boolean {
  return term === "market" || term === "same-model";
}

/** "A plain bicycle fetches €220; this one, made safe, €205". */
export function waterfallTitle(value: Value, state: SaleState, currency: string): string {
  const end = money(value[state]?.p50 ?? 0, currency);
  return `A plain bicycle fetches ${money(value.referencePrice, currency)}; this one, ${STATE_NAMES[state].toLowerCase()}, ${end}`;
}
