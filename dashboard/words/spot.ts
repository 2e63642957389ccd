import type { Appraisal, Check, CourseId, CourseOutcome } from "../api/types.ts";
import { standing } from "../courses/standing.ts";
import type { LookWorth } from "../spot/advice.ts";
import type { LookStep } from "../spot/trail.ts";
import { capital, count, uncapital } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { anHour, goalMoney, money, priceWords, rate, roundMoney, roundTo } from "./money.ts";
import { levelWords } from "./plain.ts";
import { likelyRate } from "./range.ts";
import { partWords } from "./spotLooks.ts";
import { minutes } from "./time.ts";
import { advice, stopReason } from "./verdict.ts";

/** What the bar at the foot says. */
export interface BarWords {
  readonly title: string;
  /** Whose sign stands before the title; null where none is decided on. */
  readonly course: CourseId | null;
  /** What stands under it; empty where nothing does. */
  readonly line: string;
}

/** What the bar needs beside the answer. */
export interface BarTerms {
  /** Asked or paid; undefined where it is not known. */
  readonly price: number | undefined;
  readonly paid: boolean;
  /** No look on the spot is worth its minute any more, or the user has looked enough. */
  readonly decided: boolean;
}

/** Verdict and rate in the words of someone who has not paid yet. */
export function barWords(appraisal: Appraisal, { price, paid, decided }: BarTerms): BarWords {
  if (appraisal.decision.stop !== null) {
    const line = paid ? "No figure is worked out." : "Do not pay, do not bargain.";
    return { title: `Stopped: ${stopReason(appraisal)}`, course: null, line };
  }
  const { course } = appraisal.decision;
  return {
    title: decided ? decidedTitle(appraisal, price) : openTitle(course, paid),
    course: decided ? course : null,
    line: rateLine(appraisal, price, paid),
  };
}

function openTitle(course: CourseId, paid: boolean): string {
  if (course === "leave") return "Look on before you leave it";
  return paid ? "Look on before you start" : "Look on before you offer";
}

function decidedTitle(appraisal: Appraisal, price: number | undefined): string {
  const { course, walkAwayPrice } = appraisal.decision;
  const isTooDear =
    course === "leave" && price !== undefined && walkAwayPrice !== null && price > walkAwayPrice;
  if (isTooDear && walkAwayPrice > 0) return `Not for ${money(price, appraisal.currency)}`;
  return advice(appraisal, { called: "it" });
}

/** "At the €70 asked: €9 an hour, likely between −€9 and €27". */
function rateLine(appraisal: Appraisal, price: number | undefined, paid: boolean): string {
  const { currency } = appraisal;
  const shown = standing(appraisal)?.shown ?? null;
  if (shown === null || shown.marginPerHour === null) return "No other course is open.";
  const figures = likelyRate(shown.marginPerHour, currency);
  const which = appraisal.decision.course === "leave" ? `${uncapital(COURSE_WORDS[shown.course].name)} ` : "";
  if (paid) return capital(`${which}${figures}`);
  if (price === undefined) return `Price not known. For nothing: ${which}${figures}`;
  if (price === 0) return `For nothing: ${which}${figures}`;
  return `At the ${money(price, currency)} asked: ${which}${figures}`;
}

/** What the last look changed: "Offer up from €24 to €41."; null where that is not known. */
export function offerWords(
  { offerBefore: before, offerAfter: after }: Pick<LookStep, "offerBefore" | "offerAfter">,
  currency: string,
): string | null {
  if (after === undefined) return null;
  if (before === undefined) return `Offer now ${money(after, currency)}.`;
  const [from, to] = [money(before, currency), money(after, currency)];
  if (from === to) return `Offer stays ${to}.`;
  return `Offer ${after > before ? "up" : "down"} from ${from} to ${to}.`;
}

/** "€24 → €41", "stays €24"; empty where it is not known. */
export function moveWords(
  { offerBefore: before, offerAfter: after }: Pick<LookStep, "offerBefore" | "offerAfter">,
  currency: string,
): string {
  if (before === undefined || after === undefined) return "";
  const [from, to] = [money(before, currency), money(after, currency)];
  return from === to ? `stays ${to}` : `${from} \u2192 ${to}`;
}

/** "Four looks have raised your offer from €18 to €41"; without figures where the first or the last is not known. */
export function seenTitle(looks: readonly LookStep[], currency: string): string {
  const n = looks.length;
  const many = `${capital(count(n))} ${n === 1 ? "look" : "looks"}`;
  const from = looks.find(({ offerBefore }) => offerBefore !== undefined)?.offerBefore;
  const to = looks.findLast(({ offerAfter }) => offerAfter !== undefined)?.offerAfter;
  if (from === undefined || to === undefined) return `${many} so far`;
  const have = n === 1 ? "has" : "have";
  if (roundMoney(from) === roundMoney(to)) return `${many} ${have} left your offer at ${money(to, currency)}`;
  const moved = to > from ? "raised" : "lowered";
  return `${many} ${have} ${moved} your offer from ${money(from, currency)} to ${money(to, currency)}`;
}

/** What a look found: "Seatpost: free", "Tyre, rear: perished", "Headset: can't tell". */
export function foundWords(check: Check, { how, position }: LookStep, finding: string): string {
  const where = position === null ? "" : `, ${position}`;
  const said = how === "cannot-tell" ? "can\u2019t tell" : how === "later" ? "later" : uncapital(finding);
  return `${partWords(check)}${where}: ${said}`;
}

/** "On the line between ok and worn: measure again." */
export function onTheLine(check: Check, [better, worse]: readonly [string, string]): string {
  const between = `${uncapital(levelWords(check, better))} and ${uncapital(levelWords(check, worse))}`;
  return `On the line between ${between}: measure again.`;
}

/** Why a look is next: "Could move your offer by €20. 1 min, no tools." */
export function whyWords(check: Check, worth: LookWorth | null, currency: string): string {
  const tools =
    check.tools.length === 0 ? "no tools" : check.tools.map((tool) => tool.replaceAll("-", " ")).join(", ");
  const takes = `${capital(minutes(check.minutes))}, ${tools}.`;
  return worth === null ? takes : `${worthWords(worth, currency)} ${takes}`;
}

function worthWords({ offerSwing, couldBecome, owed }: LookWorth, currency: string): string {
  if (offerSwing !== null && roundMoney(offerSwing) >= 1)
    return `Could move your offer by ${money(offerSwing, currency)}.`;
  if (couldBecome !== null)
    return `Could change the advice to: ${uncapital(COURSE_WORDS[couldBecome].name)}.`;
  if (owed) return "Owed before riding or selling; hardly moves the money.";
  return "Hardly moves the money.";
}

/** "After this, two more looks are worth their minute." */
export function afterThis(more: number): string {
  if (more <= 0) return "After this, no other look is worth its minute.";
  if (more === 1) return "After this, one more look is worth its minute.";
  return `After this, ${count(more)} more looks are worth their minute.`;
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
  if (roundMoney(most) <= 0)
    return [asked, `Even for nothing, an hour earns less than your ${goalMoney(goal, currency)}.`];
  const told = [
    asked,
    `At ${money(most, currency)} you earn just your ${goalMoney(goal, currency)} an hour.`,
  ];
  const hours = earning(appraisal)?.hours?.mean ?? 0;
  // The price comes off the margin one for one, and hours do not depend on it.
  if (hours > 0 && roundTo(TEN / hours, 1) >= 1)
    told.push(`Every ${money(TEN, currency)} less adds about ${rate(TEN / hours, currency)} to each hour.`);
  return told;
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

/** The page's name in tab bar, masthead and title. */
export const SPOT_TITLE = "On the spot";

/** What helps to make a pick, under its question. */
export const PICK_HINTS: Readonly<Record<string, string>> = {
  category: "The nearest will do.",
  era: "The nearest guess will do.",
  frameMaterial: "A magnet sticks to steel alone.",
  componentTier: "Entry: the cheapest of its year. Top: the dearest.",
};

/** "Asks €70 · 4 looks, 3 min". */
export function factsWords(
  { price, paid, looks, spent }: { price: number | undefined; paid: boolean; looks: number; spent: number },
  currency: string,
): { readonly price: string; readonly looks: string } {
  const asked =
    price === undefined ? "Price not known" : `${paid ? "Paid" : "Asks"} ${priceWords(price, currency)}`;
  const made =
    looks === 0 ? "not looked at yet" : `${looks} ${looks === 1 ? "look" : "looks"}, ${minutes(spent)}`;
  return { price: asked, looks: made };
}

/** The end of looking: a heading and a line. */
export function endWords(
  worthLeft: number,
  openLeft: number,
): { readonly title: string; readonly line: string } {
  if (worthLeft > 0) {
    const left =
      worthLeft === 1
        ? "One look is still worth its minute"
        : `${capital(count(worthLeft))} looks are still worth their minute`;
    return { title: "Decide on what you saw", line: `${left}.` };
  }
  if (openLeft === 0) return { title: "All looked at", line: "Nothing is left to look at here." };
  return { title: "Enough looked at", line: "No other look is worth its minute." };
}
