import type { Probability } from "../quantity.ts";
import { cubed } from "../statistics/elementary/powers.ts";
import { gaussHermite, type Quadrature } from "../statistics/gaussHermite.ts";
import { logNormalSd } from "../statistics/logNormal.ts";
import {
  type ScaledBeta,
  scaledBetaMean,
  scaledBetaVariance,
  timesAndMoved,
} from "../statistics/scaledBeta.ts";
import { type ShiftedLogNormal, shiftedLogNormal } from "../statistics/shiftedLogNormal.ts";
import type { Branch, Outlay } from "./branch.ts";

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
export interface OutlayShape {
  readonly sd: number;
  /** Null where it is as good as normal. */
  readonly skew: ShiftedLogNormal | null;
  /** Where nothing is sold, its widest price and what the others come to; null where they are too many for that. */
  readonly beta: ScaledBeta | null;
  /** Variance of the others. */
  readonly others: number;
  /** It varies more than the takings do. */
  readonly wider: boolean;
  readonly rule: Quadrature;
}

export function shapeOf({ chance, price, share, outlay }: Branch): OutlayShape {
  const sd = Math.sqrt(Math.max(0, outlay.variance));
  if (!price || sd === 0) return unsold(outlay, sd);
  const priceSd = share * logNormalSd(price);
  const wider = sd > priceSd;
  const relative = Math.min(sd, priceSd) / Math.max(sd, priceSd);
  const skewed = Math.abs(outlay.third) > NO_SKEWNESS * cubed(sd);
  const skew = skewed ? shiftedLogNormal(outlay.mean, outlay.variance, outlay.third) : null;
  const least = skew && !wider ? SKEW_NODES.find(({ upTo }) => skew.logSd <= upTo)!.count : 0;
  // What is unlikely weighs little: an error in it is scaled by its chance.
  const needed = chance < UNLIKELY ? Math.min(relative, FEW) : relative;
  const { rule } =
    NODES.find(({ upTo, rule: { nodes } }) => needed <= upTo && nodes.length >= least) ?? NODES.at(-1)!;
  return { sd, skew, beta: null, others: 0, wider, rule };
}

/** The widest price makes up this share of the variance at least where it is told apart from the others. */
const MOST_OF_IT = 0.5;
/** The others smooth it a little: five nodes hold every chance to a thousandth (see the tests). */
const OTHERS = gaussHermite(5);

function unsold({ mean, variance, widest }: Outlay, sd: number): OutlayShape {
  const normal = { sd, skew: null, wider: false };
  const own = widest ? scaledBetaVariance(widest) : 0;
  if (!widest || own < MOST_OF_IT * variance) return { ...normal, beta: null, others: 0, rule: POINT };
  const beta = timesAndMoved(widest, 1, mean - scaledBetaMean(widest));
  const others = Math.max(0, variance - own);
  return { ...normal, beta, others, rule: others > 0 ? OTHERS : POINT };
}
