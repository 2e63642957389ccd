import { zeroRows } from "../../statistics/zeroRows.ts";

/**
 * What one week at a price comes to for each going rate that may be true, seen from its start with the bicycle unsold; slopes are by price. One entry a
 * node. Written into by `SaleWeeks.at`, so that the search for prices makes no garbage.
 */
export interface WeekFigures {
  /** Expected takings of the week less what keeping it costs, discounted to its start. */
  readonly gain: Float64Array;
  readonly gainSlope: Float64Array;
  /** Chance that it is still unsold at the end, times the week's discount factor. */
  readonly left: Float64Array;
  readonly leftSlope: Float64Array;
}

/** How sales come about: any week ahead under any price. */
export interface SaleWeeks {
  /** Fills the figures of a week (0 is the first) at a price. */
  readonly at: (week: number, price: number, figures: WeekFigures) => void;
}

const FIGURES = 4;

/** Room for the figures of one week. */
export function weekFigures(nodes: number, room = zeroRows(FIGURES, nodes)): WeekFigures {
  return { gain: room(), gainSlope: room(), left: room(), leftSlope: room() };
}

/** Room for the figures of all weeks of a path. */
export function figuresByWeek(weeks: number, nodes: number): readonly WeekFigures[] {
  const room = zeroRows(FIGURES * weeks, nodes);
  const figures: WeekFigures[] = [];
  for (let week = 0; week < weeks; week++) figures.push(weekFigures(nodes, room));
  return figures;
}
