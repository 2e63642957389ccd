import type { CourseId, Sensitivity } from "../api/types.ts";
import { listed } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { figure } from "./figure.ts";
import { anHour, goalMoney, money, rate, roundTo } from "./money.ts";
import { sentence } from "./plain.ts";
import { between, moneyRange, rateRange } from "./range.ts";

type Group = Sensitivity["group"];
export type End = Sensitivity["low"];

interface GroupWords {
  readonly name: string;
  /** As the subject of a sentence, and whether that is many. */
  readonly subject: string;
  readonly many: boolean;
}

const GROUPS: Readonly<Record<Group, GroupWords>> = {
  salePrice: { name: "Sale price", subject: "the sale price", many: false },
  hiddenFaults: { name: "Hidden faults", subject: "hidden faults", many: true },
  failingJobs: { name: "Jobs that may fail", subject: "jobs that may fail", many: true },
  pace: { name: "Your pace", subject: "your pace", many: false },
  partPrices: { name: "Part prices", subject: "part prices", many: true },
};

export const groupName = (group: Group): string => GROUPS[group].name;
const groupSubject = (group: Group): string => GROUPS[group].subject;

/** Share of the first one's swing from which a second thing is named beside it. */
const NEXT = 0.4;

/** "The sale price matters most, hidden faults next". */
export function movesTitle(moves: readonly Sensitivity[]): string {
  const [first, second] = moves;
  if (first === undefined) return "Nothing moves it much";
  const { subject, many } = GROUPS[first.group];
  const most = `${subject.charAt(0).toUpperCase()}${subject.slice(1)} ${many ? "matter" : "matters"} most`;
  const near = second !== undefined && swing(second) >= NEXT * swing(first);
  return near ? `${most}, ${GROUPS[second.group].subject} next` : most;
}

/** Money an hour between the two ends. */
export const swing = ({ low, high }: Pick<Sensitivity, "low" | "high">): number =>
  Math.abs(high.rate - low.rate);

/** The end that earns less, then the one that earns more. */
export function endsOf({ low, high }: Pick<Sensitivity, "low" | "high">): readonly [End, End] {
  return low.rate <= high.rate ? [low, high] : [high, low];
}

/** What the group lies between: "€150 to €260 received", haggling and fees off; empty where it is no figure. */
export function inputRange({ group, low, high }: Sensitivity, currency: string): string {
  const [least, most] = low.input <= high.input ? [low.input, high.input] : [high.input, low.input];
  if (group === "salePrice") return `${moneyRange(least, most, currency)} received`;
  if (group === "partPrices") return moneyRange(least, most, currency);
  if (group !== "pace") return "";
  const per = (factor: number) => figure(roundTo(factor * 100, 5));
  return `${between(per(least), per(most))} % of the usual time`;
}

/** What stands at one end: "€150 received", "going badly". */
function inputWords(group: Group, end: End, worse: boolean, currency: string): string {
  if (group === "salePrice") return `${money(end.input, currency)} received`;
  if (group === "partPrices") return money(end.input, currency);
  if (group === "pace") return `${roundTo(end.input * 100, 5)} % of the usual time`;
  return worse ? "going badly" : "going well";
}

/** "€150 received: €8 an hour". */
export function endWords(group: Group, end: End, worse: boolean, currency: string): string {
  return `${inputWords(group, end, worse, currency)}: ${anHour(end.rate, currency)}`;
}

const FRACTIONS: readonly (readonly [number, string])[] = [
  [1, "nearly all"],
  [3 / 4, "about three quarters"],
  [2 / 3, "about two thirds"],
  [1 / 2, "about half"],
  [1 / 3, "about a third"],
  [1 / 4, "about a quarter"],
  [1 / 5, "about a fifth"],
  [1 / 10, "about a tenth"],
];
/** How far a share may lie from a fraction that is named for it. */
const ABOUT = 0.025;

/** "about half of the uncertainty", "about 15 % of the uncertainty". */
export function shareWords(share: number): string {
  const near = FRACTIONS.find(([fraction]) => Math.abs(share - fraction) <= ABOUT);
  const part = near?.[1] ?? (share < 0.01 ? "next to nothing" : `about ${Math.round(share * 100)} %`);
  return `${part} of the uncertainty`;
}

/** Texts of the table of what moves the rate. */
export const WHAT_MOVES_IT = "What moves it";
export const MOVES_HEAD = ["What", "Goes badly", "Goes well", "Share"] as const;

/** What the bars show, for a course at a rate as things stand. */
export function movesKey(course: CourseId, standing: number, currency: string): string {
  return `What an hour earns, ${COURSE_WORDS[course].doing}, when one thing goes badly or well and the rest as expected. Upright line: ${rate(standing, currency)} as things stand. Dashed: your goal.`;
}

/** "Hardly anything hangs here on your pace and part prices." */
export function hardlyMoves(moves: readonly Sensitivity[]): string {
  return sentence(`hardly anything hangs here on ${listed(moves.map(({ group }) => groupSubject(group)))}`);
}

/** "€4 to €19 an hour", from the end that earns less to the other. */
export function endsRange(moves: Pick<Sensitivity, "low" | "high">, currency: string): string {
  const [worse, better] = endsOf(moves);
  return `${rateRange(worse.rate, better.rate, currency)} an hour`;
}

/** The chart in a sentence. */
export function movesSentence(
  title: string,
  terms: { readonly standing: number; readonly goal: number; readonly currency: string },
  moves: readonly Sensitivity[],
): string {
  const { standing, goal, currency } = terms;
  const spoken = moves.map((one) => `${groupName(one.group)}: ${endsRange(one, currency)}.`);
  return `${title}. ${anHour(standing, currency)} as things stand; your goal is ${goalMoney(goal, currency)}. ${spoken.join(" ")}`;
}
