import type { Money, Probability } from "../quantity.ts";
import { gaussHermite, type Quadrature } from "../statistics/gaussHermite.ts";
import { logNormalFromMean, logNormalSd } from "../statistics/logNormal.ts";
import { type ScaledBeta, scaledBeta } from "../statistics/scaledBeta.ts";
import { type ShiftedLogNormal, shiftedLogNormal } from "../statistics/shiftedLogNormal.ts";
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

/** A log-normal outlay of this log spread needs so many nodes at least to keep its mean, variance and skewness. */
const SKEW_NODES = [
  { upTo: 0.25, count: 2 },
  { upTo: 0.5, count: 3 },
  { upTo: 0.8, count: 5 },
  { upTo: Infinity, count: 8 },
] as const;

/** A skewness less than this, in a sum that something wider smooths, moves no chance by a ten-thousandth. */
const NO_SKEWNESS = 0.02;

/** A branch less likely than this is integrated as if its spreads lay no nearer together than this. */
const UNLIKELY: Probability = 0.2;
const FEW = 0.25;

/** One branch's outlay as it is integrated. */
interface OutlayShape {
  readonly sd: number;
  /** Null where it is as good as normal. */
  readonly skew: ShiftedLogNormal | null;
  /** It varies more than the takings do. */
  readonly wider: boolean;
  readonly rule: Quadrature;
}

function shapeOf({ chance, price, share, outlay }: Branch): OutlayShape {
  const sd = Math.sqrt(Math.max(0, outlay.variance));
  if (!price || sd === 0) return { sd, skew: null, wider: false, rule: POINT };
  const priceSd = share * logNormalSd(price);
  const wider = sd > priceSd;
  const relative = Math.min(sd, priceSd) / Math.max(sd, priceSd);
  const skewed = Math.abs(outlay.third) > NO_SKEWNESS * sd ** 3;
  const skew = skewed ? shiftedLogNormal(outlay.mean, outlay.variance, outlay.third) : null;
  const least = skew && !wider ? SKEW_NODES.find(({ upTo }) => skew.logSd <= upTo)!.count : 0;
  // What is unlikely weighs little: an error in it is scaled by its chance.
  const needed = chance < UNLIKELY ? Math.min(relative, FEW) : relative;
  const { rule } =
    NODES.find(({ upTo, rule: { nodes } }) => needed <= upTo && nodes.length >= least) ?? NODES.at(-1)!;
  return { sd, skew, wider, rule };
}

/** An outlay whose fourth cumulant is known, where a beta has its moments. */
function betaOf({ mean, variance, third, fourth }: Branch["outlay"]): ScaledBeta | null {
  return fourth === undefined || variance <= 0 ? null : scaledBeta(mean, variance, { third, fourth });
}

/**
 * Each branch as components. Where something is sold, price and outlay both vary: the one that varies more is integrated in closed form, the other at
 * nodes. An outlay is a normal or, where it is skewed, a shifted log-normal of the same three moments. Where nothing is sold, one beta
 * or log-normal outlay.
 */
export function marginMixture(ways: readonly Branch[]): SaleMixture {
  const shapes = ways.map(shapeOf);
  const mixture = emptyMixture(shapes.map(({ rule }) => rule.nodes.length));
  let i = 0;
  ways.forEach(({ chance, price, share, outlay }, way) => {
    const { sd, skew, wider, rule } = shapes[way]!;
    for (let node = 0; node < rule.nodes.length; node++, i++) {
      const z = rule.nodes[node]!;
      mixture.weight[i] = chance * rule.weights[node]!;
      if (!price) {
        mixture.betas[i] = betaOf(outlay);
        // Parts at hand may be worth more than what is spent: then it is no amount that only grows.
        const spent = sd > 0 && outlay.mean > 0 ? logNormalFromMean(outlay.mean, sd) : null;
        if (!spent) mixture.normalSpread[i] = sd;
        mixture.outlay[i] = spent ? 0 : outlay.mean;
        mixture.centre[i] = spent?.logMedian ?? 0;
        mixture.outlaySpread[i] = spent?.logSd ?? 0;
      } else if (!wider) {
        mixture.outlay[i] = skew
          ? skew.shift + skew.sign * Math.exp(skew.logMedian + skew.logSd * z)
          : outlay.mean + sd * z;
        mixture.centre[i] = price.logMedian + Math.log(share);
        mixture.spread[i] = price.logSd;
      } else {
        const takings = share * Math.exp(price.logMedian + price.logSd * z);
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
    const far = Math.exp(centre[i]! + FAR_Z * (sold ? spread[i]! : outlaySpread[i]!));
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
