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

/** Room for the figures of one week. */
export function weekFigures(nodes: number): WeekFigures {
  const room = () => new Float64Array(nodes);
  return { gain: room(), gainSlope: room(), left: room(), leftSlope: room() };
}
