import type { Probability } from "../quantity.ts";
import { log } from "../statistics/elementary/log.ts";
import { type BikeStart, bikeStart } from "../valuation/bikeStart.ts";
import type { GoingRate } from "../valuation/goingRate.ts";
import { partsGross } from "../valuation/partsGross.ts";
import { predict, readyBase } from "../valuation/prediction.ts";
import type { NotRiding, SaleDescription, SaleState } from "../valuation/saleDescription.ts";
import type { Book } from "./book.ts";
import { type ConditionCurve, conditionCurve } from "./conditionCurve.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { isWhole } from "./standingFaults.ts";

/** The going rates of one find in every state it may be sold in. */
export interface Pricing {
  /** It is polished already. */
  readonly polished: boolean;
  /** Penalty of a bike that is not polished: full where restoration interests buyers, a share elsewhere; none once it is. */
  readonly notPolished: Probability;
  /** Sold as rideable with a visible condition. */
  readonly rideable: (condition: number, finish: Finish) => GoingRate;
  readonly asFoundRiding: GoingRate;
  readonly asFoundNotRiding: GoingRate;
  /** What the parts fetch if each sells, whole and sound; a bare frame is one part and fetches what it fetches as found. */
  readonly parts: GoingRate;
  /** Expected going rate as rideable over visible condition. */
  readonly curve: (finish: Finish) => ConditionCurve;
  /** A rideable bike as the regression describes it. */
  readonly rideableSale: (condition: number, finish: Finish) => SaleDescription;
  readonly asFoundSale: (rides: boolean) => SaleDescription;
}

export interface Finish {
  readonly polished: boolean;
  readonly repainted: boolean;
}

export function pricingOf(settled: SettledRequest, book: Book): Pricing {
  const { attributes } = settled;
  const { value: tables, defaults } = book.catalogue;
  const { design } = tables.model;
  const { belief, logPriceLevel } = settled.market;

  const original = { attributes, originality: settled.originality, desirability: settled.desirability };
  const painted = {
    ...original,
    originality: Math.min(settled.originality, defaults.repaintedOriginality),
  };
  const start = bikeStart(belief.layout, original);
  let paintedStart: BikeStart | undefined;
  const startOf = (repainted: boolean) => {
    if (!repainted) return start;
    paintedStart ??= bikeStart(belief.layout, painted);
    return paintedStart;
  };

  const polished = book.service.polishing.some(({ id }) => settled.done.has(id));
  const notPolished = polished ? 0 : tables.notPolishedPenalty * start.interest;

  const sale = (state: SaleState, { polished, repainted }: Finish): SaleDescription => ({
    ...(repainted ? painted : original),
    state,
    asFound: false,
    presentation: polished ? "full" : "plain",
    papers: "bill",
    month: settled.month,
  });
  const rideableSale = (condition: number, finish: Finish) =>
    sale({ kind: "rides", condition: clamp(condition) }, finish);
  const rideable = (condition: number, finish: Finish) =>
    atLevel(predict(belief, rideableSale(condition, finish), startOf(finish.repainted)), logPriceLevel);
  const asFoundSale = (rides: boolean): SaleDescription => ({
    ...sale(rides ? { kind: "rides", condition: 0 } : { kind: notRidingKind(settled) }, PLAIN),
    asFound: true,
  });

  const asFoundNotRiding = atLevel(predict(belief, asFoundSale(false), start), logPriceLevel);
  const parts = isWhole(attributes)
    ? atLevel(
        {
          ...rideable(READY, PLAIN),
          logMedian: log(partsGross(tables.parts, readyBase(belief, attributes), attributes)),
        },
        logPriceLevel,
      )
    : asFoundNotRiding;

  const curve = (finish: Finish) =>
    conditionCurve((condition) => rideable(condition, finish), design.conditionKnots);

  return {
    polished,
    notPolished,
    rideable,
    asFoundRiding: atLevel(predict(belief, asFoundSale(true), start), logPriceLevel),
    asFoundNotRiding,
    parts,
    curve,
    rideableSale,
    asFoundSale,
  };
}

/** A going rate at the user's price level. */
export function atLevel(value: GoingRate, logPriceLevel: number): GoingRate {
  return { ...value, logMedian: value.logMedian + logPriceLevel };
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
