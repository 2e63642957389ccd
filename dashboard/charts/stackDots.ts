/** A dot among the 20 of a course: where it stands, counted in dots from the left and from the ground. */
export interface StackedDot {
  readonly value: number;
  /** Middle of the column, in pixels. */
  readonly x: number;
  /** 0 is the lowest. */
  readonly level: number;
}

/**
 * Dots piled into columns one dot wide, each column all losing or all earning. Where a column is full, the next dot goes
 * on the nearest that is not, on the same side of nought.
 * @param values in the axis' unit
 * @param x pixel of a value
 * @param across width of a dot with its gap, in pixels
 * @param most dots in a column
 */
export function stackDots(
  values: readonly number[],
  x: (value: number) => number,
  across: number,
  most = Number.POSITIVE_INFINITY,
): readonly StackedDot[] {
  const heights = new Map<number, number>();
  const nought = x(0);
  return [...values]
    .sort((a, b) => a - b)
    .map((value) => {
      const column = withRoom(columnOf(value, x, across), heights, most);
      const level = heights.get(column) ?? 0;
      heights.set(column, level + 1);
      return { value, x: nought + (column + 0.5) * across, level };
    });
}

/** Columns are counted from nought, so that no column holds losses and gains together. */
function columnOf(value: number, x: (value: number) => number, across: number): number {
  const from = (x(value) - x(0)) / across;
  return value < 0 ? Math.ceil(from) - 1 : Math.floor(from);
}

function withRoom(column: number, heights: ReadonlyMap<number, number>, most: number): number {
  for (let away = 0; ; away++) {
    for (const near of [column + away, column - away]) {
      if (near < 0 === column < 0 && (heights.get(near) ?? 0) < Math.max(1, most)) return near;
    }
  }
}

/**
 * The widest dot, up to `most` pixels, with which the highest pile of every row fits into `height`; never narrower than
 * `least`, where full columns then spill into their neighbours.
 */
export function dotWidth(
  rows: readonly (readonly number[])[],
  x: (value: number) => number,
  height: number,
  most: number,
  least: number,
): number {
  for (let across = most; across > least; across -= 0.5) {
    const highest = Math.max(
      0,
      ...rows.flatMap((row) => stackDots(row, x, across).map(({ level }) => level + 1)),
    );
    if (highest * across <= height) return across;
  }
  return Math.min(least, most);
}
