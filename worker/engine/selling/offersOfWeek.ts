import type { Money, Probability } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { normalCdf } from "../statistics/standardNormal.ts";
import type { PostedSale } from "./demand/posting.ts";
import type { PricePath } from "./demand/pricePath.ts";

/** A plan under way: what offers are judged by. */
export interface PlanUnderWay {
  readonly sale: PostedSale;
  readonly path: PricePath;
  /** The same plan at lower prices: what may be turned to after an offer (see comingDown). */
  readonly lower?: readonly PricePath[];
  /** By week: log of the going rate over that of the first. */
  readonly logSeason: readonly number[];
  /** Mean by which the logarithm of a first offer lies below that of what the buyer would pay. */
  readonly openingBelow: number;
}

/** What is known once an offer was heard, with the weeks before it gone by without a sale. */
export interface HeardOffer {
  /** Of the going rates; sum to 1. */
  readonly weights: Float64Array;
  /** What carrying on is worth, with the plan's prices or lower ones, whichever are worth more after this news. */
  readonly carryingOn: Money;
}

/** A counter to an offer. */
export interface Counter {
  /** Chance that the buyer pays it. */
  readonly chance: Probability;
  /** What reaches the user if they do, carrying on as the refusal leaves it if not. */
  readonly worth: Money;
}

/**
 * The offers that may come in one week of a plan.
 *
 * An offer is a buyer whose willingness is below the price asked, log-normal like any buyer's (median m, spread s in logarithms), and who opens below it by an
 * exponential amount of mean g in the logarithm. So log willingness u and log offer x have the density
 * phi((u - m) / s) / s x exp(-(u - x) / g) / g for x <= u <= a, a the log price asked: a normal moved down by s^2 / g and cut at both ends. The likelihood of the
 * offer is its integral, exp((x - m) / g + s^2 / (2 g^2)) (Phi((a - c) / s) - Phi((x - c) / s)) / g with c = m - s^2 / g, and the buyer would pay more than y with
 * the share of it above y. A higher offer never makes a lower going rate likelier (the densities are totally positive).
 */
export class OffersOfWeek {
  /** Price asked, money in hand. */
  readonly asked: Money;
  readonly #plan: PlanUnderWay;
  readonly #week: number;
  readonly #logMedian: Float64Array;
  /** By node: chance of a willingness above the price asked, under the normal that is moved down. */
  readonly #beyond: Float64Array;
  /** For the plan and each lower one, by node: worth of carrying on with it from this week. */
  readonly #carryingOn: readonly Float64Array[];

  /** @param week from 0 */
  constructor(plan: PlanUnderWay, week: number) {
    const { rates, willingness } = plan.sale;
    this.#plan = plan;
    this.#week = week;
    this.asked = plan.path.prices[week]!;
    const level = plan.logSeason[week]! + willingness.logCentre;
    this.#logMedian = rates.logRates.map((logRate) => logRate + level);
    const logAsked = log(this.asked);
    this.#beyond = this.#logMedian.map((logMedian) => this.#above(logMedian, logAsked));
    const nodes = rates.logRates.length;
    this.#carryingOn = [plan.path, ...(plan.lower ?? [])].map(({ carryingOn }) =>
      carryingOn.subarray(week * nodes, (week + 1) * nodes),
    );
  }

  /** What an offer says, money in hand; one at the price asked or above says no more than one just below it. */
  hear(offer: Money): HeardOffer {
    const { path, openingBelow } = this.#plan;
    const nodes = this.#logMedian.length;
    const start = this.#week * nodes;
    const logOffer = log(Math.min(offer, this.asked * NEARLY));
    const logLikelihood = this.#logMedian.map(
      (logMedian, node) =>
        log(Math.max(this.#above(logMedian, logOffer) - this.#beyond[node]!, Number.MIN_VALUE)) -
        logMedian / openingBelow,
    );
    const most = Math.max(...logLikelihood);
    const weights = logLikelihood.map((one, node) => path.reach[start + node]! * exp(one - most));
    const total = weights.reduce((sum, one) => sum + one, 0);
    for (let node = 0; node < nodes; node++) weights[node]! /= total;
    return { weights, carryingOn: this.#worthOfCarryingOn(weights) };
  }

  /**
   * Asking the buyer for more than they offered.
   * @param amount between the offer and the price asked
   * @param received what is left of it after fees
   */
  counter({ weights }: HeardOffer, offer: Money, amount: Money, received: Money): Counter {
    const nodes = weights.length;
    const [logOffer, logAmount] = [log(offer), log(amount)];
    const refused = new Float64Array(nodes);
    let chance = 0;
    for (let node = 0; node < nodes; node++) {
      const logMedian = this.#logMedian[node]!;
      const between = this.#above(logMedian, logOffer) - this.#beyond[node]!;
      const over = this.#above(logMedian, logAmount) - this.#beyond[node]!;
      const taken = between > 0 ? Math.min(1, Math.max(0, over / between)) : 0;
      chance += weights[node]! * taken;
      refused[node] = weights[node]! * (1 - taken);
    }
    return { chance: Math.min(1, chance), worth: chance * received + this.#worthOfCarryingOn(refused) };
  }

  /** Worth of carrying on with the best of the plan and the lower ones. @param weights of the going rates */
  #worthOfCarryingOn(weights: Float64Array): Money {
    return Math.max(
      ...this.#carryingOn.map((worth) => weights.reduce((sum, one, node) => sum + one * worth[node]!, 0)),
    );
  }

  /** Upper tail of the normal that is moved down: between two points far out on that side, the difference keeps its digits. */
  #above(logMedian: number, logAmount: number): number {
    const { openingBelow, sale } = this.#plan;
    const { logSd } = sale.willingness;
    return normalCdf((logMedian - logAmount) / logSd - logSd / openingBelow);
  }
}

const NEARLY = 1 - 1e-9;
