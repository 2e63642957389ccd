import type { Money } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { logNormalFromMean } from "../statistics/logNormal.ts";
import { timesAndMoved } from "../statistics/scaledBeta.ts";
import type { Branch } from "./branch.ts";
import { shapeOf } from "./outlayShape.ts";
import { emptyMixture, type SaleMixture } from "./saleMixture.ts";

/**
 * Each branch as components. Where something is sold, price and outlay both vary: the one that varies more is integrated in closed form, the other at
 * nodes. An outlay is a normal or, where it is skewed, a shifted log-normal of the same three moments. Where nothing is sold, one log-normal outlay,
 * or a beta for the widest of few prices, the others at nodes.
 */
export function marginMixture(ways: readonly Branch[]): SaleMixture {
  const shapes = ways.map(shapeOf);
  const mixture = emptyMixture(shapes.map(({ rule }) => rule.nodes.length));
  let i = 0;
  ways.forEach(({ chance, price, share, outlay }, way) => {
    const { sd, skew, wider, beta, others, rule } = shapes[way]!;
    for (let node = 0; node < rule.nodes.length; node++, i++) {
      const z = rule.nodes[node]!;
      mixture.weight[i] = chance * rule.weights[node]!;
      if (!price) {
        if (beta) {
          mixture.betas[i] = timesAndMoved(beta, 1, z * Math.sqrt(others));
          continue;
        }
        // Parts at hand may be worth more than what is spent: then it is no amount that only grows.
        const spent = sd > 0 && outlay.mean > 0 ? logNormalFromMean(outlay.mean, sd) : null;
        if (!spent) mixture.normalSpread[i] = sd;
        mixture.outlay[i] = spent ? 0 : outlay.mean;
        mixture.centre[i] = spent?.logMedian ?? 0;
        mixture.outlaySpread[i] = spent?.logSd ?? 0;
      } else if (!wider) {
        mixture.outlay[i] = skew
          ? skew.shift + skew.sign * exp(skew.logMedian + skew.logSd * z)
          : outlay.mean + sd * z;
        mixture.centre[i] = price.logMedian + log(share);
        mixture.spread[i] = price.logSd;
      } else {
        const takings = share * exp(price.logMedian + price.logSd * z);
        mixture.outlay[i] = (skew ? skew.shift : outlay.mean) - takings;
        if (!skew) mixture.normalSpread[i] = sd;
        else {
          mixture.centre[i] = skew.logMedian;
          if (skew.sign > 0) mixture.outlaySpread[i] = skew.logSd;
          else mixture.spread[i] = skew.logSd;
        }
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
  const { outlay, centre, spread, normalSpread, outlaySpread, betas } = mixture;
  let low = Infinity;
  let high = -Infinity;
  for (let i = from; i < to; i++) {
    const sold = spread[i]! > 0;
    const uncertain = outlaySpread[i]! > 0;
    const beta = betas[i];
    if (beta) {
      low = Math.min(low, -beta.low - beta.width);
      high = Math.max(high, -beta.low);
      continue;
    }
    const far = exp(centre[i]! + FAR_Z * (sold ? spread[i]! : outlaySpread[i]!));
    const wide = FAR_Z * normalSpread[i]!;
    low = Math.min(low, -outlay[i]! - (uncertain ? far : wide));
    high = Math.max(high, (sold ? far : wide) - outlay[i]!);
  }
  return [low, high];
}

/**
 * Amounts that come for certain in some branch, rising: the distribution jumps there.
 * @param from, to the components counted; all where left out
 */
export function certainAmounts(mixture: SaleMixture, from = 0, to = mixture.size): Money[] {
  const { outlay, spread, normalSpread, outlaySpread, betas } = mixture;
  const amounts: Money[] = [];
  for (let i = from; i < to; i++) {
    const certain = spread[i] === 0 && normalSpread[i] === 0 && outlaySpread[i] === 0 && !betas[i];
    if (certain && !amounts.includes(-outlay[i]!)) amounts.push(-outlay[i]!);
  }
  return amounts.sort((a, b) => a - b);
}
