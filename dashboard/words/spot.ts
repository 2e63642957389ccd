import type { Check } from "../api/types.ts";
import type { LookWorth } from "../spot/advice.ts";
import type { LookStep } from "../spot/trail.ts";
import { capital, count, uncapital } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { money, priceWords, roundMoney } from "./money.ts";
import { levelWords } from "./plain.ts";
import { partWords } from "./spotLooks.ts";
import { minutes } from "./time.ts";

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

function worthWords(worth: LookWorth, currency: string): string {
  const { couldBecome, owed } = worth;
  const swing = swingWords(worth, currency);
  if (swing !== "") return swing;
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

/** Over the looks that can still be made here, the card in sight apart. */
export function stillOpenTitle(worth: number): string {
  return worth === 0 ? "Still open" : "Still open, and worth a minute";
}

/** "Could move your offer by €20."; empty where it hardly moves it. */
export function swingWords(worth: LookWorth | null, currency: string): string {
  if (worth === null || worth.offerSwing === null || roundMoney(worth.offerSwing) < 1) return "";
  return `Could move your offer by ${money(worth.offerSwing, currency)}.`;
}

/** Around a measurement that can be taken in place of a level. */
export const MEASURE_WORDS = {
  open: "Measure it instead",
  take: "Take this reading",
  missing: "Fill in every figure first.",
} as const;

/** Where a tyre names its bead seat. */
export const SEAT_HINT = "The second number on the sidewall: 622 of 28-622.";
