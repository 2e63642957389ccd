import type { Money } from "../quantity.ts";
import { gaussHermite, type Quadrature } from "../statistics/gaussHermite.ts";
import { logNormalFromMean, logNormalSd } from "../statistics/logNormal.ts";
import type { Branch } from "./branch.ts";
import { emptyMixture, type SaleMixture } from "./saleMixture.ts";

/**
 * Nodes for the narrower of price and outlay, by its spread over the wider one's: the wider one smooths what is summed, so a narrow one needs few. Enough
 * for every chance to be right to a few ten-thousandths (`npm run proof`).
 */
const NODES = [
  { upTo: 0.12, rule: gaussHermite(2) },
  { upTo: 0.25, rule: gaussHermite(3) },
  { upTo: 0.45, rule: gaussHermite(5) },
  { upTo: 0.7, rule: gaussHermite(8) },
  { upTo: 1, rule: gaussHermite(14) },
] as const;
const POINT: Quadrature = { nodes: [0], weights: [1] };

function nodesFor({ price, share, outlay }: Branch): Quadrature {
  if (!price || outlay.variance <= 0) return POINT;
  const [sd, priceSd] = [Math.sqrt(outlay.variance), share * logNormalSd(price)];
  const relative = Math.min(sd, priceSd) / Math.max(sd, priceSd);
  return NODES.find(({ upTo }) => relative <= upTo)!.rule;
}

/**
 * Each branch as components. Where something is sold, price and outlay both vary: the one that varies more is integrated in closed form, the other at
 * nodes. Where nothing is sold, one log-normal outlay.
 */
export function marginMixture(ways: readonly Branch[]): SaleMixture {
  const rules = ways.map(nodesFor);
  const mixture = emptyMixture(rules.map(({ nodes }) => nodes.length));
  let i = 0;
  ways.forEach(({ chance, price, share, outlay }, way) => {
    const sd = Math.sqrt(Math.max(0, outlay.variance));
    const { nodes, weights } = rules[way]!;
    const outlayWider = price !== null && sd > share * logNormalSd(price);
    for (let node = 0; node < nodes.length; node++, i++) {
      const z = nodes[node]!;
      mixture.weight[i] = chance * weights[node]!;
      if (!price) {
        const spent = sd > 0 ? logNormalFromMean(outlay.mean, sd) : null;
        mixture.outlay[i] = outlay.mean;
        mixture.centre[i] = spent?.logMedian ?? 0;
        mixture.outlaySpread[i] = spent?.logSd ?? 0;
      } else if (outlayWider) {
        mixture.outlay[i] = outlay.mean - share * Math.exp(price.logMedian + price.logSd * z);
        mixture.normalSpread[i] = sd;
      } else {
        mixture.outlay[i] = outlay.mean + sd * z;
        mixture.centre[i] = price.logMedian + Math.log(share);
        mixture.spread[i] = price.logSd;
      }
    }
  });
  return mixture;
}

/** Tail chance beyond the bracket in which quantiles are sought. */
const FAR_Z = 5;

/**
 * An interval that holds all but a negligible share of the margin.
 * @param from, to the components counted; all where left out
 */
export function marginRange(mixture: SaleMixture, from = 0, to = mixture.size): readonly [Money, Money] {
  const { outlay, centre, spread, normalSpread, outlaySpread } = mixture;
  let low = Infinity;
  let high = -Infinity;
  for (let i = from; i < to; i++) {
    const sold = spread[i]! > 0;
    const uncertain = outlaySpread[i]! > 0;
    const far = Math.exp(centre[i]! + FAR_Z * (sold ? spread[i]! : outlaySpread[i]!));
    const wide = FAR_Z * normalSpread[i]!;
    low = Math.min(low, uncertain ? -far : -outlay[i]! - wide);
    high = Math.max(high, sold ? far - outlay[i]! : uncertain ? 0 : wide - outlay[i]!);
  }
  return [low, high];
}

/**
 * Amounts that come for certain in some branch, rising: the distribution jumps there.
 * @param from, to the components counted; all where left out
 */
export function certainAmounts(mixture: SaleMixture, from = 0, to = mixture.size): Money[] {
  const { outlay, spread, normalSpread, outlaySpread } = mixture;
  const amounts: Money[] = [];
  for (let i = from; i < to; i++) {
    const certain = spread[i] === 0 && normalSpread[i] === 0 && outlaySpread[i] === 0;
    if (certain && !amounts.includes(-outlay[i]!)) amounts.push(-outlay[i]!);
  }
  return amounts.sort((a, b) => a - b);
}
