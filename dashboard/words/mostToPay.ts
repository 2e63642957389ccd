import type { Appraisal } from "../api/types.ts";
import { goalMoney, money, roundMoney } from "./money.ts";

/** What leaving it leaves in hand: what the parts bought for it are worth unused, in the answer's currency; 0 where it reads as nothing. */
export function keptByLeaving({ courses }: Pick<Appraisal, "courses">): number {
  const kept = courses.find(({ course }) => course === "leave")?.margin?.mean ?? 0;
  return roundMoney(kept) > 0 ? kept : 0;
}

/**
 * What the most to pay means: "At €30 you earn just your €12 an hour."; where parts were bought for it, beside what leaving
 * it leaves in hand as well.
 * @param most the highest purchase price at which another course brings as much as leaving
 */
export function atMost(
  most: number,
  goal: number,
  { courses, currency }: Pick<Appraisal, "courses" | "currency">,
): string {
  const kept = keptByLeaving({ courses });
  const earned = `your ${goalMoney(goal, currency)} an hour`;
  if (kept === 0) return `At ${money(most, currency)} you earn just ${earned}.`;
  return `At ${money(most, currency)} you earn just ${earned} and the ${money(kept, currency)} that the parts you bought are worth unused.`;
}

/**
 * Why it pays at no price.
 * @param at how the prices are named: "At any price", "Even for nothing,"
 */
export function neverPays(
  at: string,
  goal: number,
  { courses, currency }: Pick<Appraisal, "courses" | "currency">,
): string {
  const kept = keptByLeaving({ courses });
  const aim = `your ${goalMoney(goal, currency)}`;
  if (kept === 0) return `${at} an hour earns less than ${aim}.`;
  return `${at} an hour earns less than ${aim} beyond the ${money(kept, currency)} that the parts you bought are worth unused.`;
}
