import type { Book } from "../decision/book.ts";
import { DomainError } from "../domainError.ts";
import type { Money, Probability } from "../quantity.ts";
import { type PriceStep, writtenPrices } from "./demand/priceGrid.ts";
import { ratePoints } from "./demand/ratePoints.ts";
import { OffersOfWeek, type PlanUnderWay } from "./offersOfWeek.ts";
import type { OfferAnswer, PlannedWeek } from "./sellingPlan.ts";

/** A plan, its weeks as they are told, and what an offer is turned over in. */
export interface Offered {
  readonly plan: PlanUnderWay;
  /** The same plan over many more going rates: what the going rate's points are read from. */
  readonly finer: PlanUnderWay;
  readonly path: readonly PlannedWeek[];
  readonly received: (amount: Money) => Money;
  readonly currency: string;
}

/**
 * Answers an offer that came in a week: accepted where it is worth at least carrying on after hearing it; else countered with the written amount that is
 * worth most, where the buyer is likely enough to pay it; else left.
 * @throws DomainError where the plan has no such week
 */
export function answerOffer(
  { plan, finer, path, received, currency }: Offered,
  { amount, week }: { readonly amount: Money; readonly week: number },
  { catalogue: { selling } }: Book,
): OfferAnswer {
  const planned = path[week - 1];
  if (!planned) {
    const weeks = `a week of the plan, 1 to ${path.length}: then it goes for the fallback`;
    throw new DomainError("out-of-domain", "week", week, weeks, "/offer/week");
  }
  const offers = new OffersOfWeek(plan, week - 1);
  const { carryingOn } = offers.hear(amount);
  const { weights } = new OffersOfWeek(finer, week - 1).hear(amount);
  const told = { carryingOn, goingRate: ratePoints(finer.sale.rates.logRates, weights) };
  const words = (money: Money) => `${Math.round(money)} ${currency}`;
  const left = received(amount);
  const worth = `Carrying on is worth about ${words(carryingOn)} after this offer`;
  const noCounter = { counter: null, counterChance: null };
  if (amount >= planned.lowestOffer || left >= carryingOn) {
    const inHand = left < amount ? `${words(left)} left of it after fees` : `${words(amount)} in hand`;
    const reason =
      amount >= offers.asked && left < carryingOn
        ? `${words(amount)} is no less than what you ask for this week, haggling taken off.`
        : `${worth}; ${inHand} is not less.`;
    return { answer: "accept", ...noCounter, reason, ...told };
  }
  const offered = left < amount ? `the ${words(left)} left of it after fees` : words(amount);
  const better = `${worth}, ${words(left) === words(carryingOn) ? "a little more" : "more"} than ${offered}`;
  const best = bestCounter(offers, amount, received, selling.priceSteps);
  if (best === null || best.chance < selling.offers.leastChance) {
    const reason = `${better}, and this buyer is not likely to pay that.`;
    return { answer: "wait", ...noCounter, reason, ...told };
  }
  const reason = `${better}. In about ${inTen(best.chance)} of 10 this buyer pays ${words(best.amount)}.`;
  return { answer: "counter", counter: best.amount, counterChance: best.chance, reason, ...told };
}

function inTen(chance: Probability): number {
  return Math.min(9, Math.max(1, Math.round(10 * chance)));
}

/** Of the written amounts between the offer and the price asked, the one worth most; null where none is worth more than carrying on. */
function bestCounter(
  offers: OffersOfWeek,
  offer: Money,
  received: (amount: Money) => Money,
  steps: readonly PriceStep[],
): { readonly amount: Money; readonly chance: Probability } | null {
  const { asked } = offers;
  const heard = offers.hear(offer);
  let most = heard.carryingOn;
  let best: { readonly amount: Money; readonly chance: Probability } | null = null;
  for (const amount of writtenPrices(steps, offer, asked)) {
    if (amount <= offer || amount >= asked) continue;
    const { chance, worth } = offers.counter(heard, offer, amount, received(amount));
    if (worth > most) [most, best] = [worth, { amount, chance }];
  }
  return best;
}
