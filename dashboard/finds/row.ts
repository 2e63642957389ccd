import type { Appraisal, CourseId, CourseOutcome } from "../api/types.ts";
import { hardlyLooked, standing } from "../courses/standing.ts";
import { addedHours } from "../words/addedHours.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { likelyRate } from "../words/range.ts";
import { bestTold, crossingTold, leaveTold, missesGoal, worstTold } from "../words/rowTexts.ts";
import { hours } from "../words/time.ts";
import type { Find } from "./find.ts";

/** A find that has figures, as a row of the chart. */
export interface FindRow {
  readonly find: Find;
  readonly appraisal: Appraisal;
  readonly verdict: CourseId;
  /** The course whose figures are shown: the verdict or, where that is to leave, the best other. */
  readonly shown: CourseOutcome;
  readonly rate: number;
  readonly p10: number;
  readonly p90: number;
  /** Worth doing, at more than the goal for an hour. */
  readonly beats: boolean;
  /** Chance of missing the goal. */
  readonly misses: number;
  readonly hardlyLooked: boolean;
  /** What the added hours earn, in words. */
  readonly added: string | null;
}

/** Null where the find is stopped, or no course but leaving is open. */
export function rowOf(find: Find, appraisal: Appraisal, goal: number): FindRow | null {
  const stand = standing(appraisal);
  const shown = stand?.shown ?? null;
  if (stand === null || shown === null || shown.marginPerHour === null) return null;
  const { rate, p10, p90 } = shown.marginPerHour;
  const verdict = stand.verdict.course;
  return {
    find,
    appraisal,
    verdict,
    shown,
    rate,
    p10,
    p90,
    beats: verdict !== "leave" && rate > goal,
    misses: shown.belowGoalProbability ?? 0,
    hardlyLooked: hardlyLooked(appraisal),
    added: addedHours(shown, appraisal.courses, goal, appraisal.currency),
  };
}

/** Best earner first. */
export function byRate(a: FindRow, b: FindRow): number {
  return b.rate - a.rate;
}

/** What the chart tells about a row, line by line. */
export function rowLines(row: FindRow, goal: number): readonly string[] {
  const { currency } = row.appraisal;
  const course = COURSE_WORDS[row.shown.course].name;
  return [
    row.verdict === "leave" ? leaveTold(row.shown.course) : course,
    likelyRate(row, currency),
    hours(row.shown.hours?.mean ?? 0),
    missesGoal(row.misses, goal, currency),
  ];
}

/** The chart in a sentence for whoever does not see it: best, worst, and what crosses the goal. */
export function chartSentence(rows: readonly FindRow[], title: string, goal: number): string {
  const ordered = [...rows].sort(byRate);
  const [best] = ordered;
  const worst = ordered.at(-1);
  if (best === undefined || worst === undefined) return title;
  const { currency } = best.appraisal;
  const crossing = rows.filter(({ p10, p90 }) => p10 < goal && p90 > goal).length;
  return [
    title,
    bestTold(best.find.name, best, currency),
    worstTold(worst.find.name, worst, currency),
    crossingTold(crossing, rows.length, goal, currency),
  ].join(" ");
}
