/** A linear axis, shared by every row of a chart. */
export interface Scale {
  readonly min: number;
  readonly max: number;
  readonly ticks: readonly number[];
}

/** Share of the width kept free at either end, so that marks and outlines are not cut. */
const SLACK = 0.045;

/**
 * An axis that holds low to high, with ticks at round values (1, 2 or 5 times a power of ten).
 * @param most how many ticks at most
 */
export function scaleOver(low: number, high: number, most: number): Scale {
  const width = high > low ? high - low : Math.max(1, Math.abs(high));
  const min = low - width * SLACK;
  const max = low + width * (1 + SLACK);
  const step = roundStep((max - min) / most);
  const ticks: number[] = [];
  for (let k = Math.ceil(min / step); k * step <= max; k += 1) ticks.push(k * step + 0);
  return { min, max, ticks };
}

function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const factor = [1, 2, 5, 10].find((one) => one * power >= least) ?? 10;
  return factor * power;
}

/** Where a value stands, in per cent of the axis. */
export function percent(value: number, { min, max }: Scale): number {
  return ((value - min) / (max - min)) * 100;
}

/** Rate and range of one row. */
export interface RatedRow {
  readonly rate: number;
  readonly p10: number;
  readonly p90: number;
}

/** A range that runs this far past its neighbour's is cut, and ends in an arrow head. */
const LONELY = 1.4;

/** One axis for all rows: every rate, nought and the goal are on it; a single range that far outruns the others is not. */
export function rateScale(rows: readonly RatedRow[], goal: number, most: number): Scale {
  const rates = rows.map(({ rate }) => rate);
  const high = Math.max(goal * 1.35, ...rates.map((rate) => rate * 1.08), reach(rows.map(({ p90 }) => p90)));
  const low = Math.min(0, ...rates, -reach(rows.map(({ p10 }) => -p10)));
  return scaleOver(Math.min(low, -0.12 * high), high, most);
}

/** The furthest of some ends, or the second where the furthest runs on alone. */
function reach(ends: readonly number[]): number {
  const [first = 0, second] = [...ends].sort((a, b) => b - a);
  if (second === undefined || first <= Math.max(second, 0) * LONELY) return first;
  return Math.max(second, 0) * LONELY;
}
