import type { Book } from "../decision/book.ts";
import { DomainError } from "../domainError.ts";
import type { Money } from "../quantity.ts";
import { writtenPrices } from "./demand/priceGrid.ts";
import { ratePoints } from "./demand/ratePoints.ts";
import { counterWorth, type HeardOffer, hearOffer, type PlanUnderWay } from "./heardOffer.ts";
import type { OfferAnswer, PlannedWeek } from "./sellingPlan.ts";

/** A plan, its weeks as they are told, and what an offer is turned over in. */
export interface Offered {
  readonly plan: PlanUnderWay;
  readonly path: readonly PlannedWeek[];
  readonly received: (amount: Money) => Money;
  /** The same plan over many more going rates: what the going rate's points are read from. */
  readonly finer: PlanUnderWay;
  readonly currency: string;
}

/**
 * Answers an offer that came in a week: accepted where it is worth at least carrying on; else countered with the written amount that is worth most, where
 * the buyer is likely enough to pay it; else left.
 * @throws DomainError where the plan has no such week
 */
export function answerOffer(
  { plan, path, received, finer, currency }: Offered,
  { amount, week }: { readonly amount: Money; readonly week: number },
  { catalogue: { selling } }: Book,
): OfferAnswer {
  const planned = path[week - 1];
  if (!planned)
    throw new DomainError(
      "out-of-domain",
      "week",
      week,
      `a week of the plan, 1 to ${path.length}: then it goes for the fallback`,
      "/offer/week",
    );
  const asked = plan.path.prices[week - 1]!;
  const below = Math.min(amount, asked * NEARLY);
  const heard = hearOffer(plan, week - 1, below);
  const words = (money: Money) => `${Math.round(money)} ${currency}`;
  const common = {
    carryingOn: heard.carryingOn,
    goingRate: ratePoints(finer.sale.rates.logRates, hearOffer(finer, week - 1, below).weights),
  };
  const worth = `Carrying on is worth about ${words(heard.carryingOn)} after this offer`;
  if (amount >= planned.lowestOffer)
    return {
      answer: "accept",
      counter: null,
      counterChance: null,
      reason: `${worth}, and ${words(amount)} in hand is not less.`,
      ...common,
    };
  const counter = bestCounter(heard, plan, week - 1, amount, received, selling.priceSteps);
  if (counter && counter.chance >= selling.offers.leastChance)
    return {
      answer: "counter",
      counter: counter.amount,
      counterChance: counter.chance,
      reason: `${worth}: more than ${words(amount)}. This buyer pays ${words(counter.amount)} in about ${inTen(counter.chance)} of 10.`,
      ...common,
    };
  return {
    answer: "wait",
    counter: null,
    counterChance: null,
    reason: `${worth}: more than ${words(amount)}, and this buyer is not likely to pay that.`,
    ...common,
  };
}

/** An offer at the price asked or above it says no more than one just below it. */
const NEARLY = 1 - 1e-9;

function inTen(chance: number): number {
  return Math.min(9, Math.max(1, Math.round(10 * chance)));
}

function bestCounter(
  heard: HeardOffer,
  { path }: PlanUnderWay,
  week: number,
  offer: Money,
  received: (amount: Money) => Money,
  steps: Parameters<typeof writtenPrices>[0],
): { readonly amount: Money; readonly chance: number } | null {
  const nodes = heard.weights.length;
  const carryingOn = path.carryingOn.subarray(week * nodes, (week + 1) * nodes);
  const asked = path.prices[week]!;
  const amounts = writtenPrices(steps, offer, asked).filter((one) => one > offer && one < asked);
  let best: { amount: Money; chance: number; worth: Money } | null = null;
  for (const amount of amounts) {
    const counter = counterWorth(heard, carryingOn, amount, received(amount));
    if (counter.worth > (best?.worth ?? heard.carryingOn)) best = { amount, ...counter };
  }
  return best;
}
