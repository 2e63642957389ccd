/** What the string test's drawing is made from; lengths in mm. */
export interface StringReading {
  readonly left: number;
  readonly right: number;
  /** Head tube to seat tube over head tube to rear axle. */
  readonly ratio: number;
}

/** Places in the drawing, in its own units: x along the bike, y towards the drive side. */
export interface StringScene {
  /** How far the middle of the dropouts lies off the frame's plane at the axle, mm; above 0 towards the drive side. */
  readonly offset: number;
  /** How many times too large the bend is drawn. */
  readonly times: number;
  /** The bend as drawn. */
  readonly shift: number;
  readonly seatTubeX: number;
  /** Where the string passes the seat tube. */
  readonly leftStringY: number;
  readonly rightStringY: number;
}

/** The frame as drawn. */
export const FRAME = {
  headX: 50,
  axleX: 370,
  middleY: 120,
  /** Half of the space between the dropouts. */
  halfSpacing: 52,
  /** Where the string leaves the head tube, off the middle. */
  headString: 14,
  /** Where it meets a dropout, off the middle of that dropout. */
  dropoutString: 7,
} as const;

/** Millimetres that the drawn length from head tube to axle stands for: a frame of middling size. */
const DRAWN_LENGTH_MM = 960;
const PER_MM = (FRAME.axleX - FRAME.headX) / DRAWN_LENGTH_MM;
const MOST_TIMES = 18;
/** A bend is drawn no larger than this, so that it stays on the paper. */
const MOST_SHIFT = 46;

/**
 * Where everything stands for a reading. The string is straight in plan, so its distance from the seat tube differs between
 * the sides by 2 t e, with t the ratio and e the offset at the axle: e = (right - left) / (2 t). The bend is enlarged by a
 * whole number of times, less where it would leave the paper.
 */
export function stringScene({ left, right, ratio }: StringReading): StringScene {
  const offset = (right - left) / (2 * ratio);
  const size = Math.abs(offset) * PER_MM;
  const times = size === 0 ? MOST_TIMES : Math.max(1, Math.min(MOST_TIMES, Math.floor(MOST_SHIFT / size)));
  const shift = Math.sign(offset) * Math.min(MOST_SHIFT, size * times);
  const { headX, axleX, middleY, halfSpacing, headString, dropoutString } = FRAME;
  const stringAt = (side: -1 | 1) => {
    const head = middleY + side * headString;
    const dropout = middleY + shift + side * (halfSpacing + dropoutString);
    return head + (dropout - head) * ratio;
  };
  return {
    offset,
    times,
    shift,
    seatTubeX: headX + (axleX - headX) * ratio,
    leftStringY: stringAt(-1),
    rightStringY: stringAt(1),
  };
}
