import type { CourseId } from "../api/types.ts";
import { outOf } from "./chance.ts";
import { bestOther } from "./marginChart.ts";
import { goalMoney } from "./money.ts";
import { likelyRate } from "./range.ts";

interface Rate {
  readonly rate: number;
  readonly p10: number;
  readonly p90: number;
}

/** "Leave; best other: restore". */
export function leaveTold(shown: CourseId): string {
  return `Leave; ${bestOther(shown)}`;
}

/** "misses €15 in 3 of 10". */
export function missesGoal(misses: number, goal: number, currency: string): string {
  return `misses ${goalMoney(goal, currency)} ${outOf(misses, 10)}`;
}

/** The ends of a chart of finds: "Best: Plum hybrid, €16 an hour, likely between €5 and €28." */
export function bestTold(name: string, rate: Rate, currency: string): string {
  return `Best: ${name}, ${likelyRate(rate, currency)}.`;
}

/** "Worst: Hill bike, €2 an hour, likely between −€9 and €12." */
export function worstTold(name: string, rate: Rate, currency: string): string {
  return `Worst: ${name}, ${likelyRate(rate, currency)}.`;
}

/** "3 of 8 ranges cross the goal of €15." */
export function crossingTold(crossing: number, of: number, goal: number, currency: string): string {
  return `${crossing} of ${of} ranges cross the goal of ${goalMoney(goal, currency)}.`;
}
