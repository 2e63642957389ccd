import { type RatedRow, rateScale, type Scale, scaleOver } from "../charts/scale.ts";
import type { Cell, MeasureRow } from "./measures.ts";

/** Room at the right end, so that outlines are not cut. */
const SLACK = 1.02;

/** One axis for the bars of a row: from nought or, where a range reaches into loss, with one that far outruns the others cut. */
export function cellScale({ cells }: MeasureRow): Scale {
  const drawn = cells.filter((cell): cell is Cell => cell !== null && cell.value !== null);
  if (drawn.some(({ low }) => low < 0)) {
    const rows = drawn.map(({ value, low, high }) => ({ rate: value ?? 0, p10: low, p90: high }));
    return rateScale(rows, 0, 1);
  }
  const most = Math.max(0, ...drawn.map(({ high }) => high));
  return { min: 0, max: most === 0 ? 1 : most * SLACK, ticks: [] };
}

/** Of what all ranges take up, the share that the cut axis must hold for them to be shown whole instead. */
const WHOLE = 0.5;

/** The axis of margin per hour: every range whole, unless that leaves the others less than half of the room. */
export function columnScale(rows: readonly RatedRow[], goal: number, most: number): Scale {
  const cut = rateScale(rows, goal, most);
  const high = Math.max(goal * 1.35, ...rows.map(({ p90 }) => p90));
  const whole = scaleOver(Math.min(-0.12 * high, ...rows.map(({ p10 }) => p10)), high, most);
  return cut.max - cut.min >= WHOLE * (whole.max - whole.min) ? whole : cut;
}
