import type { StopLimit } from "../api/types.ts";
import { fineness, outOf } from "./chance.ts";
import { uncapital } from "./count.ts";
import { money, roundMoney } from "./money.ts";
import { minutes } from "./time.ts";

/** Whether a limit is worth a word: what comes free nearly always needs none. */
export function isWorthTelling({ releaseChance }: StopLimit): boolean {
  return releaseChance < 0.95;
}

/** "Stop trying to free a seized seatpost after 40 min: by then it has come in 7 of 10; after that the cheapest way on costs about €35, your time paid." */
export function stopWords(limit: StopLimit, currency: string): string {
  const { name, releaseChance, fallback } = limit;
  const come = `by then it has come ${outOf(releaseChance, fineness(releaseChance))}`;
  const cost = Math.abs(fallback);
  const rest =
    roundMoney(cost) < 1
      ? "without it you lose next to nothing"
      : `after that the cheapest way on costs about ${money(cost, currency)}, your time paid`;
  return `Stop trying to ${uncapital(name)} after ${minutes(limit.minutes)}: ${come}; ${rest}.`;
}
