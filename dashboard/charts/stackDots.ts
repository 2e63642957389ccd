/** A dot among the 20 of a course: where it stands, counted in dots from the left and from the ground. */
export interface StackedDot {
  readonly value: number;
  /** Middle of the column, in pixels. */
  readonly x: number;
  /** 0 is the lowest. */
  readonly level: number;
}

/**
 * Dots piled into columns one dot wide, each column all losing or all earning.
 * @param values in the axis' unit
 * @param x pixel of a value
 * @param across width of a dot with its gap, in pixels
 */
export function stackDots(
  values: readonly number[],
  x: (value: number) => number,
  across: number,
): readonly StackedDot[] {
  const heights = new Map<number, number>();
  const nought = x(0);
  return [...values]
    .sort((a, b) => a - b)
    .map((value) => {
      // Columns are counted from nought, so that no column holds losses and gains together.
      const column =
        value < 0 ? Math.ceil((x(value) - nought) / across) - 1 : Math.floor((x(value) - nought) / across);
      const level = heights.get(column) ?? 0;
      heights.set(column, level + 1);
      return { value, x: nought + (column + 0.5) * across, level };
    });
}

/** The widest dot, up to `most` pixels, with which the highest pile of every row fits into `height`. */
export function dotWidth(
  rows: readonly (readonly number[])[],
  x: (value: number) => number,
  height: number,
  most: number,
): number {
  for (let across = most; across > 5; across -= 0.5) {
    const highest = Math.max(
      0,
      ...rows.flatMap((row) => stackDots(row, x, across).map(({ level }) => level + 1)),
    );
    if (highest * across <= height) return across;
  }
  return 5;
}
