import type { Probability } from "../quantity.ts";
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
  /** What the parts fetch if each sells, whole and sound; a bare frame is one part and fetches what it fetches as found. */
  readonly parts: LogNormal;
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
  const parts = isWhole(attributes)
    ? atLevel({
        logMedian: Math.log(partsGross(tables.parts, readyBase(book.value, attributes), attributes)),
        logSd: rideable(READY, PLAIN).logSd,
      })
    : asFoundNotRiding;

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

/** Share of a part's price that is left after post and the fee: the table's counts the usual fee. */
export function partsNetShare(settled: SettledRequest, book: Book): number {
  const { netShare } = book.catalogue.value.parts;
  return (netShare * (1 - settled.fee.rate)) / (1 - book.catalogue.defaults.fee.rate);
}
