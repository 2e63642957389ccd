/** A bicycle that changed hands, or was offered, as the user knows it. An attribute left out is unknown, never guessed. */
export interface Sale {
  /** More than 0, in `currency`. */
  readonly price: number;
  /** ISO 4217. */
  readonly currency: string;
  /** What was paid in the end, or only asked. */
  readonly kind: "paid" | "asked";
  /** ISO 8601, YYYY-MM-DD. */
  readonly date: string;
  readonly name?: string;
  readonly category?: string;
  readonly era?: string;
  /** Year it was made in. */
  readonly year?: number;
  readonly frameMaterial?: string;
  readonly componentTier?: string;
  readonly sizeClass?: string;
  readonly place?: string;
  readonly drivetrain?: string;
  readonly stepThrough?: string;
  readonly state?: string;
  /** 0 to 1. */
  readonly condition?: number;
  /** 0 to 1. */
  readonly originality?: number;
  /** 0 to 1. */
  readonly desirability?: number;
  /** Ids of the finds that are the same model. */
  readonly sameModelAs?: readonly string[];
}

/** A sale with the id it was kept under. */
export interface KeptSale extends Sale {
  readonly id: string;
}

/** What a part, a consumable or an outside service costs the user. */
export interface PartPrice {
  /** Its id in the catalogue. */
  readonly part: string;
  /** More than 0, in `currency`, for one of the part's unit. */
  readonly price: number;
  /** ISO 4217. */
  readonly currency: string;
}

/** The most sales that are kept, and the most rows that are read from a file. */
export const MOST_SALES = 5000;
