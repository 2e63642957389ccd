import type { ThreePoint } from "../../../worker/engine/quantity.ts";
import type { CourseId, Operation, Variant } from "../../../worker/engine/service/operation.ts";
import type { Part } from "../../../worker/engine/service/part.ts";
import type { Given } from "./given.ts";
import { ticketsOf } from "./tickets.ts";

/** A cost that is paid once: its sure share and its tickets. */
export interface Item {
  readonly sure: number;
  readonly tickets: Float64Array | null;
}

const TIERS = ["entry", "mid", "upper", "top"] as const;

export function itemOf(estimate: ThreePoint): Item {
  const tickets = ticketsOf(estimate);
  return { sure: tickets ? 0 : estimate.likely, tickets };
}

export function scaled({ sure, tickets }: Item, by: number): Item {
  return { sure: sure * by, tickets: tickets?.map((one) => one * by) ?? null };
}

export function partOf(id: string, { tables }: Given): Part {
  return tables.service.parts.find((part) => part.id === id)!;
}

/** Price of one piece as it is bought: the user's own, or the table's at the tier. */
export function priceOf(id: string, given: Given): Item {
  const { terms, attributes } = given;
  const own = terms.partPrices.get(id);
  if (own !== undefined) return { sure: own, tickets: null };
  const { buy, prices } = partOf(id, given);
  const cap = buy.tierCap === undefined ? 3 : TIERS.indexOf(buy.tierCap);
  const tier = TIERS[Math.min(cap, Math.max(0, TIERS.indexOf(attributes.componentTier) - buy.tiersBelow))]!;
  const { low, typical, high } = (buy.state === "used" && prices.used?.[tier]) || prices.new[tier];
  return itemOf({ optimistic: low, likely: typical, pessimistic: high });
}

/** Hands-on minutes of an operation; the user's own where it sells. */
export function minutesOf(
  operation: Operation,
  variant: Variant | null,
  share: number,
  { terms, tables }: Given,
): Item {
  const { sellingMinutes } = terms;
  if (operation.selling && sellingMinutes !== null) {
    const selling = tables.service.operations.filter((one) => one.selling);
    const likely = selling.reduce((sum, { minutes }) => sum + minutes.likely, 0);
    return { sure: (sellingMinutes * operation.minutes.likely) / likely, tickets: null };
  }
  return scaled(itemOf(variant?.minutes ?? operation.minutes), share);
}

/** All deliveries of a course. They vary one by one: their variances add. */
export function deliveriesOf({ terms, tables }: Given, course: CourseId): Item {
  const { low, typical, high } = terms.deliveryPerOrder;
  const count = tables.defaults.delivery.orders[course];
  const one = itemOf({ optimistic: low, likely: typical, pessimistic: high });
  const mean = (low + 4 * typical + high) / 6;
  return {
    sure: one.sure * count,
    tickets: one.tickets?.map((price) => mean * count + (price - mean) * Math.sqrt(count)) ?? null,
  };
}
