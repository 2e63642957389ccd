import { rateScale, type Scale } from "../charts/scale.ts";
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
