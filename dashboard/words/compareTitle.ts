import { chance, outOf } from "./chance.ts";
import { capital, count, listed } from "./count.ts";
import { goalMoney, roundTo } from "./money.ts";

/** What the heading of the page needs of a find that has figures. */
export interface SideBySide {
  /** Inside a sentence: "the plum hybrid". */
  readonly called: string;
  /** Decided to be left. */
  readonly leave: boolean;
  /** Chance of missing the goal. */
  readonly misses: number;
  /** Margin per hour that 1 outcome in 10 falls below, and that 1 in 10 exceeds. */
  readonly p10: number;
  readonly p90: number;
  /** One test is worth more than deciding now. */
  readonly lookFirst: boolean;
  readonly hardlyLooked: boolean;
}

/**
 * The page's answer: "The plum hybrid is the surest. The orange racer could earn most or lose most, and one look would tell."
 * @param finds those with figures
 * @param stopped names of those that a hard caution stops, inside a sentence
 * @param goal what one more hour must earn
 */
export function compareTitle(
  finds: readonly SideBySide[],
  stopped: readonly string[],
  goal: number,
  currency: string,
): string {
  const taken = finds.filter(({ leave }) => !leave);
  const [only] = taken;
  const first = stoppedWords(stopped, finds.length);
  if (finds.length === 0) return first;
  if (only === undefined) return joined(first, leaveWords(finds, goal, currency));
  if (taken.length > 1) return joined(first, apartWords(taken));
  return joined(first, onlyWords(only, finds.length, goal, currency));
}

function stoppedWords(stopped: readonly string[], others: number): string {
  if (stopped.length === 0) return "";
  if (others === 0 && stopped.length > 1)
    return `${stopped.length === 2 ? "Both" : `All ${count(stopped.length)}`} are stopped.`;
  return `${capital(listed(stopped))} ${stopped.length === 1 ? "is" : "are"} stopped.`;
}

function leaveWords(finds: readonly SideBySide[], goal: number, currency: string): string {
  const wish = `your ${goalMoney(goal, currency)} an hour`;
  if (finds.length === 1) return `Leave ${finds[0]?.called}: it does not earn ${wish}.`;
  return finds.length === 2
    ? `Leave both: neither earns ${wish}.`
    : `Leave all ${count(finds.length)}: none earns ${wish}.`;
}

function onlyWords(find: SideBySide, of: number, goal: number, currency: string): string {
  const { called, misses } = find;
  const missing = `misses your ${goalMoney(goal, currency)} an hour ${outOf(misses, 10)}${wouldTell(find)}`;
  if (of === 1) return `${capital(called)} ${missing}.`;
  const others = of === 2 ? "the other" : `the other ${count(of - 1)}`;
  return `Leave ${others}. ${capital(called)} ${missing}.`;
}

/** Told apart only as far as the page shows it: in tenths. */
function surest(finds: readonly SideBySide[]): readonly SideBySide[] {
  const least = finds.reduce((best, one) => (one.misses < best.misses ? one : best));
  return finds.filter(({ misses }) => chance(misses, 10) === chance(least.misses, 10));
}

/** The find whose figure is the highest; null where another's rounds to the same. */
function highest(finds: readonly SideBySide[], figure: (find: SideBySide) => number): SideBySide | null {
  const [first, second] = [...finds].sort((a, b) => figure(b) - figure(a));
  if (first === undefined) return null;
  if (second !== undefined && roundTo(figure(first), 1) === roundTo(figure(second), 1)) return null;
  return first;
}

/** Which is the surest, which could earn most and which lose most, by the ends of their ranges. */
function apartWords(finds: readonly SideBySide[]): string {
  const sure = surest(finds);
  const most = highest(finds, ({ p90 }) => p90);
  const lowest = highest(finds, ({ p10 }) => -p10);
  const worst = lowest !== null && lowest.p10 < 0 ? lowest : null;
  if (sure.length > 1 || most === null || most !== sure[0])
    return joined(surestWords(finds, sure), outerWords(most, worst));
  const told = `${capital(most.called)} is the surest and could earn most`;
  return worst === most ? `${told} or lose most.` : joined(`${told}.`, outerWords(null, worst));
}

function surestWords(finds: readonly SideBySide[], sure: readonly SideBySide[]): string {
  const together = sure.length === finds.length;
  if (together && finds.length > 2) return `All ${count(finds.length)} are equally sure.`;
  if (together) return `${capital(names(finds))} are equally sure.`;
  if (sure.length > 2) return `${capital(count(sure.length))} of ${count(finds.length)} are equally sure.`;
  return `${capital(names(sure))} ${sure.length === 1 ? "is" : "are"} the surest.`;
}

function outerWords(most: SideBySide | null, worst: SideBySide | null): string {
  if (most === null && worst === null) return "";
  if (worst === null) return `${capital(most?.called ?? "")} could earn most${wouldTell(most)}.`;
  if (most === null) return `${capital(worst.called)} could lose most${wouldTell(worst)}.`;
  if (most === worst) return `${capital(most.called)} could earn most or lose most${wouldTell(most)}.`;
  return `${capital(most.called)} could earn most, ${worst.called} lose most.`;
}

/** What would narrow a find's range: one look, or looking at all. */
function wouldTell(find: SideBySide | null): string {
  if (find?.lookFirst === true) return ", and one look would tell";
  return find?.hardlyLooked === true ? ": it is hardly looked at yet" : "";
}

const names = (finds: readonly SideBySide[]) => listed(finds.map(({ called }) => called));
const joined = (...parts: readonly string[]) => parts.filter((part) => part !== "").join(" ");
