import type { Book } from "../decision/book.ts";
import type { Money } from "../quantity.ts";
import { comingDown } from "./comingDown.ts";
import { bestPath } from "./demand/bestPath.ts";
import { type PostedSale, postedSale } from "./demand/posting.ts";
import { writtenPrices } from "./demand/priceGrid.ts";
import { type PricePath, pricedPath } from "./demand/pricePath.ts";
import { forecastSale } from "./demand/saleForecast.ts";
import { writtenPath } from "./demand/writtenPath.ts";
import { goodsOf } from "./goods.ts";
import { holdUntil } from "./holdUntil.ts";
import { lowestOffer } from "./lowestOffer.ts";
import { answerOffer } from "./offerAnswer.ts";
import type { PlanUnderWay } from "./offersOfWeek.ts";
import { postingOf, settleSale } from "./saleTerms.ts";
import type { PlannedWeek, SellingPlan } from "./sellingPlan.ts";
import type { SellingRequest } from "./sellingRequest.ts";

/** Going rates are this many times as close together where points are read off them. */
const FINER = 8;

/**
 * The plan of one sale: what to ask week by week, when to come down, what to accept, and what to expect of it. Prices make the expected takings less storage, discounted,
 * as large as can be; what is asked is a figure people write.
 * @throws DomainError with an RFC 6901 pointer into the request
 */
export function planSale(request: SellingRequest, book: Book): SellingPlan {
  const goods = goodsOf(request.subject, book);
  const settled = settleSale(goods, request, book);
  const { market } = settled;
  const posting = postingOf(settled, book);
  const { sale, path: best } = bestPath(posting);
  const path = inWriting(sale, best, 1 - market.haggling, book);
  const underWay: PlanUnderWay = {
    sale,
    path,
    lower: comingDown(sale, path),
    logSeason: posting.season.map(({ logRate }) => logRate),
    openingBelow: book.catalogue.selling.offers.openingBelow,
  };
  const { fee } = market;
  const received = (amount: Money) => amount * (1 - fee.rate) - fee.fixed;
  const nodes = sale.weights.length;
  const prices = path.prices.slice(0, path.end);
  const forecast = forecastSale({
    arrivals: sale.arrivals,
    weights: sale.weights,
    prices,
    received,
    fallback: sale.fallback.slice(path.end * nodes, (path.end + 1) * nodes),
  });
  const weeks = Array.from(
    prices,
    (price, week): PlannedWeek => ({
      week: week + 1,
      price: asked(price, 1 - market.haggling),
      chanceSold: forecast.chanceSold[week]!,
      lowestOffer: lowestOffer(underWay, week, received),
    }),
  );
  return {
    currency: goods.currency,
    dataVersion: book.catalogue.version,
    demoData: true,
    unconverted: goods.unconverted,
    soldAs: goods.soldAs,
    value: { p10: goods.band.p10, p50: goods.band.p50, p90: goods.band.p90 },
    market,
    listPrice: weeks[0]!.price,
    path: weeks,
    expectedTakings: forecast.expectedTakings,
    takings: forecast.takings,
    expectedWeeks: forecast.expectedWeeks,
    weeks: forecast.weeks,
    chanceUnsold: forecast.chanceUnsold,
    worth: path.worth,
    roundingCost: Math.max(0, best.worth - path.worth),
    fallback: { kind: settled.fallback.kind, amount: forecast.expectedFallback },
    offer:
      request.offer &&
      answerOffer(
        { plan: underWay, finer: finer(underWay, posting), path: weeks, received, currency: goods.currency },
        request.offer,
        book,
      ),
    holdUntil: holdUntil(settled, best.prices, best.worth, book),
  };
}

/** The best path of asking prices that people write. */
function inWriting(
  sale: PostedSale,
  best: PricePath,
  left: number,
  { catalogue: { selling } }: Book,
): PricePath {
  const { lowest, highest } = sale.range;
  const written = writtenPrices(selling.priceSteps, lowest / left, highest / left);
  return writtenPath(
    sale,
    best.prices,
    written.map((price) => price * left),
  );
}

/** The asking price again, free of what the way to money in hand and back has rounded. */
function asked(inHand: Money, left: number): Money {
  return Number((inHand / left).toPrecision(12));
}

/** The same plan over many more going rates. */
function finer(
  { path, logSeason, openingBelow }: PlanUnderWay,
  posting: Parameters<typeof postedSale>[0],
): PlanUnderWay {
  const sale = postedSale(posting, FINER);
  return { sale, path: pricedPath(sale, path.prices), logSeason, openingBelow };
}
