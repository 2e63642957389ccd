import type { Book } from "../decision/book.ts";
import type { Money } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { postedSale } from "./demand/posting.ts";
import { optimalPath, pricedPath } from "./demand/pricePath.ts";
import { WEEKS_A_MONTH } from "./demand/season.ts";
import { postingOf, type SettledSale } from "./saleTerms.ts";

const MONTHS = 12;
/** Planning a month anew adds no more than this share to what the prices at hand, moved by the season, come to there. */
const PLANNING_ADDS = 0.1;
/** Months planned anew at most. */
const PLANNED = 2;

/**
 * Whether it is better listed in a later month, room and interest paid until then: the month with the greatest gain over listing now, where that is more
 * than noise. Each month is first tried with the prices of the plan at hand moved by the season; the likeliest are planned anew.
 * @param prices of the plan that starts now, money in hand
 * @param worth of that plan
 */
export function holdUntil(
  settled: SettledSale,
  prices: Float64Array,
  worth: Money,
  book: Book,
): { readonly month: number; readonly gain: Money } | null {
  const { month } = settled.market;
  if (month === null) return null;
  const { logRate } = settled.goods.seasons;
  const tried = Array.from({ length: MONTHS - 1 }, (_, at) => {
    const held = at + 1;
    const ratio = exp(logRate[(month - 1 + held) % MONTHS]! - logRate[month - 1]!);
    const moved = prices.map((price) => price * ratio);
    const sale = postedSale(postingOf(settled, book, held));
    return { held, sale, moved, worth: heldWorth(settled, held, pricedPath(sale, moved).worth) };
  }).sort((one, other) => other.worth - one.worth);
  const slack = PLANNING_ADDS * Math.abs(worth);
  let best = { held: 0, worth };
  for (const { held, sale, moved, worth: least } of tried.slice(0, PLANNED)) {
    if (least + slack <= best.worth) continue;
    const planned = heldWorth(settled, held, optimalPath(sale, { start: moved }).worth);
    if (planned > best.worth) best = { held, worth: planned };
  }
  const gain = best.worth - worth;
  if (gain <= book.catalogue.selling.holdGain * Math.abs(worth)) return null;
  return { month: ((month - 1 + best.held) % MONTHS) + 1, gain };
}

/** What a plan that starts months from now is worth today: discounted, less the room until then. */
function heldWorth({ market, discountPerWeek }: SettledSale, monthsHeld: number, worth: Money): Money {
  const weeks = monthsHeld * WEEKS_A_MONTH;
  const discount = exp(-discountPerWeek * weeks);
  const storedWeeks = discountPerWeek > 0 ? (1 - discount) / discountPerWeek : weeks;
  return discount * worth - market.storagePerWeek * storedWeeks;
}
