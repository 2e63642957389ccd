import type { Money } from "../quantity.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { type Moments, NOTHING, sumOver, times } from "./moments.ts";
import type { Part, PartId } from "./part.ts";

/** How much of a part was bought already and is not fitted yet, and what one is worth unused. */
export interface Held {
  readonly quantity: number;
  readonly reuseValue: Money;
}

/** What is held, by part. */
export type Stock = ReadonlyMap<PartId, Held>;

/** A part, dose or service that a task uses, with its price here. */
export interface Purchase {
  readonly part: Part;
  readonly quantity: number;
  /** How much of it is at hand. */
  readonly atHand: number;
  /** What one at hand is worth unused. */
  readonly reuseValue: Money;
  /** What one still to be bought costs. */
  readonly buyPrice: Moments;
  /** What one costs the plan: one at hand its worth unused, given up; the others their price. */
  readonly unitPrice: Moments;
}

/** Some of a part, taken from the stock as far as that goes. */
export function purchaseFrom(stock: Stock, part: Part, quantity: number, buyPrice: Moments): Purchase {
  const { quantity: held, reuseValue } = stock.get(part.id) ?? NONE;
  return priced(part, quantity, Math.min(quantity, held), reuseValue, buyPrice);
}

const NONE: Held = { quantity: 0, reuseValue: 0 };

function priced(
  part: Part,
  quantity: number,
  atHand: number,
  reuseValue: Money,
  buyPrice: Moments,
): Purchase {
  if (atHand === 0) return { part, quantity, atHand, reuseValue, buyPrice, unitPrice: buyPrice };
  const bought = (quantity - atHand) / quantity;
  const unitPrice = {
    mean: bought * buyPrice.mean + (1 - bought) * reuseValue,
    variance: squared(bought) * buyPrice.variance,
  };
  return { part, quantity, atHand, reuseValue, buyPrice, unitPrice };
}

/** The same part bought for several tasks, as one line. */
export function mergePurchases(purchases: readonly Purchase[]): readonly Purchase[] {
  if (purchases.length < 2) return purchases;
  const lines = new Map<string, Purchase>();
  for (const purchase of purchases) {
    const { part, quantity, atHand, reuseValue, buyPrice } = purchase;
    const line = lines.get(part.id);
    lines.set(
      part.id,
      line ? priced(part, line.quantity + quantity, line.atHand + atHand, reuseValue, buyPrice) : purchase,
    );
  }
  return [...lines.values()];
}

/** What purchases cost together. */
export function spentOn(purchases: readonly Purchase[]): Moments {
  if (purchases.length === 0) return NOTHING;
  return sumOver(purchases, ({ unitPrice, quantity }) => times(unitPrice, quantity));
}

/** What all of it is worth unused. */
export function reuseWorthOf(stock: Stock): Money {
  let worth = 0;
  for (const { quantity, reuseValue } of stock.values()) worth += quantity * reuseValue;
  return worth;
}

/** What is left of it after some was used. */
export function withoutUsed(
  stock: Stock,
  used: readonly { readonly part: PartId; readonly quantity: number }[],
): Stock {
  const left = new Map(stock);
  for (const { part, quantity } of used) {
    const held = left.get(part);
    if (held === undefined) continue;
    if (held.quantity > quantity) left.set(part, { ...held, quantity: held.quantity - quantity });
    else left.delete(part);
  }
  return left;
}

/** What those at hand would be worth unused. */
export function reuseGivenUp(purchases: readonly Purchase[]): Money {
  return purchases.reduce((sum, { atHand, reuseValue }) => sum + atHand * reuseValue, 0);
}

/** Whether a part must be ordered. */
export function wantsOrder(purchases: readonly Purchase[]): boolean {
  return purchases.some(({ part, quantity, atHand }) => part.kind === "part" && quantity > atHand);
}

/** Deals the stock out to lists of purchases in their order: what one takes is not there for the next. */
export function dealOut(
  stock: Stock,
  lists: readonly (readonly Purchase[])[],
): readonly (readonly Purchase[])[] {
  const left = new Map(stock);
  return lists.map((list) =>
    list.map((purchase) => {
      const held = left.get(purchase.part.id);
      if (held === undefined) return purchase;
      const dealt = purchaseFrom(left, purchase.part, purchase.quantity, purchase.buyPrice);
      left.set(purchase.part.id, { ...held, quantity: held.quantity - dealt.atHand });
      return dealt;
    }),
  );
}
