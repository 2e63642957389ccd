import type { Money } from "../quantity.ts";
import type { LocalDistribution } from "../statistics/risingQuantiles.ts";
import { normalCdf, normalDensity } from "../statistics/standardNormal.ts";

/**
 * A mixture of amounts, as flat arrays. Where something is sold (spread above 0) a component is share x price - outlay, its price log-normal: at most x where
 * the log of x + outlay is at most centre + spread x Z. Where nothing is sold (spread 0) it is minus a log-normal outlay
 * (log centre, log spread `outlaySpread`), or -outlay for certain where that is 0.
 */
export interface SaleMixture {
  readonly size: number;
  readonly weight: Float64Array;
  readonly outlay: Float64Array;
  /** Log of share x median price, or of the median outlay. */
  readonly centre: Float64Array;
  readonly spread: Float64Array;
  readonly outlaySpread: Float64Array;
}

export function emptyMixture(size: number): SaleMixture {
  return {
    size,
    weight: new Float64Array(size),
    outlay: new Float64Array(size),
    centre: new Float64Array(size),
    spread: new Float64Array(size),
    outlaySpread: new Float64Array(size),
  };
}

/** Chance of at most x, density there and the density's slope, in one pass. A certain amount has no density. */
export function mixtureAt(
  { size, weight, outlay, centre, spread, outlaySpread }: SaleMixture,
  x: Money,
): LocalDistribution {
  let below = 0;
  let density = 0;
  let slope = 0;
  for (let i = 0; i < size; i++) {
    const takings = x + outlay[i]!;
    const width = spread[i]!;
    if (width > 0) {
      if (takings <= 0) continue;
      const z = (Math.log(takings) - centre[i]!) / width;
      below += weight[i]! * normalCdf(z);
      const thick = (weight[i]! * normalDensity(z)) / (width * takings);
      density += thick;
      slope -= (thick * (z / width + 1)) / takings;
    } else if (outlaySpread[i]! > 0) {
      if (x >= 0) below += weight[i]!;
      else {
        const z = (centre[i]! - Math.log(-x)) / outlaySpread[i]!;
        below += weight[i]! * normalCdf(z);
        const thick = (weight[i]! * normalDensity(z)) / (outlaySpread[i]! * -x);
        density += thick;
        slope += (thick * (z / outlaySpread[i]! - 1)) / x;
      }
    } else if (takings >= 0) below += weight[i]!;
  }
  return { below, density, slope };
}
