import type { ThreePoint } from "../../../worker/engine/quantity.ts";
import type { Chance } from "./chance.ts";

/** A part that may never come free: after `from` minutes, with a hazard that falls, for all but a share. Tried until the limit. */
export interface Seized {
  readonly from: number;
  readonly never: number;
  /** P(X > x) = (1 + x / scale)^-shape (Lomax 1954); exponential of mean `scale` where the shape is infinite. */
  readonly shape: number;
  readonly scale: number;
  readonly limit: number;
}

/** Of those that come free, half are out at the likely time and 95 in 100 at the pessimistic one, or all but the chance of failing where that is less. */
export function seizedFrom(
  { optimistic, likely, pessimistic }: ThreePoint,
  fails: number,
  limit: number,
): Seized {
  const half = likely - optimistic;
  const far = pessimistic - optimistic;
  const slow = Math.min(0.05, fails);
  const shapeFor = (scale: number) => Math.LN2 / Math.log1p(half / scale);
  const slower = (scale: number) => (1 + far / scale) ** -shapeFor(scale);
  let [low, high] = [half * 1e-9, half * 1e4];
  if (slower(high) >= slow) {
    const scale = half / Math.LN2;
    const out = 1 - Math.exp(-far / scale);
    return { from: optimistic, never: Math.max(0, 1 - (1 - fails) / out), shape: Infinity, scale, limit };
  }
  // The longer the scale, the fewer are still fast at the pessimistic time.
  for (let halving = 0; halving < 200; halving++) {
    const middle = Math.sqrt(low * high);
    if (slower(middle) > slow) low = middle;
    else high = middle;
  }
  return { from: optimistic, never: 1 - (1 - fails) / (1 - slow), shape: shapeFor(low), scale: low, limit };
}

/** Minutes until it is free; at least the limit where it is given up. */
export function freed({ from, never, shape, scale }: Seized, chance: Chance): number {
  if (chance.uniform() < never) return Number.POSITIVE_INFINITY;
  const left = chance.uniform();
  return from + (shape === Infinity ? -scale * Math.log(left) : scale * (left ** (-1 / shape) - 1));
}
