import type { ThreePoint } from "../../../worker/engine/quantity.ts";
import { TICKET_COUNT } from "./chance.ts";

/** Points at which a Beta's density is summed. */
const GRID = 20_000;
const shapes = new Map<number, Float64Array>();

/**
 * A three-point estimate as a bowl of equally likely tickets: the quantiles in the middle of 2048 equal shares of the Beta on [a, b] that has the rule's mean
 * (a + 4 m + b) / 6 and standard deviation (b - a) / 6, stretched to these moments exactly. Null where a = b: nothing varies.
 * Source of the moments: Malcolm, Roseboom, Clark & Fazar 1959.
 */
export function ticketsOf({ optimistic, likely, pessimistic }: ThreePoint): Float64Array | null {
  const width = pessimistic - optimistic;
  if (width === 0) return null;
  const mean = (optimistic + 4 * likely + pessimistic) / 6;
  return standard((mean - optimistic) / width).map((one) => mean + (one * width) / 6);
}

/** Tickets of mean 0 and standard deviation 1 of the Beta on [0, 1] with a mean and a standard deviation of a sixth. */
function standard(mean: number): Float64Array {
  const known = shapes.get(mean);
  if (known) return known;
  const total = 36 * mean * (1 - mean) - 1;
  const tickets = stretched(betaQuantiles(mean * total, (1 - mean) * total));
  shapes.set(mean, tickets);
  return tickets;
}

/** Summed over the angle of x = sin^2, where the density is bounded for the shapes that occur (at least two thirds). */
function betaQuantiles(a: number, b: number): Float64Array {
  const below = new Float64Array(GRID + 1);
  const step = Math.PI / 2 / GRID;
  for (let at = 0; at < GRID; at++) {
    const angle = (at + 0.5) * step;
    below[at + 1] = below[at]! + Math.sin(angle) ** (2 * a - 1) * Math.cos(angle) ** (2 * b - 1);
  }
  const quantiles = new Float64Array(TICKET_COUNT);
  let at = 0;
  for (let ticket = 0; ticket < TICKET_COUNT; ticket++) {
    const wanted = ((ticket + 0.5) / TICKET_COUNT) * below[GRID]!;
    while (below[at + 1]! < wanted) at++;
    const angle = (at + (wanted - below[at]!) / (below[at + 1]! - below[at]!)) * step;
    quantiles[ticket] = Math.sin(angle) ** 2;
  }
  return quantiles;
}

function stretched(values: Float64Array): Float64Array {
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  const variance = values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / values.length;
  return values.map((one) => (one - mean) / Math.sqrt(variance));
}
