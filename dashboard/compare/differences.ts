import type { Cell, MeasureRow } from "./measures.ts";

/** Rows in which finds differ, farthest apart first, and those in which all say the same. */
export interface OrderedRows {
  readonly apart: readonly MeasureRow[];
  readonly same: readonly MeasureRow[];
}

/**
 * Differences first. Rows are ordered by the share of their own scale over which the figures spread; a row of words,
 * which has no scale, comes last of those that differ. Two finds that say something are needed to say the same.
 */
export function differencesFirst(rows: readonly MeasureRow[]): OrderedRows {
  const told = rows.filter(({ cells }) => said(cells).length > 0);
  const same = told.filter(({ cells }) => agree(cells));
  const apart = told.filter((row) => !same.includes(row));
  return { apart: [...apart].sort((a, b) => distance(b.cells) - distance(a.cells)), same };
}

const said = (cells: readonly (Cell | null)[]) => cells.filter((cell) => cell !== null);

/** Whether all that say anything say the same, as it is shown. */
function agree(cells: readonly (Cell | null)[]): boolean {
  const words = said(cells).map(({ strong, rest }) => `${strong}\n${rest}`);
  return words.length > 1 && new Set(words).size === 1;
}

/**
 * How far apart figures lie: highest less lowest, over the width of a scale that holds nought, every figure and its
 * range. 0 to 1; a wide range widens the scale, so that a difference within what is uncertain counts for little.
 * -1 where there are no two figures.
 */
export function distance(cells: readonly (Cell | null)[]): number {
  const figures = said(cells).flatMap(({ value, low, high }) =>
    value === null ? [] : [{ value, low, high }],
  );
  if (figures.length < 2) return -1;
  const values = figures.map(({ value }) => value);
  const width =
    Math.max(0, ...values, ...figures.map(({ high }) => high)) -
    Math.min(0, ...values, ...figures.map(({ low }) => low));
  return width === 0 ? 0 : (Math.max(...values) - Math.min(...values)) / width;
}
