/** A distribution near a point. */
export interface LocalDistribution {
  /** Chance of at most x. Never falls, may jump. */
  readonly below: number;
  /** Its derivative away from jumps; 0 where there is none. */
  readonly density: number;
  /** The density's derivative. Rough derivatives only cost steps. */
  readonly slope: number;
}

/** A distribution to invert. */
export interface Invertible {
  readonly at: (x: number) => LocalDistribution;
  /** The chance is below every probability asked for at `low`, at or above it at `high`. */
  readonly low: number;
  readonly high: number;
  /** Where the first quantile may lie; a good guess saves steps, a bad one costs some. */
  readonly guess?: number;
}

const MOST_STEPS = 200;

/**
 * Quantiles at rising probabilities. From the last point looked at, the second-order inverse series
 * x + u - (slope / density) u^2 / 2 with u = (p - below) / density leads to the next; it is taken as it stands where its third-order rest is below
 * the tolerance, else looked at and repeated. A step that leaves the bracket, or a flat stretch or jump, halves the bracket instead.
 * @param probabilities rising, within 0 to 1
 * @param tolerance absolute, on x
 * Method: safeguarded Newton-Raphson with Chebyshev's correction (Traub 1964; Press et al., Numerical Recipes, section 9.4).
 */
export function risingQuantiles(
  { at, low, high, guess = (low + high) / 2 }: Invertible,
  probabilities: readonly number[],
  tolerance: number,
): number[] {
  let floor = low;
  let x = guess > low && guess < high ? guess : (low + high) / 2;
  let here = at(x);
  return probabilities.map((probability) => {
    let [below, above] = [floor, high];
    for (let step = 0; step < MOST_STEPS && above - below > tolerance; step++) {
      if (here.below >= probability) above = Math.min(above, x);
      else below = Math.max(below, x);
      const gap = probability - here.below;
      const first = gap / here.density;
      const bend = (here.slope / here.density) * first;
      // Beyond a bend of one half the series says little: the plain Newton step is the better guess.
      const next = x + (Math.abs(bend) < 0.5 ? first * (1 - bend / 2) : first);
      const sound = here.density > 0 && next > below && next < above;
      // The third-order rest: bend^2 away from the mode, near it the curvature, which for a bell is about 2 pi gap^2.
      if (sound && Math.abs(first) * (bend * bend + 6 * gap * gap) < tolerance) {
        floor = below;
        return next;
      }
      x = sound ? next : (below + above) / 2;
      here = at(x);
    }
    floor = below;
    return (below + above) / 2;
  });
}
