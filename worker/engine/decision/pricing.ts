import type { Probability } from "../quantity.ts";
import { rangeMoments } from "../service/partPrice.ts";
import type { LogNormal } from "../statistics/logNormal.ts";
import { restorationInterest } from "../valuation/bikeClass.ts";
import { partsGross } from "../valuation/partsGross.ts";
import { type Prediction, predict, readyBase } from "../valuation/prediction.ts";
import type { NotRiding, SaleDescription, SaleState } from "../valuation/saleDescription.ts";
import type { Book } from "./book.ts";
import { type ConditionCurve, conditionCurve } from "./conditionCurve.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { isWhole } from "./standingFaults.ts";

/** The going rates of one find in every state it may be sold in. */
export interface Pricing {
  /** Penalty of a bike that is not polished: full where restoration interests buyers, a share elsewhere. */
  readonly notPolished: Probability;
  /** Sold as rideable with a visible condition. */
  readonly rideable: (condition: number, finish: Finish) => Prediction;
  readonly asFoundRiding: LogNormal;
  readonly asFoundNotRiding: LogNormal;
  /** Takings of all parts together if each sold. */
  readonly parts: (frameUnsaleable: boolean, spoiledShare: Probability) => LogNormal;
  /** Expected going rate as rideable over visible condition. */
  readonly curve: (finish: Finish) => ConditionCurve;
}

export interface Finish {
  readonly polished: boolean;
  readonly repainted: boolean;
}

export function pricingOf(settled: SettledRequest, book: Book): Pricing {
  const { attributes } = settled;
  const { value: tables, defaults } = book.catalogue;
  const { design } = tables.model;
  const interest = restorationInterest(design.interest, attributes);
  const notPolished = tables.notPolishedPenalty * interest;
  const level = Math.log(settled.priceLevel);
  const atLevel = <T extends LogNormal>(value: T): T => ({ ...value, logMedian: value.logMedian + level });

  const sale = (state: SaleState, { polished, repainted }: Finish): SaleDescription => ({
    attributes,
    originality: repainted
      ? Math.min(settled.originality, defaults.repaintedOriginality)
      : settled.originality,
    desirability: settled.desirability,
    state,
    asFound: false,
    presentation: polished ? "full" : "plain",
    papers: "bill",
    month: settled.month,
  });
  const rideable = (condition: number, finish: Finish) =>
    atLevel(predict(book.value, sale({ kind: "rides", condition: clamp(condition) }, finish)));
  const found = (state: SaleState) => atLevel(predict(book.value, { ...sale(state, PLAIN), asFound: true }));

  const asFoundNotRiding = found({ kind: notRidingKind(settled) });
  const ready = readyBase(book.value, attributes);
  const present = presentShare(settled, book);
  const parts = (frameUnsaleable: boolean, spoiledShare: Probability): LogNormal => {
    // A bare frame is one part: it fetches what it fetches as found.
    if (!isWhole(attributes)) return asFoundNotRiding;
    const gross = present * partsGross(tables.parts, ready, attributes, frameUnsaleable, spoiledShare);
    return atLevel({ logMedian: Math.log(gross), logSd: rideable(READY, PLAIN).logSd });
  };

  const curve = (finish: Finish) =>
    conditionCurve((condition) => rideable(condition, finish), design.conditionKnots);

  return {
    notPolished,
    rideable,
    asFoundRiding: found({ kind: "rides", condition: 0 }),
    asFoundNotRiding,
    parts,
    curve,
  };
}

/** However much is missing, something is left of the parts. */
const LEAST_SHARE = 0.05;

/**
 * Share of the parts' worth that is there: used prices at the bike's own tier of what is missing, against those of all that it takes to build up a bare
 * frame. Shares, since a bike's parts fetch less together than the price list says.
 */
function presentShare({ missingParts, attributes }: SettledRequest, { service, catalogue }: Book): number {
  if (missingParts.length === 0) return 1;
  const used = (ids: readonly string[]) =>
    ids.reduce((sum, id) => {
      const range = service.parts.get(id)!.prices.used?.[attributes.componentTier];
      return sum + (range ? rangeMoments(range).mean : 0);
    }, 0);
  const all = used(catalogue.defaults.missingParts["frame-only"] ?? []);
  return all > 0 ? Math.max(LEAST_SHARE, 1 - used(missingParts) / all) : 1;
}

const PLAIN: Finish = { polished: false, repainted: false };
/** Any condition will do where only the spread is asked for; the ready one is the regression's reference. */
const READY = 0.75;

function notRidingKind({ attributes }: SettledRequest): NotRiding {
  if (!isWhole(attributes)) return "frame-and-fork";
  return attributes.completeness === "major-missing" ? "major-parts-missing" : "does-not-ride";
}

function clamp(condition: number): number {
  return Math.min(1, Math.max(0, condition));
}

/** Share of the going rate that is left after haggling and the fee. */
export function receivedShare(settled: SettledRequest, book: Book, sold: "rideable" | "asFound"): number {
  return (1 - book.catalogue.defaults.haggling[sold]) * (1 - settled.fee.rate);
}

/** Share of the parts' gross worth that is left after unsold pieces, post and the fee. */
export function partsShare(settled: SettledRequest, book: Book): number {
  const { soldShare, netShare } = book.catalogue.value.parts;
  return (soldShare * netShare * (1 - settled.fee.rate)) / (1 - book.catalogue.defaults.fee.rate);
}
