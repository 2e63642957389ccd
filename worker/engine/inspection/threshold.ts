import { DomainError } from "../domainError.ts";
import type { LevelId, Threshold } from "./check.ts";

/** Room for rounding in a difference of decimals: 1.55 - 1.5 is a little more than 0.05. */
const ROUNDING = 16 * Number.EPSILON;

/**
 * The level whose from <= value < below.
 * @throws DomainError `inconsistent-table` where no threshold holds the value
 */
export function levelAt(thresholds: readonly Threshold[], value: number): LevelId {
  for (const { level, from, below } of thresholds) {
    if ((from === null || from <= value) && (below === null || value < below)) return level;
  }
  throw new DomainError("inconsistent-table", "thresholds", value, "a level for every value");
}

/**
 * The two levels in question where the value lies within one reading error of the limit between them, else null.
 * Of two limits the nearer one counts, of equally near ones the one that leads to the worse level.
 * @param thresholds in ascending order, without gaps
 * @param readingError in the unit of the value; 0 where the reading is exact, and then nothing is in question
 * @param rankOf place of a level from best (0) to worst
 * @returns the milder level first
 */
export function borderline(
  thresholds: readonly Threshold[],
  value: number,
  readingError: number,
  rankOf: (level: LevelId) => number,
): readonly [LevelId, LevelId] | null {
  if (readingError === 0) return null;
  const room = ROUNDING * Math.max(1, Math.abs(value));
  let found: readonly [LevelId, LevelId] | null = null;
  let nearest = 0;
  for (let i = 1; i < thresholds.length; i++) {
    const [lower, upper] = [thresholds[i - 1]!, thresholds[i]!];
    const distance = Math.abs(value - upper.from!);
    if (distance > readingError + room) continue;
    const pair = byRank(lower.level, upper.level, rankOf);
    const equallyNear = found !== null && Math.abs(distance - nearest) <= room;
    const better = equallyNear ? rankOf(pair[1]) > rankOf(found![1]) : found === null || distance < nearest;
    if (!better) continue;
    found = pair;
    nearest = distance;
  }
  return found;
}

function byRank(a: LevelId, b: LevelId, rankOf: (level: LevelId) => number): readonly [LevelId, LevelId] {
  return rankOf(a) <= rankOf(b) ? [a, b] : [b, a];
}
