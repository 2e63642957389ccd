import type { Money, Probability } from "../quantity.ts";
import type { PricedAttributes, SaleState } from "./saleDescription.ts";

export const PRICE_KINDS = ["paid", "asked"] as const;
/** paid: what a buyer handed over, after haggling; asked: what an advertisement says. */
export type PriceKind = (typeof PRICE_KINDS)[number];

/** The attributes that bear on price, as far as they are known. */
export type KnownAttributes = {
  readonly [Name in keyof PricedAttributes]?: PricedAttributes[Name] | undefined;
};

/** A price the user knows of, and what is known of the bike: what is left out is averaged over, not guessed. */
export interface Comparable {
  /** The user's label. */
  readonly id?: string | undefined;
  readonly price: Money;
  readonly kind: PriceKind;
  /** Days since that price. */
  readonly ageDays: number;
  /** The same model as the find: then kind, era, material and tier are the find's unless told. */
  readonly likeThis: boolean;
  readonly attributes: KnownAttributes;
  readonly state?: SaleState["kind"] | undefined;
  /** Visible condition, 0 to 1; told, the bike rides. */
  readonly condition?: Probability | undefined;
  readonly originality?: Probability | undefined;
  readonly desirability?: Probability | undefined;
  /** 1 to 12. */
  readonly month?: number | undefined;
}
