import type { Money, Probability } from "../quantity.ts";
import type { PostedSale } from "./demand/posting.ts";
import type { PricePath } from "./demand/pricePath.ts";
import { type OfferNews, offerNews } from "./offerNews.ts";

/** A plan under way: what offers are judged by. */
export interface PlanUnderWay {
  readonly sale: PostedSale;
  readonly path: PricePath;
  /** By week: log of the going rate over that of the first. */
  readonly logSeason: readonly number[];
  readonly openingBelow: number;
}

/** What is known once an offer was heard, with the weeks before it gone by without a sale. */
export interface HeardOffer {
  /** Of the going rates; sum to 1. */
  readonly weights: Float64Array;
  readonly news: readonly OfferNews[];
  /** What carrying on is worth. */
  readonly carryingOn: Money;
}

/**
 * Weighs the going rates by their chance to be unsold at the start of the week and by the likelihood of the offer.
 * @param week from 0
 * @param offer money in hand, below the price asked
 */
export function hearOffer(
  { sale, path, logSeason, openingBelow }: PlanUnderWay,
  week: number,
  offer: Money,
): HeardOffer {
  const { rates, willingness } = sale;
  const nodes = rates.weights.length;
  const { logCentre, logSd } = willingness;
  const asked = path.prices[week]!;
  const news = Array.from(rates.logRates, (logRate) =>
    offerNews({ logMedian: logRate + logSeason[week]! + logCentre, logSd, openingBelow }, offer, asked),
  );
  const most = Math.max(...news.map(({ logLikelihood }) => logLikelihood));
  const weights = path.reach
    .slice(week * nodes, (week + 1) * nodes)
    .map((reach, node) => reach * Math.exp(news[node]!.logLikelihood - most));
  const total = weights.reduce((sum, one) => sum + one, 0);
  let carryingOn = 0;
  for (let node = 0; node < nodes; node++) {
    weights[node]! /= total;
    carryingOn += weights[node]! * path.carryingOn[week * nodes + node]!;
  }
  return { weights, news, carryingOn };
}

/** Chance that the buyer pays an amount, and what asking for it is worth: the amount if they do, carrying on as the refusal leaves it if not. */
export function counterWorth(
  { weights, news }: HeardOffer,
  carryingOn: Float64Array,
  amount: Money,
  received: Money,
): { readonly chance: Probability; readonly worth: Money } {
  let chance = 0;
  let worth = 0;
  for (let node = 0; node < weights.length; node++) {
    const taken = news[node]!.chanceTaken(amount);
    chance += weights[node]! * taken;
    worth += weights[node]! * (taken * received + (1 - taken) * carryingOn[node]!);
  }
  return { chance, worth };
}
