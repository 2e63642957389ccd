import type { Money } from "../quantity.ts";
import { log } from "../statistics/elementary/log.ts";
import type { LocalDistribution } from "../statistics/risingQuantiles.ts";
import { type ScaledBeta, scaledBetaAt } from "../statistics/scaledBeta.ts";
import { normalCdfGiven, normalDensity } from "../statistics/standardNormal.ts";
import { zeroRows } from "../statistics/zeroRows.ts";

/**
 * A mixture of amounts, as flat arrays. A component is one of five, by which spread is above 0:
 * `spread`: share x price - outlay for a log-normal price, at most x where the log of x + outlay is at most centre + spread x Z;
 * `normalSpread`: normal about -outlay (takings at one price less an outlay that varies more than they do);
 * `outlaySpread`: -outlay less a log-normal amount (log centre, log spread); a beta: less what it stands for; none: -outlay for certain.
 */
export interface SaleMixture {
  readonly size: number;
  /** Where each branch's components begin, and after the last one the size. */
  readonly starts: readonly number[];
  readonly weight: Float64Array;
  readonly outlay: Float64Array;
  /** Log of share x median price, or of the median outlay. */
  readonly centre: Float64Array;
  readonly spread: Float64Array;
  readonly normalSpread: Float64Array;
  readonly outlaySpread: Float64Array;
  /** Holds no more than its betas. */
  readonly betas: (ScaledBeta | null)[];
}

/** Of a mixture. */
const ARRAYS = 6;

/** @param sizes count of components of each branch */
export function emptyMixture(sizes: readonly number[]): SaleMixture {
  const starts = [0];
  for (const count of sizes) starts.push(starts.at(-1)! + count);
  const size = starts.at(-1)!;
  const zeros = zeroRows(ARRAYS, size);
  return {
    size,
    starts,
    weight: zeros(),
    outlay: zeros(),
    centre: zeros(),
    spread: zeros(),
    normalSpread: zeros(),
    outlaySpread: zeros(),
    betas: [],
  };
}

/** Chance of at most x, density there and the density's slope, in one pass. A certain amount has no density. */
export function mixtureAt(mixture: SaleMixture, x: Money): LocalDistribution {
  const sum = { below: 0, density: 0, slope: 0 };
  addMixtureAt(sum, mixture, x, 0, mixture.size, 1, 1);
  return sum;
}

/**
 * Adds some components' chance of at most rate x scale + shift, with density and slope over the rate, times a weight. Adds in place: it runs some hundred
 * times in an appraisal.
 * @param from, to the components counted, the last one not
 */
export function addMixtureAt(
  sum: { -readonly [Key in keyof LocalDistribution]: number },
  mixture: SaleMixture,
  rate: number,
  from: number,
  to: number,
  times: number,
  scale: number,
  shift = 0,
): void {
  const x = rate * scale + shift;
  const { weight, outlay, centre, spread, normalSpread, outlaySpread, betas } = mixture;
  let below = 0;
  let density = 0;
  let slope = 0;
  for (let i = from; i < to; i++) {
    const takings = x + outlay[i]!;
    const width = spread[i]!;
    const beta = betas[i];
    if (beta) {
      const spent = scaledBetaAt(beta, -x);
      below += weight[i]! * (1 - spent.below);
      density += weight[i]! * spent.density;
      slope -= weight[i]! * spent.slope;
    } else if (width > 0) {
      if (takings <= 0) continue;
      const z = (log(takings) - centre[i]!) / width;
      const bell = normalDensity(z);
      below += weight[i]! * normalCdfGiven(z, bell);
      const thick = (weight[i]! * bell) / (width * takings);
      density += thick;
      slope -= (thick * (z / width + 1)) / takings;
    } else if (normalSpread[i]! > 0) {
      const z = takings / normalSpread[i]!;
      const bell = normalDensity(z);
      below += weight[i]! * normalCdfGiven(z, bell);
      const thick = (weight[i]! * bell) / normalSpread[i]!;
      density += thick;
      slope -= (thick * z) / normalSpread[i]!;
    } else if (outlaySpread[i]! > 0) {
      if (takings >= 0) below += weight[i]!;
      else {
        const z = (centre[i]! - log(-takings)) / outlaySpread[i]!;
        const bell = normalDensity(z);
        below += weight[i]! * normalCdfGiven(z, bell);
        const thick = (weight[i]! * bell) / (outlaySpread[i]! * -takings);
        density += thick;
        slope += (thick * (z / outlaySpread[i]! - 1)) / takings;
      }
    } else if (takings >= 0) below += weight[i]!;
  }
  sum.below += times * below;
  sum.density += times * scale * density;
  sum.slope += times * scale * scale * slope;
}
