import type { Appraisal, CourseId, Sensitivity } from "../api/types.ts";
import type { Bar } from "../charts/bars.ts";
import { type Scale, scaleOver } from "../charts/scale.ts";
import { standing } from "../courses/standing.ts";
import { COURSE_TOKEN } from "../signs/shapes.ts";
import { endsOf, swing } from "../words/moves.ts";

/** What moves a course, with today's rate in the middle. */
export interface Moves {
  readonly course: CourseId;
  /** Money an hour as things stand. */
  readonly rate: number;
  /** Largest swing first, as the answer has them. */
  readonly moving: readonly Sensitivity[];
  /** Those whose ends read the same, or nearly. */
  readonly still: readonly Sensitivity[];
}

/** What swings less than this, of the widest swing, and explains a smaller share than this, is no bar. */
const STILL_SWING = 0.1;
const STILL_SHARE = 0.01;

/** Null where the answer says nothing of it, or no course has a rate. */
export function movesOf(appraisal: Pick<Appraisal, "courses" | "decision" | "sensitivity">): Moves | null {
  const shown = standing(appraisal)?.shown;
  if (!shown?.marginPerHour || appraisal.sensitivity.length === 0) return null;
  const widest = Math.max(...appraisal.sensitivity.map(swing));
  const isStill = (one: Sensitivity) => swing(one) <= STILL_SWING * widest && one.share < STILL_SHARE;
  return {
    course: shown.course,
    rate: shown.marginPerHour.rate,
    moving: appraisal.sensitivity.filter((one) => !isStill(one)),
    still: appraisal.sensitivity.filter(isStill),
  };
}

/** One bar a group, from the end that earns less to the one that earns more, with a tick at today's rate. */
export function moveBars({ course, rate, moving }: Moves): readonly Bar[] {
  return moving.map((one) => {
    const [worse, better] = endsOf(one);
    return {
      low: worse.rate,
      high: better.rate,
      at: rate,
      sign: null,
      token: COURSE_TOKEN[course],
      open: false,
    };
  });
}

/** One axis for all of them, with nought, the goal and every end on it: the widest bar is what the chart is about. */
export function movesScale({ rate, moving }: Moves, goal: number, most: number): Scale {
  const ends = moving.flatMap(({ low, high }) => [low.rate, high.rate]);
  return scaleOver(Math.min(0, rate, ...ends), Math.max(goal, rate, ...ends), most);
}
