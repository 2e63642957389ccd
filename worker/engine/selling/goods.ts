import type { Book } from "../decision/book.ts";
import { DomainError } from "../domainError.ts";
import type { Money, Probability } from "../quantity.ts";
import { curveOfBand, type RateBand, type RateCurve } from "./demand/goingRates.ts";
import { type Seasons, seasonsOf } from "./demand/season.ts";
import { foundGoods } from "./foundGoods.ts";
import type { SoldAs } from "./sellingPlan.ts";
import type { Subject } from "./sellingRequest.ts";

/** What is sold, as a plan needs it: a described find and a bare value come to the same. */
export interface Goods {
  readonly currency: string;
  readonly unconverted: boolean;
  readonly soldAs: SoldAs | null;
  /** Going rate before haggling, as it is shown. */
  readonly band: RateBand;
  /** The same, as it is reckoned with. */
  readonly curves: readonly RateCurve[];
  /** Share that is usually talked off in that state. */
  readonly usualHaggling: Probability;
  /** Multiplies the table's interested buyers. */
  readonly demand: number;
  readonly seasons: Seasons;
  readonly month: number | null;
  readonly priceLevel: number;
  /** Fees of the find's workshop, where it names any. */
  readonly fee: { readonly rate: Probability; readonly fixed: Money } | null;
  /** What breaking it leaves after its minutes; null where nothing is known of its parts. */
  readonly parts: Money | null;
}

/**
 * What a request wants sold.
 * @throws DomainError with a pointer into the request where it may not be sold, or not in that state
 */
export function goodsOf(subject: Subject, book: Book): Goods {
  return "value" in subject ? valuedGoods(subject, book) : foundGoods(subject.appraisal, subject.state, book);
}

/** A going rate alone: taken for a bicycle that rides, of middling demand. */
function valuedGoods(
  { value, currency }: { readonly value: RateBand; readonly currency: string | undefined },
  { catalogue: { defaults, selling }, value: model }: Book,
): Goods {
  if (!(value.p90 <= MOST_SPREAD * value.p10))
    throw new DomainError(
      "out-of-domain",
      "p90",
      value.p90,
      `at most ${MOST_SPREAD} times p10`,
      "/value/p90",
    );
  return {
    currency: currency ?? defaults.currency,
    unconverted: (currency ?? defaults.currency) !== defaults.currency,
    soldAs: null,
    band: value,
    curves: [curveOfBand(value)],
    usualHaggling: defaults.haggling.rideable,
    demand: 1,
    seasons: seasonsOf(selling, model.initial),
    month: null,
    priceLevel: defaults.priceLevel,
    fee: null,
    parts: null,
  };
}

/** A wider band says nothing of what to ask, and takes long to plan for. */
const MOST_SPREAD = 10;
