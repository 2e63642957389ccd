/** Where the two widths stand in the drawing, in its own units. */
export interface DropoutScene {
  /** Hub less dropouts, mm: above 0 the hub is too wide. */
  readonly difference: number;
  /** How many times too large the difference is drawn. */
  readonly times: number;
  /** Half of the space between the dropouts, as drawn. */
  readonly halfSpacing: number;
  /** Half of the hub, as drawn. */
  readonly halfHub: number;
}

/** Half of the space between the dropouts, as drawn, whatever it measures. */
const HALF_SPACING = 80;
const MOST_TIMES = 6;
/** A half of the difference is drawn no larger than this. */
const MOST = 34;

/** Draws the hub beside the dropouts on the dropouts' own scale, their difference enlarged by a whole number of times. Lengths in mm, above 0. */
export function dropoutScene(spacing: number, hub: number): DropoutScene {
  const difference = hub - spacing;
  const half = (HALF_SPACING * difference) / spacing;
  const size = Math.abs(half);
  const times = size === 0 ? MOST_TIMES : Math.max(1, Math.min(MOST_TIMES, Math.floor(MOST / size)));
  const drawn = Math.sign(half) * Math.min(MOST, size * times);
  return { difference, times, halfSpacing: HALF_SPACING, halfHub: HALF_SPACING + drawn };
}
