import type { ComparisonAnswer, Objective } from "../api/types.ts";
import { capital, count, listed } from "./count.ts";
import { billed, goalMoney, money } from "./money.ts";
import { hours } from "./time.ts";

type Selection = Pick<ComparisonAnswer, "budgets" | "shadowPrices" | "proven" | "gap" | "overruns">;
type Needs = NonNullable<ComparisonAnswer["nextIn"]>["needs"];

/** What the heading needs of an answer. */
export interface SetTold extends Selection {
  readonly objective: Objective;
  /** The chosen finds as inside a sentence: "the plum hybrid". */
  readonly chosen: readonly string[];
  /** Finds that have figures and may be chosen, each as inside a sentence. */
  readonly candidates: readonly string[];
  /** The find that would come next; null where none would pay. */
  readonly nextIn: { readonly called: string; readonly needs: Needs } | null;
}

/** The heading: "Two fit. One more hour is worth nothing yet; 7 h, €245 and one place more would bring in the copper track bike." */
export function setHeadline(told: SetTold, goal: number, currency: string): string {
  if (told.candidates.length === 0) return "None of these finds has figures to choose by.";
  if (told.overruns.length > 0) return overrunHeadline(told, currency);
  const sentences = [fitSentence(told, goal, currency), ...outlook(told, currency)];
  if (!told.proven)
    sentences.push(`The best found; another set could be worth at most ${least(told.gap, currency)} more.`);
  return sentences.join(" ");
}

function overrunHeadline({ overruns, candidates }: SetTold, currency: string): string {
  const short = overruns.map(({ budget, short }) => amount(budget, short, currency));
  const what =
    candidates.length === 1 ? "What you hold it to does not fit" : "What you hold to does not fit together";
  return `${what}: ${listed(short)} too little.`;
}

function fitSentence({ chosen, candidates, nextIn, objective }: SetTold, goal: number, currency: string) {
  const [only = ""] = candidates;
  if (candidates.length === 1) {
    if (chosen.length === 1) return `${capital(only)} fits.`;
    return nextIn === null ? `${capital(only)} does not pay: leave it.` : `${capital(only)} does not fit.`;
  }
  if (chosen.length === 0) {
    if (nextIn !== null) return "Nothing fits.";
    const all = `None of ${count(candidates.length)}`;
    return objective === "margin"
      ? `${all} leaves money.`
      : `${all} pays your ${goalMoney(goal, currency)} an hour.`;
  }
  if (chosen.length === candidates.length) return `${capital(allOf(chosen.length))} fit.`;
  const fit = chosen.length === 1 ? `One fits: ${chosen[0]}` : `${capital(count(chosen.length))} fit`;
  return nextIn === null ? `${fit}; nothing else would pay.` : `${fit}.`;
}

/** "both", "all three". */
export function allOf(n: number): string {
  return n === 2 ? "both" : `all ${count(n)}`;
}

/** What more would bring. */
function outlook(told: SetTold, currency: string): string[] {
  const worth = worthOfMore(told, currency);
  const { nextIn, chosen } = told;
  // One place is one place: what it is worth and whom it brings in is one matter.
  if (worth?.budget === "slots" && worth.positive && nextIn !== null && needsOnlyAPlace(nextIn.needs))
    return [`${capital(worth.text)}: room for ${nextIn.called}.`];
  const bring = nextIn === null ? null : bringIn(nextIn, told.candidates.length === 1, currency);
  // With nothing in the set, and with nothing else to come, that more is worth nothing goes without saying.
  const said =
    worth !== null && (worth.positive || (bring !== null && chosen.length > 0)) ? worth.text : null;
  const parts = [said, bring].filter((part) => part !== null);
  return parts.length === 0 ? [] : [`${capital(parts.join("; "))}.`];
}

function needsOnlyAPlace({ hours: more, cash, slots }: Needs): boolean {
  return slots === 1 && more <= NOTHING && cash <= NOTHING;
}

/** Below this an amount is the rounding of a sum. */
const NOTHING = 1e-9;

/** The worth of the first budget that has one, else of the first that has a limit. */
function worthOfMore({ budgets, shadowPrices }: Selection, currency: string) {
  if (shadowPrices === null) return null;
  const all = [
    { budget: "hours", given: budgets.hours, worth: shadowPrices.hour, one: "one more hour" },
    { budget: "slots", given: budgets.slots, worth: shadowPrices.slot, one: "one more place" },
    { budget: "cash", given: budgets.cash, worth: shadowPrices.cash, one: `${money(1, currency)} more` },
  ].filter(({ given }) => given !== null);
  const told = all.find(({ worth }) => worthwhile(worth)) ?? all[0];
  if (told === undefined) return null;
  return {
    budget: told.budget,
    positive: worthwhile(told.worth),
    text: `${told.one} ${isWorth(told.worth, currency)}`,
  };
}

/** "would be worth €5", "is worth nothing yet". */
export function isWorth(worth: number, currency: string): string {
  return worthwhile(worth) ? `would be worth ${least(worth, currency)}` : "is worth nothing yet";
}

/** Below half a cent it is the rounding of the choice. */
function worthwhile(worth: number): boolean {
  return worth >= 0.005;
}

/** An amount that may be less than one unit: then to the cent. */
function least(value: number, currency: string): string {
  return value < 1 ? billed(value, currency) : money(value, currency);
}

function bringIn(
  { called, needs }: NonNullable<SetTold["nextIn"]>,
  alone: boolean,
  currency: string,
): string {
  const lacking = needsWords(needs, currency);
  if (lacking === null) return `${called} would fit as well`;
  return `${lacking} more would bring ${alone ? "it in" : `in ${called}`}`;
}

/** What a find needs beyond what there is: "7 h, €245 and one place"; null where nothing is lacking. */
export function needsWords(needs: Needs, currency: string): string | null {
  const parts = (["hours", "cash", "slots"] as const).flatMap((budget) =>
    needs[budget] > NOTHING ? [amount(budget, needs[budget], currency)] : [],
  );
  return parts.length === 0 ? null : listed(parts);
}

/** An amount of a budget that is enough: rounded up, never to the nearest. */
export function amount(budget: keyof Needs, value: number, currency: string): string {
  if (budget === "hours") return hours(up(value, 0.1));
  if (budget === "slots") return value === 1 ? "one place" : `${count(value)} places`;
  return money(up(value, value > 99 ? 5 : 1), currency);
}

function up(value: number, step: number): number {
  return Math.ceil(value / step - 1e-6) * step;
}
