import { DomainError } from "../domainError.ts";

const RELATIVE_TOLERANCE = 1e-10;

/**
 * Where a rising function crosses 0 between low and high. A jump over 0 counts as a crossing.
 * The root is bracketed to 1e-10 of the larger of its own size and high - low.
 * @param rising a function that never falls on low to high
 * @throws DomainError unless rising(low) <= 0 <= rising(high)
 * Method: inverse quadratic steps where they are sound, else halving: Chandrupatla, Advances in Engineering Software 28 (1997) 145-149.
 */
export function monotoneRoot(
  rising: (x: number) => number,
  low: number,
  high: number,
  relativeTolerance: number = RELATIVE_TOLERANCE,
): number {
  const width = high - low;
  // a is the newest point, b the end of the bracket across the root, c the point before.
  let a = high;
  let b = low;
  let atA = rising(a);
  let atB = rising(b);
  requireBracket(low, high, atB, atA);
  if (atB === 0) return b;
  let step = 0.5;
  for (;;) {
    const x = a + step * (b - a);
    const atX = rising(x);
    let c: number;
    let atC: number;
    if (atX > 0 === atA > 0) {
      c = a;
      atC = atA;
    } else {
      c = b;
      atC = atB;
      b = a;
      atB = atA;
    }
    a = x;
    atA = atX;
    const [best, atBest] = Math.abs(atA) < Math.abs(atB) ? [a, atA] : [b, atB];
    const tolerance =
      relativeTolerance * Math.max(Math.abs(best), width) + 2 * Number.EPSILON * Math.abs(best);
    const share = tolerance / (2 * Math.abs(b - a));
    if (atBest === 0 || !(share <= 0.5)) return best;
    step = Math.min(1 - share, Math.max(share, nextStep(a, b, c, atA, atB, atC)));
  }
}

/** Share of the way from a to b: inverse quadratic interpolation where Chandrupatla's test trusts it, else a half. */
function nextStep(a: number, b: number, c: number, atA: number, atB: number, atC: number): number {
  const xi = (a - b) / (c - b);
  const phi = (atA - atB) / (atC - atB);
  if (!(1 - Math.sqrt(1 - xi) < phi && phi < Math.sqrt(xi))) return 0.5;
  return (
    (atA / (atB - atA)) * (atC / (atB - atC)) +
    ((c - a) / (b - a)) * (atA / (atC - atA)) * (atB / (atC - atB))
  );
}

function requireBracket(low: number, high: number, atLow: number, atHigh: number): void {
  if (low <= high && atLow <= 0 && atHigh >= 0) return;
  throw new DomainError(
    "out-of-domain",
    "bracket",
    `${atLow} at ${low} and ${atHigh} at ${high}`,
    "low <= high with the function at most 0 at low and at least 0 at high",
  );
}
