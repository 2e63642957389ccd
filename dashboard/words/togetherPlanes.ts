import type { CourseId, ValueBand } from "../api/types.ts";
import { EIGHT_IN_TEN } from "./common.ts";
import { COURSE_WORDS } from "./course.ts";
import { money, rate } from "./money.ts";
import { between, moneyRange } from "./range.ts";
import { hours } from "./time.ts";
import { leftAfter } from "./togetherTerms.ts";

/** Texts that the charts of a set share. */
export const PLANE_SAVE = "Save as a picture";
export const PLANE_NO_PICTURE = "No picture came of it. Try again; the table below holds the same figures.";
/** After a name in the key. */
export const PLANE_CHOSEN = ", chosen";
export const MERIT_KEY =
  "As wide as its hours, as high as what each of them earns; what stands above your goal is left for you. Best rate first. Filled: chosen; outlined: left. The upright line is where your hours end if they are filled in this order; the set may pass one over that is too long or too dear. Strokes: 8 outcomes in 10. Dashed: hardly looked at yet. Hatched: loses money.";
export const MERIT_ACROSS = "hours, one find after the other";
export const MERIT_UP = "money left for each hour";
export const MERIT_ONE_MORE = "One more hour";
export const HOURS_ACROSS = "hours";
export const HOURS_UP = "money left";
export const HOURS_HEAD = [
  "Find",
  "Course",
  "Chosen",
  "Money left",
  EIGHT_IN_TEN,
  "Hours",
  `${EIGHT_IN_TEN} (hours)`,
  "An hour",
] as const;
export const COST_KEY =
  "Likely price in the state its course sells it in, before haggling and fees. Above the line it sells for more than the cash in it; your hours are not in it. Filled: chosen. Strokes: 8 outcomes in 10.";
export const COST_ACROSS = "cash in it";
export const COST_UP = "likely price";
export const COST_HEAD = ["Find", "Course", "Chosen", "Cash in it", "Likely price", EIGHT_IN_TEN] as const;

/** Heads of the table of what each hour earns. */
export function meritHead(goal: number, currency: string): readonly string[] {
  return [
    "Find",
    "Course",
    "Chosen",
    "An hour",
    EIGHT_IN_TEN,
    "Hours",
    "Hours so far",
    "Cash",
    leftAfter(goal, currency),
  ];
}

/** In a column of a table, whether a find is chosen. */
export function yesOrNo(chosen: boolean): string {
  return chosen ? "yes" : "no";
}

/** "Restore, chosen", "Restore, left". */
export function courseChosen(course: CourseId, chosen: boolean): string {
  return `${COURSE_WORDS[course].name}, ${chosen ? "chosen" : "left"}`;
}

/** "Your 40 h reach beyond all of them, so their line is not drawn." */
export function noHoursLine(budget: number): string {
  return `Your ${hours(budget)} reach beyond all of them, so their line is not drawn.`;
}

/** "6 h, €60 cash": what a find takes up. */
export function takesUp(mean: number, cash: number, currency: string): string {
  return `${hours(mean)}, ${money(cash, currency)} cash`;
}

/** What the chart of money against hours shows. */
export function hoursKey(others: boolean): string {
  return `All along a slanting line an hour earns the same. Filled: chosen. Strokes: 8 outcomes in 10.${others ? " Small and pale: its other courses." : ""} Grey ground: loses money.`;
}

/** Two charts in a sentence, after their titles. */
export const hoursSentence = (title: string): string => `${title}. Money left against hours.`;
export const costSentence = (title: string): string => `${title}. Likely price against the cash in it.`;

/** A find's figures, as the chart of money against hours tells them. */
interface HoursTold {
  readonly margin: Range;
  readonly hours: Range;
  readonly marginPerHour: { readonly rate: number };
}

type Range = { readonly mean: number; readonly p10: number; readonly p90: number };

/** "€120 left, 8 in 10: €40 to €190", "6 h, 8 in 10: 4 h to 9 h", "€20 an hour". */
export function hoursLines(
  { margin, hours: taken, marginPerHour }: HoursTold,
  currency: string,
): readonly string[] {
  return [
    `${money(margin.mean, currency)} left, 8 in 10: ${moneyRange(margin.p10, margin.p90, currency)}`,
    `${hours(taken.mean)}, 8 in 10: ${between(hours(taken.p10), hours(taken.p90))}`,
    `${rate(marginPerHour.rate, currency)} an hour`,
  ];
}

/** "likely price €205, 8 in 10: €150 to €260", "€60 cash in it". */
export function costLines(
  { p10, p50, p90 }: Pick<ValueBand, "p10" | "p50" | "p90">,
  cash: number,
  currency: string,
): readonly string[] {
  return [
    `likely price ${money(p50, currency)}, 8 in 10: ${moneyRange(p10, p90, currency)}`,
    `${money(cash, currency)} cash in it`,
  ];
}

/** What stands on a picture of a chart: that its figures are invented. */
export function pictureNote(inventedFinds: boolean): string {
  const whose = inventedFinds ? "Invented finds; prices" : "Prices";
  return `Spokeworth. ${whose} from invented demo data: no price here is a market price.`;
}

/** On the line where the price is the cash, in full and in short. */
export const COST_LINE = ["sells for the cash in it", "price = cash"] as const;

/** "your 40 h", on the line where they end. */
export function yourHours(budget: number): string {
  return `your ${hours(budget)}`;
}
