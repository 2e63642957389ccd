import { log } from "./elementary/log.ts";
import type { LogNormal } from "./logNormal.ts";
import { logNormalMean } from "./logNormal.ts";
import { normalCdf } from "./standardNormal.ts";

/** Chances of 0, 1, 2, ... steps. */
export type Lattice = Float64Array;

/** A quantity that is fixed (a number), or log-normal. */
export type Part = { readonly chance: number; readonly quantity: LogNormal | number };

/**
 * A mixture on a lattice: the mass at each point is the second difference of the stop-loss transform E[(X - x)+], so that the mean is kept exactly
 * (local moment matching of the first order; Gerber 1982; Klugman, Panjer & Willmot, Loss Models, section on discretisation).
 * @param step width of a step, above 0
 * @param high what lies beyond is put on the last point, which is at or above it
 */
export function latticeOf(parts: readonly Part[], step: number, high: number): Lattice {
  const size = Math.ceil(high / step) + 1;
  const above = Float64Array.from({ length: size }, (_, point) => excess(parts, point * step));
  const lattice = new Float64Array(size);
  for (let point = 0; point < size; point++) {
    const fallTo = point === 0 ? 1 : (above[point - 1]! - above[point]!) / step;
    const fallFrom = point === size - 1 ? 0 : (above[point]! - above[point + 1]!) / step;
    lattice[point] = Math.max(0, fallTo - fallFrom);
  }
  return lattice;
}

/** Sum of two independent quantities on the same lattice. */
export function convolve(one: Lattice, other: Lattice): Lattice {
  const sum = new Float64Array(one.length + other.length - 1);
  for (let i = 0; i < one.length; i++) {
    const chance = one[i]!;
    if (chance === 0) continue;
    for (let j = 0; j < other.length; j++) sum[i + j]! += chance * other[j]!;
  }
  return sum;
}

/** E[(X - x)+]. */
function excess(parts: readonly Part[], x: number): number {
  let sum = 0;
  for (const { chance, quantity } of parts) sum += chance * excessOf(quantity, x);
  return sum;
}

function excessOf(quantity: LogNormal | number, x: number): number {
  if (typeof quantity === "number") return Math.max(0, quantity - x);
  const mean = logNormalMean(quantity);
  if (x <= 0) return mean - x;
  const { logMedian, logSd } = quantity;
  const z = (logMedian - log(x)) / logSd;
  return mean * normalCdf(z + logSd) - x * normalCdf(z);
}
